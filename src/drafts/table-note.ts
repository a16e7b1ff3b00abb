import { DraftTrouble, many } from './draft-trouble.ts'
import { escapeCell } from './escape-cell.ts'
import { type NamedColumn, nameColumns } from './name-columns.ts'
import { type DraftGround, type PartRow, readPartRows } from './part-rows.ts'
import type { ListCell } from './read-csv.ts'

export interface DraftHead {
  readonly title: string
  /** ISO 8601. */
  readonly date: string
  /** The file's name, for words about it. */
  readonly file: string
}

const mostKb = 64 // of front matter that a note may have

/** A purchase list as a session note: a part for each row, and a table of what was not understood. */
export function draftFromTable(rows: readonly (readonly ListCell[])[], head: DraftHead, ground: DraftGround): string {
  const [heading = [], ...body] = rows
  const columns = nameColumns(heading.map(({ text }) => text))
  if (!columns.some(({ role }) => role === 'name' || role === 'number'))
    throw new DraftTrouble(
      `\`${head.file}\` has no column of parts, expected one named Part, Item, Name or Description; its first row is: ${headingWords(columns)}.`,
    )
  const parts = readPartRows(body, columns, ground)
  const named = parts.filter(({ id }) => id !== null)
  if (named.length === 0)
    throw new DraftTrouble(`\`${head.file}\` has no row that names a part below its column names.`)
  const front = frontMatter(named, head)
  requireRoom(front, named, head)
  return `${front}${bodyOf(parts, columns, head)}`
}

const headingWords = (columns: readonly NamedColumn[]): string =>
  columns
    .slice(0, 8)
    .map(({ heading }) => heading || '(empty)')
    .join(', ')

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

function bodyOf(parts: readonly PartRow[], columns: readonly NamedColumn[], { file }: DraftHead): string {
  const assumed = parts.some(
    ({ id, keys }) => id !== null && keys.some(([key, value]) => key === 'action' && value === 'ordered'),
  )
  const count = parts.filter(({ id }) => id !== null).length
  const lede = `${count === 1 ? 'One part' : `${many(count)} parts`} from the list \`${file.replaceAll('`', "'")}\`.`
  const ordered =
    'A part whose state the list does not say is written as ordered: that counts as paid and puts nothing on the vehicle.'
  return [`${lede}${assumed ? ` ${ordered}` : ''}`, ...keptTable(parts, columns), ''].join('\n')
}

/** Every cell that was not understood, under its own column name, beside the row and the part that it belongs to. */
function keptTable(parts: readonly PartRow[], columns: readonly NamedColumn[]): string[] {
  const rows = parts.filter(({ kept }) => kept.size > 0)
  if (rows.length === 0) return []
  const places = [...new Set(rows.flatMap(({ kept }) => [...kept.keys()]))].sort((one, other) => one - other)
  const headings = ['Row', 'Of', ...places.map(at => headingOf(columns[at], at))]
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`
  return [
    '',
    '## What was not understood',
    '',
    line(headings),
    line(headings.map(() => '---')),
    ...rows.map(({ row, id, kept }) =>
      line([String(row), id === null ? '' : `\`${id}\``, ...places.map(at => escapeCell(kept.get(at) ?? ''))]),
    ),
  ]
}

/** Names by which a table would be read as measurements, pins or parts. */
const readNames = ['measurement', 'value', 'pin', 'part', 'cost']

function headingOf(column: NamedColumn | undefined, at: number): string {
  const words = column?.heading.trim() || `Column ${at + 1}`
  return escapeCell(readNames.includes(words.toLowerCase()) ? `${words} (as given)` : words)
}
