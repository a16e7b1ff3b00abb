import type { DraftGround } from './draft-ground.ts'
import { DraftTrouble, many } from './draft-trouble.ts'
import { findHeading, type Heading } from './find-heading.ts'
import { keptCells, keptRows } from './kept-tables.ts'
import { listDecimal } from './list-decimal.ts'
import type { ListSheet } from './list-sheet.ts'
import { type PartRow, readPartRows } from './part-rows.ts'

export interface DraftHead {
  readonly title: string
  /** ISO 8601. */
  readonly date: string
  /** The file's name, for words about it. */
  readonly file: string
  /** What was assumed in reading it. */
  readonly remark?: string | null
}

const mostKb = 64 // of front matter that a note may have
const mostBodyKb = 256 // of text below it

/** A purchase list as a session note: a part for each row, and tables of all that was not understood. */
export function draftFromTable(sheets: readonly ListSheet[], head: DraftHead, ground: DraftGround): string {
  const filled = sheets.filter(({ rows }) => rows.some(row => row.some(({ text }) => text !== '')))
  const list = filled.map(sheet => ({ sheet, heading: findHeading(sheet) })).find(({ heading }) => heading !== null)
  if (!list?.heading) throw new DraftTrouble(withoutHeading(filled[0], head))
  const { at, columns } = list.heading
  const rows = list.sheet.rows.slice(at + 1)
  const decimal = listDecimal(rows, columns)
  const parts = readPartRows(rows, { columns, first: at + 2, decimal }, ground)
  const named = parts.filter(({ id }) => id !== null)
  if (named.length === 0)
    throw new DraftTrouble(`\`${head.file}\` has no row that names a part below its column names.`)
  const front = frontMatter(named, head)
  requireRoom(front, named, head)
  const isChanged = decimal !== null && decimal !== ground.options.decimal
  const others = filled.filter(sheet => sheet !== list.sheet)
  const kept = keptOf({ list: list.sheet, heading: list.heading, others }, parts)
  const body = [lede(parts, head, isChanged ? decimal : null), ...kept, ''].join('\n')
  requireBody(body, head)
  return `${front}${body}`
}

function withoutHeading(sheet: ListSheet | undefined, { file }: DraftHead): string {
  if (sheet === undefined) return `\`${file}\` is empty, expected a row of column names and a row for each part.`
  const first = sheet.rows.find(row => row.some(({ text }) => text !== '')) ?? []
  const words = first.slice(0, 8).map(({ text }) => text || '(empty)')
  return `\`${file}\` has no column of parts, expected one named Part, Item, Name or Description; its first row is: ${words.join(', ')}.`
}

function frontMatter(parts: readonly PartRow[], { title, date }: DraftHead): string {
  const lines = parts.flatMap(({ id, sameAs, keys }) => [
    ...(sameAs === null
      ? []
      : [`  # The record has a part \`${sameAs}\` already. If this is that one, give it that name.`]),
    `  ${id}:`,
    ...keys.map(([key, value]) => `    ${key}: ${value}`),
  ])
  return ['---', `title: ${JSON.stringify(title)}`, `date: ${date}`, 'parts:', ...lines, '---', ''].join('\n')
}

function requireRoom(front: string, parts: readonly PartRow[], { file }: DraftHead): void {
  const bytes = Buffer.byteLength(front)
  if (bytes <= mostKb * 1024) return
  const fits = Math.floor((parts.length * mostKb * 1024 * 0.95) / bytes) // 5 % less: rows are not all as long
  throw new DraftTrouble(
    `\`${file}\` has ${many(parts.length)} parts, which take ${many(Math.ceil(bytes / 1024))} KB of front matter where a note may have ${mostKb} KB: split it into lists of about ${many(fits)} rows.`,
  )
}

function requireBody(body: string, { file }: DraftHead): void {
  const kb = Math.ceil(Buffer.byteLength(body) / 1024)
  if (kb > mostBodyKb)
    throw new DraftTrouble(
      `What was not understood of \`${file}\` takes ${many(kb)} KB where a note may have ${mostBodyKb} KB: take out the sheets and columns that are not needed, or split it.`,
    )
}

function lede(parts: readonly PartRow[], { file, remark }: DraftHead, changed: 'comma' | 'point' | null): string {
  const named = parts.filter(({ id }) => id !== null)
  const assumed = named.some(({ keys }) => keys.some(([key, value]) => key === 'action' && value === 'ordered'))
  const sentences = [
    `${named.length === 1 ? 'One part' : `${many(named.length)} parts`} from the list \`${file.replaceAll('`', "'")}\`.`,
    ...(assumed
      ? [
          'A part whose state the list does not say is written as ordered: that counts as paid and puts nothing on the vehicle.',
        ]
      : []),
    ...(changed === null
      ? []
      : [`The list writes its decimals with a ${changed}; they were put as build.md has them.`]),
    ...(remark ? [remark] : []),
  ]
  return sentences.join(' ')
}

interface Given {
  readonly list: ListSheet
  readonly heading: Heading
  readonly others: readonly ListSheet[]
}

function keptOf({ list, heading, others }: Given, parts: readonly PartRow[]): string[] {
  return [
    ...keptRows('What stands above the list', list.rows.slice(0, heading.at)),
    ...keptCells(parts, heading.columns),
    ...others.flatMap(({ name, rows }) => keptRows(`The sheet ${JSON.stringify(name ?? '')}, not read`, rows)),
  ]
}
