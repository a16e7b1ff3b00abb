import type { Nodes, Root } from 'mdast'
import type { Plugin } from 'unified'
import { sourceOf } from '../tree/source.ts'
import { rewrite, walk } from '../tree/walk.ts'
import { givePictures } from './give-pictures.ts'
import { toMarkedPlace } from './to-marked-place.ts'

export type { MarkedPlaceNode } from './node.ts'

/** `:mark[2]{at="40%,25%"}` becomes a `markedPlace` that knows the picture on which its point lies. Use it behind `figures`. */
const markedPlaces: Plugin<[], Root> = () => (tree, file) => {
  const source = sourceOf(file)
  const told = inBrokenBlocks(tree)
  rewrite(tree, node =>
    node.type === 'textDirective' && node.name === 'mark' ? toMarkedPlace(node, { source, file, told }) : null,
  )
  givePictures(tree, file, told)
}

/** What stands in a block that is withheld because a mark in it did not parse: that is told, and nothing else of it. */
function inBrokenBlocks(tree: Root): Set<Nodes> {
  const broken = new Set<Nodes>()
  walk(tree, (node, { ancestors }) => {
    if (ancestors.some(around => around.type === 'privateBlock' && around.as === 'broken')) broken.add(node)
    return undefined
  })
  return broken
}

export default markedPlaces
