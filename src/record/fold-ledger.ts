import type { Amount, DonorFact, Fact, SpendFact } from '../facts/fact.ts'
import type { Held } from './held.ts'
import type { Ledger, LedgerLine, Spend } from './ledger.ts'
import { compareText } from './order-sessions.ts'
import type { PricedPart } from './price-part.ts'
import type { Purse } from './purse.ts'

interface PaidPart extends PricedPart {
  readonly onVehicle: boolean
}

interface LedgerGround {
  readonly purse: Purse
  readonly parts: readonly PaidPart[]
  /** Identifiers in the order in which build.md shows them. */
  readonly systems: readonly string[]
  /** Identifiers in their order; null is build.md. */
  readonly sessions: readonly (string | null)[]
}

type Line = PricedPart['lines'][number]

/** Adds up what was paid and what came back. Every sum is a sum of lines, each rounded by itself. */
export function foldLedger(facts: readonly Fact[], ground: LedgerGround): { ledger: Ledger; spend: Spend[] } {
  const { purse, parts, sessions } = ground
  const spends = facts.filter(fact => fact.type === 'spend').map(fact => ({ fact, line: spendLine(fact, purse) }))
  const lines = [
    ...donorLines(facts, purse),
    ...parts.flatMap(part => part.lines),
    ...spends.flatMap(({ line }) => line ?? []),
  ]
  const order = new Map(sessions.map((session, at) => [session, at]))
  const inOrder = lines
    .map((line, at) => ({ line, at }))
    .sort(
      (one, other) => (order.get(one.line.session) ?? -1) - (order.get(other.line.session) ?? -1) || one.at - other.at,
    )
    .map(({ line }) => line)
  return { ledger: addUp(inOrder, ground), spend: spends.map(({ fact, line }) => spendOf(fact, line, purse)) }
}

function addUp(lines: readonly Line[], { purse, parts, systems, sessions }: LedgerGround): Ledger {
  const of = (kind: LedgerLine['of']): bigint => total(lines.filter(line => line.of === kind))
  const running = lines.filter(line => line.of !== 'donor')
  const onVehicle = parts.filter(part => part.onVehicle).reduce((sum, { value }) => sum + (value ?? 0n), 0n)
  return {
    currency: purse.currency,
    donors: purse.print(of('donor')),
    parts: purse.print(of('part')),
    spend: purse.print(of('spend')),
    returned: purse.print(-of('returned')),
    total: purse.print(total(lines)),
    bySystem: sumBy(running, line => line.system ?? '', systems, purse),
    bySession: sumBy(
      running,
      line => line.session ?? '',
      sessions.map(session => session ?? ''),
      purse,
    ),
    onVehicle: purse.print(onVehicle),
    lines: lines.map(({ coins, ...line }) => ({ ...line, amount: purse.print(coins) })),
  }
}

const total = (lines: readonly Line[]): bigint => lines.reduce((sum, { coins }) => sum + coins, 0n)

/** Sums under their keys: those of `order` first, then the others by code unit; what has no key stands under an empty one, last. */
function sumBy(
  lines: readonly Line[],
  keyOf: (line: Line) => string,
  order: readonly string[],
  purse: Purse,
): Record<string, string> {
  const sums = new Map<string, bigint>()
  for (const line of lines) sums.set(keyOf(line), (sums.get(keyOf(line)) ?? 0n) + line.coins)
  const others = [...sums.keys()].filter(key => key !== '' && !order.includes(key)).sort(compareText)
  const keys = [...order.filter(key => key !== ''), ...others, ''].filter(key => sums.has(key))
  return Object.fromEntries(keys.map(key => [key, purse.print(sums.get(key) ?? 0n)]))
}

function donorLines(facts: readonly Fact[], purse: Purse): Line[] {
  const latest = new Map<string, DonorFact>()
  for (const fact of facts) if (fact.type === 'donor' && fact.cost !== null) latest.set(fact.id, fact)
  return [...latest.values()].flatMap(({ id, name, cost, session }) => {
    const coins = cost && purse.count({ amount: cost.amount, qty: '1', place: cost.place })
    if (cost === null || coins === null) return []
    const what = name?.text ?? id.replaceAll('-', ' ')
    const bought = { written: cost.amount, qty: '1', place: cost.place, figure: cost.figure }
    return [
      {
        what,
        words: name,
        of: 'donor' as const,
        thing: { kind: 'donor' as const, id },
        session,
        system: null,
        coins,
        ...bought,
      },
    ]
  })
}

function spendLine({ what, cost, qty, system, session }: SpendFact, purse: Purse): Line | null {
  const times = qty ?? '1'
  const coins = cost && purse.count({ amount: cost.amount, qty: times, place: cost.place })
  if (cost === null || coins === null) return null
  const bought = { written: cost.amount, qty: times, place: cost.place, figure: cost.figure }
  return { what: what.text, words: what, of: 'spend', thing: null, session, system, coins, ...bought }
}

function spendOf({ what, system, from, session, place, cost }: SpendFact, line: Line | null, purse: Purse): Spend {
  const written: Held<Amount> | null = cost && { value: cost.amount, place: cost.place, session, figure: cost.figure }
  return { what, system, from, session, place, amount: purse.print(line?.coins ?? 0n), written }
}
