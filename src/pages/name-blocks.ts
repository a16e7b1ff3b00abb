import type { Root } from 'hast'

/** Gives each block of a note an anchor of the line where it begins, `b-31`: the search leads there. One that has an anchor keeps it. */
export function nameBlocks(tree: Root): void {
  for (const block of tree.children) {
    if (block.type !== 'element' || block.position === undefined || 'id' in block.properties) continue
    block.properties.id = `b-${block.position.start.line}`
  }
}
