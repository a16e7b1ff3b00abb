import type { Element, ElementContent, Root as Html } from 'hast'
import type { Root } from 'mdast'
import rehypeStringify from 'rehype-stringify'
import { unified } from 'unified'
import { eachElement, hasClass } from './elements.ts'
import type { NoteContext } from './note-context.ts'
import { isFigure } from './note-links.ts'
import { noteTree } from './note-tree.ts'
import { textOf } from './sentences.ts'

/** One block of a note: a paragraph, a list, a table. `figures` are those in it, in order; `wide` takes the margin too. */
interface NoteRow {
  readonly html: string
  readonly wide: boolean
  readonly figures: readonly string[]
}

export interface PrintedNote {
  readonly rows: readonly NoteRow[]
  /** Anchor of a figure → the sentence in which it stands. */
  readonly sentences: ReadonlyMap<string, string>
}

const printer = unified().use(rehypeStringify).freeze()

/** Prints a note's body block by block. */
export function printNote(body: Root, context: NoteContext): PrintedNote {
  const tree = noteTree(body, context)
  const sentences = sentencesOf(tree)
  const blocks = tree.children.filter(child => child.type === 'element')
  return { rows: blocks.map(printBlock), sentences }
}

function printBlock(block: Element): NoteRow {
  const figures: string[] = []
  let columns = 0
  eachElement(block, node => {
    if (node.tagName === 'tr')
      columns = Math.max(columns, node.children.filter(child => child.type === 'element').length)
    const id = node.properties.id
    if (!isFigure(node) || typeof id !== 'string') return undefined
    figures.push(id)
    // The note in the margin finds its figure by this number.
    if (hasClass(node, 'used')) node.properties.className = ['q', 'used', `k${figures.length}`]
    return undefined
  })
  return { html: print([block]), wide: columns > widestBeside, figures }
}

const widestBeside = 4 // columns that a table may have and still leave room for what used its figures

function print(children: ElementContent[]): string {
  return printer.stringify({ type: 'root', children } satisfies Html)
}

/** For each figure the sentence in which it stands; in a table the cell, in a heading the heading. */
function sentencesOf(tree: Html): Map<string, string> {
  const found = new Map<string, string>()
  const look = (node: Element, around: Element | null): void => {
    const holder =
      /^(h[1-6]|td|th)$/.test(node.tagName) || (node.tagName === 'span' && hasClass(node, 's')) ? node : around
    const id = node.properties.id
    if (isFigure(node) && typeof id === 'string' && holder !== null) found.set(id, plainWords(holder))
    for (const child of node.children) if (child.type === 'element') look(child, holder)
  }
  for (const child of tree.children) if (child.type === 'element') look(child, null)
  return found
}

/** A figure keeps the narrow space before its unit. */
function plainWords(node: Element): string {
  return textOf(node)
    .replace(/[ \t\r\n]+/g, ' ')
    .trim()
}
