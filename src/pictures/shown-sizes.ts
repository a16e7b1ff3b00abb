import type { PreparedPhoto } from './prepare-photos.ts'

interface NamedFile {
  readonly path: string
  readonly content: string | Uint8Array
}

/** The sizes of pictures that some page names, each once: no other is published. */
export function shownSizes(photos: readonly PreparedPhoto[], pages: readonly NamedFile[]): NamedFile[] {
  const named = new Set<string>()
  for (const { content } of pages)
    if (typeof content === 'string')
      for (const [address] of content.matchAll(/photos\/[a-z0-9-]+\.[a-z]+/g)) named.add(address)
  const sizes = new Map(photos.flatMap(photo => photo.sizes.map(size => [size.address, size] as const)))
  return [...sizes.values()]
    .filter(({ address }) => named.has(address))
    .map(({ address, content }) => ({ path: address, content }))
}
