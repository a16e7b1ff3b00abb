import type { Nodes } from 'mdast'
import type { Position } from 'unist'
import type { Place } from '../findings/place.ts'

/** From the first node to the last; null where the parser gave no place. */
export function placeOfNodes(nodes: readonly Nodes[], file: string): Place | null {
  const start = nodes[0]?.position?.start
  const end = nodes.at(-1)?.position?.end
  return start === undefined || end === undefined ? null : placeOfPosition({ start, end }, file)
}

/** A position of the tree as a place in its file. */
export function placeOfPosition({ start, end }: Position, file: string): Place {
  return { file, line: start.line, column: start.column, endLine: end.line, endColumn: end.column }
}
