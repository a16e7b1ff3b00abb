import type { Root } from 'mdast'
import type { Plugin } from 'unified'
import { walk } from '../tree/walk.ts'
import { resolveLinks } from './resolve-links.ts'
import { targetOf } from './target-of.ts'

export { type ThingScheme, type ThingTarget, thingSchemes } from './node.ts'

/** Says of each link to a thing (`part:fuel-tank`) or to another note (`../x.md`) where it leads. */
const things: Plugin<[], Root> = () => tree => {
  resolveLinks(tree)
  walk(tree, node => {
    const target = node.type === 'link' ? targetOf(node.url) : null
    if (node.type === 'link' && target !== null) node.data = { ...node.data, ...target }
    return undefined
  })
}

export default things
