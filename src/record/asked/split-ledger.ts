import type { Words } from '../../facts/fact.ts'
import type { LedgerLine } from '../ledger.ts'
import type { AsBuiltRecord, Part } from '../record.ts'
import { addAmounts } from './add-amounts.ts'

/** Where the money of a line is: in a part that is on the vehicle, in one that is not, in a donor, or used up. */
export type Whereabouts = 'on the vehicle' | 'not on the vehicle' | 'donor' | 'used up'

export interface AskedLine {
  readonly line: LedgerLine
  readonly whereabouts: Whereabouts
  /** Who was paid, or paid, in the words of the note; null where none were written. */
  readonly supplier: Words | null
  /** How many of the build's currency one of the written currency is, as build.md says; null for the build's own. */
  readonly rate: string | null
  /** The sum of all lines up to this one. */
  readonly running: string
}

/** Every line of the ledger with what can be asked of it, in the ledger's order. */
export function askLedger(record: AsBuiltRecord): AskedLine[] {
  const parts = new Map(record.parts.map(part => [part.id, part]))
  const { currency } = record.ledger
  let running = addAmounts([], currency)
  return record.ledger.lines.map(line => {
    running = addAmounts([running, line.amount], currency)
    const part = line.thing?.kind === 'part' ? (parts.get(line.thing.id) ?? null) : null
    return {
      line,
      whereabouts: whereaboutsOf(line, part),
      supplier: supplierOf(record, line, part),
      rate: line.written.currency === currency ? null : (record.build.rates[line.written.currency] ?? null),
      running,
    }
  })
}

export interface AmountGroup {
  readonly key: string
  readonly lines: readonly AskedLine[]
  readonly amount: string
}

/** Sums of lines under their keys, in the order in which the keys first come. They add up to the sum of all lines. */
export function groupLines(
  lines: readonly AskedLine[],
  currency: string,
  keyOf: (line: AskedLine) => string,
): AmountGroup[] {
  const groups = new Map<string, AskedLine[]>()
  for (const line of lines) {
    const there = groups.get(keyOf(line))
    if (there === undefined) groups.set(keyOf(line), [line])
    else there.push(line)
  }
  return [...groups].map(([key, members]) => ({
    key,
    lines: members,
    amount: addAmounts(
      members.map(({ line }) => line.amount),
      currency,
    ),
  }))
}

function whereaboutsOf(line: LedgerLine, part: Part | null): Whereabouts {
  if (line.of === 'donor') return 'donor'
  if (part === null) return 'used up'
  return part.onVehicle ? 'on the vehicle' : 'not on the vehicle'
}

/** What the note said itself, else what was said of the part last before it. */
function supplierOf(record: AsBuiltRecord, line: LedgerLine, part: Part | null): Words | null {
  if (part === null) return record.spend.find(spend => isSamePlace(spend.written?.place, line.place))?.from ?? null
  const order = new Map([null, ...record.sessions.map(({ id }) => id)].map((id, at) => [id, at]))
  const upTo = order.get(line.session) ?? 0
  const said = [...part.events, ...part.mentions].filter(
    ({ from, session }) => from !== null && (order.get(session) ?? 0) <= upTo,
  )
  const own = said.filter(({ session }) => session === line.session)
  return (own.at(-1) ?? said.at(-1))?.from?.value ?? null
}

function isSamePlace(one: LedgerLine['place'] | undefined, other: LedgerLine['place']): boolean {
  return one?.file === other.file && one.line === other.line && one.column === other.column
}
