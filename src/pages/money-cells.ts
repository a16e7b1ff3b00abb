import type { Amount } from '../facts/fact.ts'
import type { Cell } from './cells.ts'
import { money } from './money.ts'
import type { Origin, PageScope } from './page-scope.ts'

/** An amount of the build's currency, as a reader says it. */
export function inMoney(scope: PageScope, amount: string): string {
  return money(amount, scope.record.ledger.currency)
}

/** An amount and the line to its words. */
export function moneyCell(scope: PageScope, { amount, currency }: Amount, origin: Origin): Cell {
  const text = money(amount, currency)
  return { kind: 'leader', leader: { ...scope.leader('', origin), number: text, runs: [{ text, unit: false }] } }
}
