import { lstatSync, readdirSync, readFileSync } from 'node:fs'
import { join, sep } from 'node:path'
import { blankSum, type FileSum, inEights, type Manifest, manifestName, putSum, sumOf, sumsName } from './manifest.ts'

/** How a folder differs from its manifest; every list empty: it is what was published. */
export interface Differences {
  readonly changed: readonly string[]
  readonly missing: readonly string[]
  readonly extra: readonly string[]
}

/** A folder held against its manifest. */
export interface Verified {
  readonly manifest: Manifest
  /** The sum of the manifest itself, which the command printed when it was published. */
  readonly sum: string
  readonly files: Differences
}

/** There is no manifest, or none that can be read; the message says which. */
export class NoManifest extends Error {}

/** Holds every file of a published folder against its manifest, the plain list of sums too. Reads nothing outside the folder. */
export function verifyFolder(folder: string): Verified {
  const found = filesIn(folder)
  const content = found.includes(manifestName) ? readFileSync(join(folder, manifestName)) : null
  if (content === null)
    throw new NoManifest(
      `Unexpected folder \`${folder}\` without \`${manifestName}\`, expected one that \`oddleg build\` published.`,
    )
  const manifest = readManifest(content.toString('utf8'), folder)
  const sum = sumOf(content)
  const there = new Map(
    found.map(path => [path, manifest.own.includes(path) ? ownSumAt(folder, path, sum) : sumAt(folder, path)]),
  )
  const files = compareSums(manifest.files, there, new Set([manifestName, sumsName]))
  return { manifest, sum, files: withSums(files, manifest, { folder, found, sum }) }
}

/** What is there against what a list says was there. */
export function compareSums(
  listed: readonly FileSum[],
  there: ReadonlyMap<string, string | null>,
  apart: ReadonlySet<string> = new Set(),
): Differences {
  const known = new Set(listed.map(({ path }) => path))
  return {
    changed: listed.filter(({ path, sum }) => there.has(path) && there.get(path) !== sum).map(({ path }) => path),
    missing: listed.filter(({ path }) => !there.has(path)).map(({ path }) => path),
    extra: [...there.keys()].filter(path => !known.has(path) && !apart.has(path)),
  }
}

interface Ground {
  readonly folder: string
  readonly found: readonly string[]
  readonly sum: string
}

/** The list of sums is no part of the manifest: it must say the same, and of the manifest too. */
function withSums(files: Differences, manifest: Manifest, { folder, found, sum }: Ground): Differences {
  if (!found.includes(sumsName)) return { ...files, missing: [...files.missing, sumsName] }
  const written = readFileSync(join(folder, sumsName), 'utf8')
  const own = manifest.own.filter(path => found.includes(path) && !files.changed.includes(path))
  const listed = [
    ...manifest.files.filter(({ path }) => !manifest.own.includes(path)),
    ...own.map(path => ({ path, sum: sumAt(folder, path) ?? '' })),
    { path: manifestName, sum },
  ]
  const isSame = listed.every(one => written.includes(`${one.sum}  `))
  const count = written.split('\n').filter(line => line !== '').length
  const holds = isSame && count === manifest.files.length + 1
  return holds ? files : { ...files, changed: [...files.changed, sumsName] }
}

function filesIn(folder: string): string[] {
  try {
    return readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter(entry => !entry.isDirectory())
      .map(entry => join(entry.parentPath, entry.name).slice(join(folder, sep).length).split(sep).join('/'))
      .sort()
  } catch (cause) {
    throw new NoManifest(`Unexpected folder \`${folder}\` that cannot be read, expected a published record.`, { cause })
  }
}

/** Null for what is no plain file, such as a link: it was not published. */
function sumAt(folder: string, path: string): string | null {
  const file = join(folder, path)
  return lstatSync(file).isFile() ? sumOf(readFileSync(file)) : null
}

/** The sum of a page, or of the document, with noughts in place of the manifest's sum; null where it does not print that sum. */
function ownSumAt(folder: string, path: string, sum: string): string | null {
  if (!lstatSync(join(folder, path)).isFile()) return null
  const content = readFileSync(join(folder, path))
  if (!content.includes(inEights(sum)) || content.includes(blankSum)) return null
  return sumOf(putSum(content, inEights(sum), '0'.repeat(sum.length)))
}

function readManifest(text: string, folder: string): Manifest {
  const read = parsed(text)
  if (isManifest(read)) return read
  throw new NoManifest(
    `Unexpected \`${manifestName}\` in \`${folder}\`, expected \`"format": "oddleg-manifest/1"\` with its files.`,
  )
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

function isManifest(value: unknown): value is Manifest {
  if (typeof value !== 'object' || value === null) return false
  const { format, edition, record, own, files, notes } = value as Record<string, unknown>
  const isNamed = format === 'oddleg-manifest/1' && typeof edition === 'string' && typeof record === 'string'
  const isOwn = Array.isArray(own) && own.every(path => typeof path === 'string')
  return isNamed && isOwn && isSums(files) && isSums(notes)
}

function isSums(value: unknown): value is readonly FileSum[] {
  return (
    Array.isArray(value) && value.every(one => typeof one?.path === 'string' && /^[0-9a-f]{64}$/.test(String(one?.sum)))
  )
}
