import { createHash } from 'node:crypto'
import type { PublishedFile } from './publish-folder.ts'

/** The SHA-256 sum of one file, in hexadecimal. */
export interface FileSum {
  /** Of a published file relative to the folder of the record, of a note to the build folder; with `/`. */
  readonly path: string
  readonly sum: string
}

export interface Manifest {
  readonly format: 'oddleg-manifest/1'
  readonly edition: string
  /** The sum of record.json, which the pages print. */
  readonly record: string
  readonly files: readonly FileSum[]
  /** The notes of which the edition withholds nothing: with the sum of another, a guess at what it withholds could be tried. */
  readonly notes: readonly FileSum[]
}

export const manifestName = 'manifest.json'
export const sumsName = 'SHA256SUMS'

export const sumOf = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex')

/** The manifest of a published record and the plain list that `sha256sum -c` reads; both last, since they sum all others. */
export function manifestFiles(
  files: readonly PublishedFile[],
  { edition, notes }: Pick<Manifest, 'edition' | 'notes'>,
): PublishedFile[] {
  const sums = inOrder(files.map(({ path, content }) => ({ path, sum: sumOf(content) })))
  const record = sums.find(({ path }) => path === 'record.json')?.sum ?? ''
  const manifest: Manifest = { format: 'oddleg-manifest/1', edition, record, files: sums, notes: inOrder(notes) }
  const content = `${JSON.stringify(manifest, null, 2)}\n`
  const listed = inOrder([...sums, { path: manifestName, sum: sumOf(content) }])
  return [
    { path: manifestName, content },
    { path: sumsName, content: listed.map(sumLine).join('') },
  ]
}

/** By code unit, so that the order is the same on every machine. */
function inOrder(sums: readonly FileSum[]): FileSum[] {
  return sums.toSorted((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0))
}

/** `sha256sum` marks a line with a backslash where a name holds one or a line end. */
function sumLine({ path, sum }: FileSum): string {
  const escaped = path.replaceAll('\\', '\\\\').replaceAll('\n', '\\n').replaceAll('\r', '\\r')
  return `${escaped === path ? '' : '\\'}${sum}  ${escaped}\n`
}
