import { latest, quantityAt } from '../../record/lookups.ts'
import type { Part } from '../../record/record.ts'
import type { Found, Input } from '../input.ts'
import { each } from '../inputs/each.ts'
import { partCount } from '../inputs/part-count.ts'
import { value } from '../inputs/value.ts'
import type { CheckSubject, Scope } from '../scope.ts'
import { partSubject, vehicleSubject } from '../subjects.ts'
import type { Term } from '../term.ts'
import { fullContents } from './tank-contents.ts'

const isPlaced = (part: Part): boolean => ['mass', 'at'].every(key => quantityAt(part, key) !== null)

/** The parts on the vehicle that have a mass and a place. */
export function placedParts({ record }: Scope): readonly CheckSubject[] {
  return record.parts.filter(part => part.onVehicle && isPlaced(part)).map(partSubject)
}

const mass = value({ of: 'part/mass', symbol: 'm', meaning: 'mass of one', dimension: 'mass', unit: 'kg' })
const place = value({
  of: 'part/at',
  symbol: 'x',
  meaning: 'how far behind the front axle',
  dimension: 'length',
  unit: 'mm',
})

/** The masses on the vehicle, their places and how many there are of each: `m`, `x`, `n`. */
export const placedMasses = {
  m: each({ symbol: 'm', meaning: 'masses of the parts', dimension: 'mass', of: placedParts }, mass),
  x: each({ symbol: 'x', meaning: 'their places', dimension: 'length', of: placedParts }, place),
  n: each({ symbol: 'n', meaning: 'how many of each', dimension: 'ratio', of: placedParts }, partCount('n')),
} as const

/** Says which parts on the vehicle are not in the sum, and which with a mass are not on it. */
export function sayLeftOut({ record, notebook }: Scope): void {
  const names = (parts: readonly Part[]): string => parts.map(({ name }) => name).join('; ')
  const unplaced = record.parts.filter(part => part.onVehicle && !isPlaced(part))
  const weighed = record.parts.filter(part => ['made', 'trial-fitted', 'modified'].includes(part.state))
  const notOn = weighed.filter(part => !part.onVehicle && isPlaced(part))
  if (unplaced.length > 0)
    notebook.note(
      `${unplaced.length} on the vehicle without a mass or a place ${unplaced.length === 1 ? 'is' : 'are'} left out: ${names(unplaced)}.`,
    )
  if (notOn.length > 0)
    notebook.note(`Made or tried and not said to be fitted, so not on the vehicle and left out: ${names(notOn)}.`)
}

function tanksOn({ record }: Scope): readonly CheckSubject[] {
  return record.parts.filter(part => part.onVehicle && part.partKind === 'tank').map(partSubject)
}

const holders: readonly (string | null)[] = ['strap', 'bracket', 'bolt', 'weld', 'axle']

/** What is stated to be carried: a `load` written as a mass, of the vehicle or of a part that is no fastening. */
function carriers({ record }: Scope): readonly CheckSubject[] {
  const isMass = (part: Part): boolean => quantityAt(part, 'load')?.value.dimension === 'mass'
  const parts = record.parts.filter(part => part.onVehicle && !holders.includes(part.partKind) && isMass(part))
  const whole = latest(record.vehicle, 'load') === null ? [] : [vehicleSubject(record)]
  return [...whole, ...parts.map(partSubject)]
}

const placeOf = (kind: string): Input<number> =>
  value({
    of: `${kind}/at`,
    symbol: 'x_a',
    meaning: 'how far behind the front axle it is carried',
    dimension: 'length',
    unit: 'mm',
  })
const loadOf = (kind: string): Input<number> =>
  value({ of: `${kind}/load`, symbol: 'm_a', meaning: 'the load that is stated', dimension: 'mass', unit: 'kg' })

/** A figure of the vehicle or of a part, whichever the subject is. */
function ofEither(make: (kind: string) => Input<number>): Input<number> {
  const [part, vehicle] = [make('part'), make('vehicle')]
  return { ...part, read: scope => (scope.subject.kind === 'vehicle' ? vehicle : part).read(scope) }
}

const set = (
  symbol: string,
  dimension: 'mass' | 'length',
  of: (scope: Scope) => readonly CheckSubject[],
  input: Input<number>,
) => each({ symbol, meaning: input.meaning, dimension, of }, input)

/** What laden adds, every tank full and the stated load: masses `m_a`, or their places `x_a`. */
export function ladenWith(gives: 'm_a' | 'x_a'): Input<readonly number[]> {
  const isMass = gives === 'm_a'
  const dimension = isMass ? 'mass' : 'length'
  const sets = [
    set(gives, dimension, tanksOn, isMass ? fullContents('m_a') : placeOf('part')),
    set(gives, dimension, carriers, ofEither(isMass ? loadOf : placeOf)),
  ]
  return {
    symbol: gives,
    meaning: isMass ? 'what laden adds: every tank full, and the stated load' : 'the places of what laden adds',
    dimension,
    reads: [...new Set([...sets.flatMap(({ reads }) => reads), 'vehicle/load', 'vehicle/at'])],
    read: (scope): Found | null => {
      const found = sets.map(one => one.read(scope))
      const terms = found.flatMap((one): readonly Term[] => (one?.type === 'figures' ? one.terms : []))
      if (hasWeighedAxle(scope)) scope.notebook.assume('axles weighed with empty tanks, the heavier side')
      if (carriers(scope).length === 0) scope.notebook.assume('no load is stated, so laden is every tank full')
      return found.includes(null) ? null : { type: 'figures', terms }
    },
  }
}

const hasWeighedAxle = ({ record }: Scope): boolean =>
  record.parts.some(part => part.onVehicle && part.partKind === 'axle' && latest(part, 'load') !== null)

/** True where a mass has a place, or an axle was weighed: only axle loads need either. */
export function hasBalance(scope: Scope): boolean {
  return placedParts(scope).length > 0 || hasWeighedAxle(scope)
}
