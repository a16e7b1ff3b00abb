import type { Quantity } from '../quantities/quantity.ts'
import type { Held } from '../record/record.ts'
import { type Terms, workFormula, workIfWhole } from './formula.ts'
import { leafOf, statedLeaf } from './leaf.ts'
import type { Bound } from './limit.ts'
import { digitsOf, showLeaf, showSi } from './show-figure.ts'
import type { Leaf, Term } from './term.ts'
import { workOut } from './term.ts'
import { fromSi } from './unit.ts'

/** One end of a limit: what it works out to, and in words where it comes from. */
export interface LimitEnd {
  readonly term: Term
  /** `3 % of 12 V`, `the corrected rating of the cable`. */
  readonly said: string
}

/** The check's symbols as a limit may use them. */
export interface SymbolTable {
  readonly term: (symbol: string) => Terms[string] | null
  readonly meaning: (symbol: string) => string
}

/** An end that the check states. Null: a value that it needs was not found, or may be absent and is. */
export function endOfBound(bound: Bound, symbols: SymbolTable): LimitEnd | null {
  if ('formula' in bound) {
    const term = workIfWhole(bound.formula, symbols.term)
    return term === null ? null : { term, said: term.says }
  }
  if ('share' in bound)
    return shareOfSymbol(
      statedLeaf('constant', { symbol: 'share', meaning: 'share', value: bound.share, unit: '1' }),
      bound.of,
      symbols,
    )
  const term = statedLeaf('constant', { symbol: 'limit', meaning: 'limit', ...bound })
  return { term, said: showSi(term.value, bound.unit).text }
}

/** A share of one of the check's symbols: 3 % of the nominal voltage. */
function shareOfSymbol(share: Leaf, symbol: string, symbols: SymbolTable): LimitEnd | null {
  const of = symbols.term(symbol)
  if (of === null || of === 'absent' || !('type' in of)) return null
  const unit = of.unit === 'AWG' ? 'mm2' : of.unit
  const isWhole = share.value === 1 && share.origin === 'constant'
  const term = isWhole
    ? of
    : workFormula([{ line: `limit = share * ${symbol}`, unit, says: 'the limit' }], { share, [symbol]: of })
  const whole =
    of.type === 'leaf' && of.origin === 'record'
      ? showLeaf(of).text
      : `${symbols.meaning(symbol)}, ${showSi(workOut(of), unit).text}`
  const percent = digitsOf(share.value * 100)
  return { term, said: isWhole ? whole : `${percent} % of ${whole}` }
}

/** The ends that a figure of build.md sets; a share where the check's own end is one. */
export interface WrittenEnds {
  readonly min: LimitEnd | null
  readonly max: LimitEnd | null
}

/** A figure of build.md as one end, `shareOf` the symbol of which a figure in % is a share. */
export function endOfQuantity(held: Held<Quantity>, shareOf: string | null, symbols: SymbolTable): LimitEnd | null {
  const leaf = writtenLeaf(held, held.value.si ?? held.value.siLow ?? held.value.siHigh ?? Number.NaN)
  if (shareOf !== null && held.value.dimension === 'ratio') return shareOfSymbol(leaf, shareOf, symbols)
  return { term: leaf, said: held.value.text }
}

/** What a requirement allows: its ends, its bound, its ±; a bare figure allows half of its last digit. */
export function endsOfRequirement(held: Held<Quantity>, approximateShare: number): WrittenEnds {
  const { siLow, siHigh, bound, si, text } = held.value
  const end = (value: number | null): LimitEnd | null =>
    value === null ? null : { term: writtenLeaf(held, value), said: text }
  if (bound === 'min') return { min: end(si ?? siLow), max: null }
  if (bound === 'max') return { min: null, max: end(si ?? siHigh) }
  if (siLow !== null && siHigh !== null) return { min: end(siLow), max: end(siHigh) }
  const { low, high } = leafOf(
    { path: 'limit', held },
    { symbol: 'limit', meaning: 'limit', unit: held.value.unit, isExact: false },
    approximateShare,
  )
  return { min: end(low), max: end(high) }
}

/** A limit is exact, whatever its last digit. */
function writtenLeaf(held: Held<Quantity>, value: number): Leaf {
  const leaf = statedLeaf('limit', {
    symbol: 'limit',
    meaning: 'limit',
    value: fromSi(value, held.value.unit),
    unit: held.value.unit,
  })
  return { ...leaf, value, low: value, high: value, place: held.place, text: held.value.text, quantity: held.value }
}
