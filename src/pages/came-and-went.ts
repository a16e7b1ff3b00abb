import { addAmounts, isNothing } from '../record/asked/add-amounts.ts'
import type { Part, PartEvent } from '../record/record.ts'
import { bySystem, fromWords, nameCell } from './bill-of-materials.ts'
import type { TableRow } from './blocks.ts'
import type { Cell, Inline } from './cells.ts'
import { look, plain, wordsCell } from './inline.ts'
import { inMoney } from './money-cells.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { stateCell } from './part-states.ts'
import { column, row, table } from './tables.ts'
import { noteAddress } from './thing-addresses.ts'

/** Parts that are not on the vehicle: what became of each and why, what took its place, what it cost and what came back. */
export function cameAndWent(scope: PageScope, parts: readonly Part[], caption: string): PartOfPage {
  const withCost = !scope.atlas.withheld.has('cost')
  const costs = withCost ? [column('Paid', 'num'), column('Came back', 'num')] : []
  const money = moneyOf(scope)
  return table({
    caption,
    columns: [
      column('Part', 'wide'),
      column('What became of it'),
      column('In', 'narrow'),
      column('Why', 'wide'),
      column('From'),
      ...costs,
    ],
    groups: bySystem(scope, parts, part => partRow(scope, part, withCost ? money(part) : null)),
    foot: withCost ? [footRow(scope, parts.map(money))] : [],
    canFilter: parts.length > 12,
  })
}

interface PartMoney {
  readonly paid: string
  readonly back: string
}

/** What was paid for a part and what came back, from the lines of the ledger that name it. */
function moneyOf(scope: PageScope): (part: Part) => PartMoney {
  const { lines, currency } = scope.record.ledger
  return part => {
    const own = lines.filter(({ thing }) => thing?.kind === 'part' && thing.id === part.id)
    const sum = (isBack: boolean): string =>
      addAmounts(
        own.filter(({ of }) => (of === 'returned') === isBack).map(({ amount }) => amount),
        currency,
      )
    return { paid: sum(false), back: sum(true) }
  }
}

function partRow(scope: PageScope, part: Part, money: PartMoney | null): TableRow {
  const last = part.events.at(-1)
  const amount = (text: string): Cell => wordsCell(isNothing(text) ? '' : inMoney(scope, text))
  return row([
    nameCell(scope, part),
    stateCell(part.state, '', placeWords(scope, part)),
    last === undefined
      ? wordsCell('')
      : {
          kind: 'balloon',
          balloon: scope.balloon(last.session),
          words: [scope.link(dateText(scope, last), noteAddress(last.session))],
        },
    wordsCell(whyWords(part)),
    wordsCell(fromWords(scope, part)),
    ...(money === null ? [] : [amount(money.paid), amount(money.back)]),
  ])
}

function footRow(scope: PageScope, all: readonly PartMoney[]): TableRow {
  const { currency } = scope.record.ledger
  const sum = (of: (money: PartMoney) => string): Cell => wordsCell(inMoney(scope, addAmounts(all.map(of), currency)))
  return row([
    wordsCell('Together'),
    wordsCell(''),
    wordsCell(''),
    wordsCell(''),
    wordsCell(''),
    sum(({ paid }) => paid),
    sum(({ back }) => back),
  ])
}

function dateText(scope: PageScope, { session }: PartEvent): string {
  return (session === null ? null : scope.atlas.sessions.get(session)?.date) || scope.balloon(session).says
}

/** The reason given with what was done last, else the last one given. */
function whyWords(part: Part): Inline[] {
  const why = part.events.findLast(event => event.why !== null)?.why
  return why === undefined || why === null ? [] : [look('said', why.value.text)]
}

/** What took its place, or whose place it took. */
function placeWords(scope: PageScope, part: Part): Inline[] {
  if (part.replacedBy !== null)
    return [plain('its place was taken by '), scope.thing({ kind: 'part', id: part.replacedBy })]
  return part.replaces === null ? [] : [plain('in place of '), scope.thing({ kind: 'part', id: part.replaces })]
}
