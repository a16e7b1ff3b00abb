import type { Definition, Image, ImageReference, Root } from 'mdast'
import { rewrite, walk } from '../tree/walk.ts'

/** `![the tank][photo]` becomes the picture that its definition names; the first definition of a name counts. */
export function resolvePictures(tree: Root): void {
  const definitions = new Map<string, Definition>()
  walk(tree, node => {
    if (node.type === 'definition' && !definitions.has(node.identifier)) definitions.set(node.identifier, node)
    return undefined
  })
  if (definitions.size === 0) return
  rewrite(tree, node => {
    const definition = node.type === 'imageReference' ? definitions.get(node.identifier) : undefined
    return node.type !== 'imageReference' || definition === undefined ? null : [toImage(node, definition)]
  })
}

function toImage(reference: ImageReference, { url, title }: Definition): Image {
  const image: Image = { type: 'image', url, title: title ?? null, alt: reference.alt ?? null }
  return reference.position === undefined ? image : { ...image, position: reference.position }
}
