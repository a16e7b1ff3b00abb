import type { Definition, Link, LinkReference, Root } from 'mdast'
import { rewrite, walk } from '../tree/walk.ts'
import { targetOf } from './target-of.ts'

/** `[the tank][t]` whose definition leads to a thing or a note becomes a link like any other. */
export function resolveLinks(tree: Root): void {
  const definitions = new Map<string, Definition>()
  walk(tree, node => {
    if (node.type === 'definition' && !definitions.has(node.identifier)) definitions.set(node.identifier, node)
    return undefined
  })
  rewrite(tree, node => {
    const definition = node.type === 'linkReference' ? definitions.get(node.identifier) : undefined
    if (node.type !== 'linkReference' || definition === undefined || targetOf(definition.url) === null) return null
    return [toLink(node, definition)]
  })
}

function toLink({ children, position }: LinkReference, { url, title }: Definition): Link {
  const link: Link = { type: 'link', url, title: title ?? null, children }
  return position === undefined ? link : { ...link, position }
}
