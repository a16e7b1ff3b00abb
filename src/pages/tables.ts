import type { Column, Table, TableRow } from './blocks.ts'
import type { Cell, Inline } from './cells.ts'
import type { PartOfPage } from './page-parts.ts'

interface TableText {
  readonly caption: string
  readonly columns: readonly Column[]
  readonly rows?: readonly TableRow[]
  readonly groups?: Table['groups']
  readonly foot?: readonly TableRow[]
  readonly note?: string | null
  readonly isCaptionShown?: boolean
  readonly canFilter?: boolean
}

export const column = (label: string, look: Column['look'] = 'words'): Column => ({ label, look })
export const row = (cells: readonly Cell[], id: string | null = null, look: TableRow['look'] = 'plain'): TableRow => ({
  id,
  cells,
  look,
})

/** A table as a part of a page; its caption is for who cannot see it unless it is shown. */
export function table(text: TableText): PartOfPage {
  const groups = (text.groups ?? [{ id: null, heading: [], rows: text.rows ?? [] }]).filter(
    group => group.rows.length > 0,
  )
  return {
    kind: 'table',
    table: withoutEmptyColumns({
      caption: text.caption,
      isCaptionShown: text.isCaptionShown ?? false,
      note: text.note ?? null,
      columns: text.columns,
      groups,
      foot: text.foot ?? [],
      canFilter: text.canFilter ?? false,
    }),
  }
}

/** A column in which nobody has anything takes no room. The first heads the rows and stays. */
function withoutEmptyColumns(whole: Table): Table {
  const rows = [...whole.groups.flatMap(group => group.rows), ...whole.foot]
  const kept = whole.columns.map(
    (_, index) => index === 0 || rows.some(({ cells }) => cells[index] !== undefined && !isEmptyCell(cells[index])),
  )
  const pick = <T>(list: readonly T[]): T[] => list.filter((_, index) => kept[index] === true)
  const pickRow = (one: TableRow): TableRow => ({ ...one, cells: pick(one.cells) })
  return {
    ...whole,
    columns: pick(whole.columns),
    groups: whole.groups.map(group => ({ ...group, rows: group.rows.map(pickRow) })),
    foot: whole.foot.map(pickRow),
  }
}

/** Whether a cell says nothing. */
function isEmptyCell(cell: Cell): boolean {
  switch (cell.kind) {
    case 'words':
      return cell.words.length === 0 && cell.sub.length === 0
    case 'marks':
      return cell.marks.length === 0 && cell.otherwise === ''
    case 'wires':
      return cell.wires.length === 0
    default:
      return false
  }
}

export const heading = (text: string, id: string, rank: 2 | 3 = 2): PartOfPage => ({ kind: 'heading', rank, text, id })
export const words = (
  look: Extract<PartOfPage, { kind: 'words' }>['look'],
  text: string | readonly Inline[],
): PartOfPage => ({
  kind: 'words',
  look,
  words: typeof text === 'string' ? [{ text, href: null, look: 'plain' }] : text,
})
