import { strFromU8, unzipSync } from 'fflate'
import { register } from 'tsx/esm/api'
import { type Built, readBuildFolder } from '../../src/build.ts'
import { publishFiles } from '../../src/publish.ts'
import { scratch, writeFiles } from '../commands/run-oddleg.ts'

// Eleventy loads the site's own templates by itself, past the test runner.
register()

/** A published file as text, archives unpacked: its path, and every byte of it. */
export interface PublishedText {
  readonly path: string
  readonly text: string
}

export async function readBuild(files: Readonly<Record<string, string | Uint8Array>>): Promise<Built> {
  const folder = scratch('edition')
  writeFiles(folder, files)
  const built = await readBuildFolder(folder, { today: '2026-12-31' })
  if ('trouble' in built) throw new Error(built.trouble)
  return built
}

/** Every file of an edition. */
export async function publishedTexts(built: Built, edition: string): Promise<PublishedText[]> {
  const files = await publishFiles(built, { edition, serve: false })
  return files.flatMap(({ path, content }) => unpacked(path, content))
}

/** A file, or every file in an archive: as bytes, and as UTF-8. */
export function unpacked(path: string, content: string | Uint8Array): PublishedText[] {
  if (typeof content === 'string') return [{ path, text: content }]
  const raw = { path, text: strFromU8(content, true) }
  if (content[0] !== 0x50 || content[1] !== 0x4b) return [raw, { path: `${path} as UTF-8`, text: strFromU8(content) }]
  return [raw, ...Object.entries(unzipSync(content)).flatMap(([name, inner]) => unpacked(`${path}!${name}`, inner))]
}

/** Paths of the files in which a text stands, whatever its case, in their names too. */
export function filesWith(texts: readonly PublishedText[], word: string): string[] {
  const sought = word.toLowerCase()
  return texts
    .filter(({ path, text }) => path.toLowerCase().includes(sought) || text.toLowerCase().includes(sought))
    .map(({ path }) => path)
}
