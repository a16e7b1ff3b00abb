import Big from 'big.js'
import type { Publication } from '../../src/editions/publication.ts'
import type { Table, TableRow } from '../../src/pages/blocks.ts'
import { makeSiteData } from '../../src/pages/make-site-data.ts'
import type { PartOfPage } from '../../src/pages/page-parts.ts'

/** Every sum is added again by big.js, decimal arithmetic by others. */
export const sum = (amounts: readonly string[]): string =>
  amounts.reduce((total, amount) => total.plus(amount), new Big(0)).toFixed(2)

function tablesOf(parts: readonly PartOfPage[]): Table[] {
  return parts.flatMap(part =>
    part.kind === 'table' ? [part.table] : part.kind === 'beside' ? tablesOf([...part.left, ...part.right]) : [],
  )
}

/** What pages are told where nothing but the record matters. */
export const bareExtras = ({ findings, inspection }: Pick<Publication, 'findings' | 'inspection'>) => ({
  findings,
  inspection,
  checks: [],
  measureNext: [],
  photos: [],
  tables: [],
  date: null,
  serve: false,
  scripts: [],
})

/** Every table of every page. */
export function pageTables({ record, verdicts, inspection, findings }: Publication): { page: string; table: Table }[] {
  return makeSiteData(record, verdicts, bareExtras({ inspection, findings })).pages.flatMap(page =>
    page.rows.flatMap(({ parts }) => tablesOf(parts)).map(table => ({ page: page.sheet.address, table })),
  )
}

/** An amount in a cell, `£1,282.35` as `1282.35`; null where there is none. */
export function amountIn(row: TableRow, at: number): string | null {
  const cell = row.cells[at]
  const text =
    cell?.kind === 'words'
      ? cell.words.map(word => word.text).join('')
      : cell?.kind === 'leader'
        ? cell.leader.number
        : ''
  const match = /^(−?)£([\d,]+\.\d\d)$/.exec(text)
  return match === null ? null : `${match[1] === '' ? '' : '-'}${match[2]?.replaceAll(',', '')}`
}

/** Every column with an amount at its foot, and whether the rows come to it. */
export function columnsAdded({
  page,
  table,
}: {
  page: string
  table: Table
}): { of: string; foot: string; rows: string }[] {
  const rows = table.groups.flatMap(group => group.rows)
  return table.columns.flatMap(({ label }, at) => {
    const foot = table.foot[0] === undefined ? null : amountIn(table.foot[0], at)
    if (foot === null || label === 'Up to here') return []
    return [{ of: `${page} ${table.caption}: ${label}`, foot, rows: sum(rows.flatMap(row => amountIn(row, at) ?? [])) }]
  })
}
