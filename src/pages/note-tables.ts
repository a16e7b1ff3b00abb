import type { Element, Root } from 'hast'
import { eachElement } from './elements.ts'
import { textOf } from './sentences.ts'

const roles: Readonly<Record<string, string>> = {
  thead: 'rowgroup',
  tbody: 'rowgroup',
  tr: 'row',
  td: 'cell',
  th: 'columnheader',
}

/** Prepares tables for narrow screens, where a row becomes a block: roles keep them tables, each cell bears its column's name. */
export function stackTables(tree: Root): void {
  eachElement(tree, table => {
    if (table.tagName !== 'table') return undefined
    table.properties.className = ['stack']
    table.properties.role = 'table'
    const labels = cellsOf(table, 'th').map(cell => textOf(cell).trim())
    eachElement(table, part => {
      setPart(part)
      if (part.tagName === 'tr') nameCells(part, labels)
      return undefined
    })
    return 'skip'
  })
}

function setPart(part: Element): void {
  const role = roles[part.tagName]
  if (role === undefined) return
  part.properties.role = role
  if (part.tagName === 'th') part.properties.scope = 'col'
  const align = part.properties.align
  delete part.properties.align
  if (align === 'right' || align === 'center') part.properties.className = [align === 'right' ? 'num' : 'mid']
}

function nameCells(row: Element, labels: readonly string[]): void {
  cellsOf(row, 'td').forEach((cell, column) => {
    const label = labels[column] ?? ''
    if (label !== '' && column > 0) cell.properties.dataLabel = label
  })
}

function cellsOf(parent: Element, tagName: string): Element[] {
  const cells: Element[] = []
  eachElement(parent, node => {
    if (node.tagName === tagName) cells.push(node)
    return undefined
  })
  return cells
}
