import type { Image, Nodes, Root } from 'mdast'
import { walk } from '../tree/walk.ts'
import type { MarkedPlaceNode } from './node.ts'

interface Standing<T> {
  readonly node: T
  /** Which heading of the note it stands under, counted. */
  readonly section: number
  /** The paragraph, cell or heading in which it stands. */
  readonly line: Nodes | null
}

interface Laid {
  readonly marks: Standing<MarkedPlaceNode>[]
  readonly pictures: Standing<Image>[]
  /** For each mark, how many pictures stand before it. */
  readonly before: number[]
}

/**
 * The picture beside each mark: that of its own line, else the last one above it under the same heading, else the next one
 * below it there; null where there is none.
 */
export function pairPictures(tree: Root): Map<MarkedPlaceNode, Image | null> {
  const { marks, pictures, before } = layOut(tree)
  return new Map(
    marks.map((mark, index) => {
      const above = pictures.slice(0, before[index]).reverse()
      const below = pictures.slice(before[index])
      const near = [...above, ...below].filter(({ section }) => section === mark.section)
      const found = near.find(({ line }) => line !== null && line === mark.line) ?? near[0]
      return [mark.node, found?.node ?? null]
    }),
  )
}

function layOut(tree: Root): Laid {
  const laid: Laid = { marks: [], pictures: [], before: [] }
  let section = 0
  walk(tree, (node, { ancestors }) => {
    if (node.type === 'heading') section++
    const line = ancestors.findLast(({ type }) => lines.has(type)) ?? null
    if (node.type === 'image') laid.pictures.push({ node, section, line })
    if (node.type === 'markedPlace') {
      laid.marks.push({ node, section, line })
      laid.before.push(laid.pictures.length)
    }
    return undefined
  })
  return laid
}

const lines = new Set<string>(['paragraph', 'tableCell', 'heading'])
