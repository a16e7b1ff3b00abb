import { addAmounts } from '../record/asked/add-amounts.ts'
import type { Part } from '../record/record.ts'
import { bySystem } from './bill-of-materials.ts'
import type { TableRow } from './blocks.ts'
import type { Cell, Inline } from './cells.ts'
import { plain, wordsCell } from './inline.ts'
import { massOf, massText } from './masses.ts'
import { inMoney } from './money-cells.ts'
import { dearest, heaviest } from './most-of-it.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, row, table } from './tables.ts'

/** What is in it, on one screen: each system's parts that are on the vehicle, what they weigh and cost, and the most of each. */
export function partsAnswer(scope: PageScope, on: readonly Part[]): PartOfPage {
  const withCost = !scope.atlas.withheld.has('cost')
  const groups = bySystem(scope, on, part => row([], part.id)).map(({ heading, rows }) => ({
    heading,
    parts: on.filter(({ id }) => rows.some(one => one.id === id)),
  }))
  const line = (heading: readonly Inline[], parts: readonly Part[]): TableRow =>
    row([
      wordsCell(heading),
      wordsCell(String(parts.length)),
      ...massCells(scope, parts),
      ...(withCost ? moneyCells(scope, parts) : []),
    ])
  return table({
    caption: 'What is in it, by system',
    columns: [
      column('System', 'wide'),
      column('Parts', 'num'),
      column('Weighed', 'num'),
      column('The heaviest'),
      ...(withCost ? [column('Paid for them', 'num'), column('The dearest')] : []),
    ],
    rows: groups.filter(({ parts }) => parts.length > 0).map(({ heading, parts }) => line(heading, parts)),
    foot: [footRow(line([plain('Together')], on))],
  })
}

/** The most of all stands in its system's row already. */
const footRow = ({ cells, ...rest }: TableRow): TableRow => ({
  ...rest,
  cells: cells.map((cell, at) => (at === 3 || at === 5 ? wordsCell('') : cell)),
})

function massCells(scope: PageScope, parts: readonly Part[]): Cell[] {
  const masses = parts.flatMap(part => massOf(part) ?? [])
  const sum = masses.reduce((total, mass) => total + mass, 0)
  return [wordsCell(masses.length === 0 ? '' : massText(scope, sum)), wordsCell(heaviest(scope, parts))]
}

function moneyCells(scope: PageScope, parts: readonly Part[]): Cell[] {
  const priced = parts.flatMap(({ value }) => value ?? [])
  const sum = addAmounts(priced, scope.record.ledger.currency)
  return [wordsCell(priced.length === 0 ? '' : inMoney(scope, sum)), wordsCell(dearest(scope, parts))]
}
