import { latest, quantityAt } from '../../record/lookups.ts'
import type { Part } from '../../record/record.ts'
import { type FormulaLine, workFormula } from '../formula.ts'
import type { Found, Input } from '../input.ts'
import { readAll, termsOf } from '../inputs/derived.ts'
import { frameValue } from '../inputs/frame-value.ts'
import { value } from '../inputs/value.ts'
import { Notebook } from '../notebook.ts'
import { propagateTerm } from '../propagate.ts'
import { type Scope, withNotebook, withSubject } from '../scope.ts'
import { digitsOf } from '../show-figure.ts'
import { partSubject } from '../subjects.ts'
import type { Term } from '../term.ts'
import { placedMasses, placedParts, sayLeftOut } from './vehicle-masses.ts'

export type End = 'front' | 'rear'

export const wheelbase = frameValue('wheelbase', { symbol: 'L', meaning: 'wheelbase', dimension: 'length', unit: 'mm' })

const otherEnd: Readonly<Record<End, RegExp>> = { front: /rear|back/i, rear: /front/i }
const ownEnd: Readonly<Record<End, RegExp>> = { front: /front/i, rear: /rear|back/i }

/** The axle at one end: by its place, else by its name, else the one that is not the other; of several the one that gives `key`. */
function axleAt({ record }: Scope, end: End, key: string): Part | null {
  const axles = record.parts.filter(part => part.partKind === 'axle' && part.onVehicle)
  const half = (quantityAt(record.vehicle, 'wheelbase')?.value.si ?? 2) / 2 // m; 2 m where no wheelbase is written
  const endOf = (axle: Part): End | null => {
    const at = quantityAt(axle, 'at')?.value.si ?? null
    if (at !== null) return at < half ? 'front' : 'rear'
    const words = `${axle.id} ${axle.name}`
    if (ownEnd[end].test(words) === otherEnd[end].test(words)) return null
    return ownEnd[end].test(words) ? end : end === 'front' ? 'rear' : 'front'
  }
  const own = axles.filter(axle => endOf(axle) === end)
  const named = own.find(axle => latest(axle, key) !== null) ?? own[0]
  const unnamed = axles.filter(axle => endOf(axle) === null)
  const hasOther = axles.some(axle => endOf(axle) !== null && endOf(axle) !== end)
  return named ?? (hasOther && unnamed.length === 1 ? (unnamed[0] ?? null) : null)
}

const calculatedLines: Readonly<Record<End, (symbol: string) => FormulaLine>> = {
  front: symbol => ({
    line: `${symbol} = sum(n * m) - sum(n * m * x) / L`,
    unit: 'kg',
    says: 'what the masses leave to the front axle',
  }),
  rear: symbol => ({
    line: `${symbol} = sum(n * m * x) / L`,
    unit: 'kg',
    says: 'what the moments of the masses put on the rear axle',
  }),
}

const calculatedFrom = { ...placedMasses, wheelbase }

interface AxleAsked {
  readonly end: End
  readonly symbol: string
  /** Weighed and calculated are held side by side in the notebook. */
  readonly compares: boolean
}

/** What stands on one axle, unladen: as weighed, else by the masses and places of the parts. */
export function axleLoad(asked: AxleAsked): Input<number> {
  const { end, symbol } = asked
  return {
    symbol,
    meaning: `load on the ${end} axle`,
    dimension: 'mass',
    reads: ['axle/load', 'part/mass', 'part/at', 'part/qty', ...wheelbase.reads],
    formula: [calculatedLines[end](symbol)],
    read: scope => readAxleLoad(asked, scope),
  }
}

function readAxleLoad({ end, symbol, compares }: AxleAsked, scope: Scope): Found | null {
  const weighed = weighedLoad(scope, end, symbol)
  const attempt = withNotebook(scope, new Notebook())
  const hasParts = placedParts(scope).length > 0
  const found = hasParts ? readAll(calculatedFrom, attempt) : null
  const calculated = found === null ? null : workFormula([calculatedLines[end](symbol)], termsOf(calculatedFrom, found))
  if (weighed !== null && calculated !== null && compares) sayComparison(scope, weighed, calculated, end)
  if (weighed !== null) return { type: 'figure', term: weighed }
  if (!hasParts) {
    const path = `${axleAt(scope, end, 'load')?.id ?? 'axle'}/load`
    scope.notebook.need(path, `the ${end} axle was not weighed, and no part has a mass and a place`)
  }
  scope.notebook.takeOver(attempt.notebook)
  if (compares) sayLeftOut(scope)
  return calculated === null ? null : { type: 'figure', term: calculated }
}

/** The weighed load of an axle; null where it was not weighed. */
export function weighedLoad(scope: Scope, end: End, symbol: string): Term | null {
  const axle = axleAt(scope, end, 'load')
  if (axle === null || latest(axle, 'load') === null) return null
  const load = value({
    of: 'axle/load',
    symbol,
    meaning: `load on the ${end} axle, weighed`,
    dimension: 'mass',
    unit: 'kg',
  })
  const found = load.read(withSubject(scope, partSubject(axle)))
  return found?.type === 'figure' ? found.term : null
}

/** Says how far the weighed load and the sum of the parts are apart; more than both U is something not weighed, or written wrongly. */
function sayComparison(scope: Scope, weighed: Term, calculated: Term, end: End): void {
  const [scales, sum] = [propagateTerm(weighed), propagateTerm(calculated)]
  const apart = sum.value - scales.value
  const isBeyond = Math.abs(apart) > Math.max(scales.uncertainty, sum.uncertainty)
  const kilograms = (mass: number): string => digitsOf(mass, 3)
  const how = isBeyond
    ? 'more than either uncertainty: something is not weighed, not in place or not on it any more'
    : 'within their uncertainties'
  scope.notebook.note(
    `The ${end} axle was weighed at ${kilograms(scales.value)} kg; the parts come to ${kilograms(sum.value)} kg, ${kilograms(Math.abs(apart))} kg ${apart < 0 ? 'less' : 'more'}, which is ${how}.`,
  )
  sayLeftOut(scope)
}

/** The axle's rating; absent where no axle at that end is in the record, missing where one is and has none. */
export function axleRating(end: End, symbol: string): Input<number> {
  const rating = value({
    of: 'axle/rating',
    symbol,
    meaning: `rating of the ${end} axle`,
    dimension: 'mass',
    unit: 'kg',
    exact: true,
  })
  return {
    ...rating,
    isOptional: true,
    read: scope => {
      const axle = axleAt(scope, end, 'rating')
      return axle === null ? { type: 'none' } : rating.read(withSubject(scope, partSubject(axle)))
    },
  }
}
