import type { ListItem, Nodes, Paragraph, Root } from 'mdast'
import type { TextDirective } from 'mdast-util-directive'
import type { Position } from 'unist'
import { attributePositions } from '../tree/directive-source.ts'
import { type Source, spanOf } from '../tree/source.ts'
import { lineOf } from '../tree/text-of.ts'
import { walk } from '../tree/walk.ts'

export const holdUps = ['road', 'inspection'] as const

/** A task as it was written. */
export interface FoundJob {
  readonly item: ListItem
  readonly marks: readonly TextDirective[]
  readonly words: string
  /** The identifier of `:job{#seal-hatch}`. */
  readonly written: string | null
  readonly done: boolean
  /** One of the known words; null where none was given, or another one. */
  readonly before: string | null
  readonly writtenBefore: string | null
  readonly position: Position | null
  readonly attributePositions: Readonly<Record<string, Position>>
}

/** Every item of a task list that begins with a paragraph, in the order of the text. */
export function findJobs(tree: Root, source: Source): FoundJob[] {
  const found: FoundJob[] = []
  walk(tree, node => {
    const first = node.type === 'listItem' && typeof node.checked === 'boolean' ? node.children[0] : undefined
    if (node.type === 'listItem' && first?.type === 'paragraph') found.push(readJob(node, first, source))
    return undefined
  })
  return found
}

function readJob(item: ListItem, paragraph: Paragraph, source: Source): FoundJob {
  const marks = marksIn(paragraph)
  const mark = marks[0]
  const span = mark === undefined ? null : spanOf(mark)
  const places = span === null ? {} : attributePositions(source, span)
  const writtenBefore = mark?.attributes?.before ?? null
  return {
    item,
    marks,
    words: lineOf(paragraph),
    written: mark?.attributes?.id || null,
    done: item.checked === true,
    before: holdUps.find(known => known === writtenBefore) ?? null,
    writtenBefore,
    position: placeOfWords(paragraph),
    attributePositions: places,
  }
}

export function isMark(node: Nodes): node is TextDirective {
  return node.type === 'textDirective' && node.name === 'job'
}

function marksIn(paragraph: Paragraph): TextDirective[] {
  const marks: TextDirective[] = []
  walk(paragraph, node => {
    if (isMark(node)) marks.push(node)
    return undefined
  })
  return marks
}

/** From the first word to the last, a mark without a label left out. */
function placeOfWords(paragraph: Paragraph): Position | null {
  const worded = paragraph.children.filter(child => lineOf(child) !== '')
  const start = worded[0]?.position?.start
  const end = worded.at(-1)?.position?.end
  return start === undefined || end === undefined ? null : { start, end }
}
