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
  /** What prints the manifest's own sum, the overview and the document's cover: summed with noughts in its place. */
  readonly own: readonly string[]
  readonly files: readonly FileSum[]
  /** The notes of which the edition withholds nothing: with the sum of another, a guess at what it withholds could be tried. */
  readonly notes: readonly FileSum[]
}

export const manifestName = 'manifest.json'
export const sumsName = 'SHA256SUMS'

export const sumOf = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex')

/**
 * All files of a published record with the manifest and the plain list that `sha256sum -c` reads. Overview and cover print the
 * manifest's own sum, which nobody can know before they are summed: it stands there as noughts until then.
 */
export function withManifest(
  files: readonly PublishedFile[],
  { edition, notes }: Pick<Manifest, 'edition' | 'notes'>,
): PublishedFile[] {
  const sums = inOrder(files.map(({ path, content }) => ({ path, sum: sumOf(content) })))
  const record = sums.find(({ path }) => path === 'record.json')?.sum ?? ''
  const own = files.filter(printsOwnSum).map(({ path }) => path)
  const manifest: Manifest = { format: 'oddleg-manifest/1', edition, record, own, files: sums, notes: inOrder(notes) }
  const content = `${JSON.stringify(manifest, null, 2)}\n`
  const told = files.map(file => (own.includes(file.path) ? withSum(file, sumOf(content)) : file))
  const all = [...told, { path: manifestName, content }]
  const listed = inOrder(all.map(file => ({ path: file.path, sum: sumOf(file.content) })))
  return [...all, { path: sumsName, content: listed.map(sumLine).join('') }]
}

/** A sum as pages print it, to be compared by eye. */
export const inEights = (sum: string): string => sum.replace(/(.{8})(?=.)/g, '$1 ')

/** What stands on a page in place of the manifest's own sum until it is known. */
export const blankSum = inEights('0'.repeat(64))

const printsOwnSum = ({ path, content }: PublishedFile): boolean =>
  (path === 'index.html' || path === 'record.pdf') && bytesOf(content).includes(blankSum)

const bytesOf = (content: string | Uint8Array): Buffer =>
  typeof content === 'string' ? Buffer.from(content) : Buffer.from(content.buffer, content.byteOffset, content.length)

const withSum = ({ path, content }: PublishedFile, sum: string): PublishedFile => ({
  path,
  content: typeof content === 'string' ? content.replaceAll(blankSum, inEights(sum)) : putSum(content, blankSum, sum),
})

/** Bytes with a sum put in wherever another stands, or noughts: no byte is moved by it. */
export function putSum(content: Uint8Array, instead: string, sum: string): Uint8Array {
  const copy = new Uint8Array(content)
  const bytes = bytesOf(copy)
  const put = inEights(sum)
  for (let at = bytes.indexOf(instead); at >= 0; at = bytes.indexOf(instead, at + put.length)) bytes.write(put, at)
  return copy
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
