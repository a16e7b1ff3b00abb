import { quantityAt } from '../../record/lookups.ts'
import type { Part } from '../../record/record.ts'
import type { Outcome } from '../check.ts'
import type { Contribution } from '../propagate.ts'
import type { Scope } from '../scope.ts'
import { digitsOf } from '../show-figure.ts'
import { leavesOf } from '../term.ts'
import { placedParts } from './vehicle-masses.ts'

const kilograms = (mass: number): string => `${digitsOf(mass, 3)} kg`
const partsOf = (count: number): string => (count === 1 ? '1 part' : `${count} parts`)

/** How much what nobody weighed matters to an axle load, or to the centre, in sentences. A mass that is not written cannot be known: what it would have to be is. */
export function sayUnweighed(outcome: Outcome, scope: Scope): string[] {
  const on = scope.record.parts.filter(part => part.onVehicle && part.partKind !== 'axle')
  const massless = on.filter(part => quantityAt(part, 'mass') === null)
  const placeless = on.filter(part => quantityAt(part, 'mass') !== null && quantityAt(part, 'at') === null)
  const shares = sayShares(outcome.worked.contributions)
  if (massless.length + placeless.length === 0) return shares
  if (isWeighed(outcome))
    return [
      'What has no mass or no place in the record stood on the scales with the rest, so it moves nothing here.',
      ...shares,
    ]
  const unknown =
    outcome.aspect?.startsWith('centre') === true ? sayCentre(outcome, scope, massless) : sayLoad(outcome, massless)
  return [...sayPlaceless(outcome, placeless), ...unknown, ...shares]
}

/** The loads that an answer stands on were weighed, all of them. */
function isWeighed({ term }: Outcome): boolean {
  const leaves = leavesOf(term)
  return leaves.some(({ path }) => path?.endsWith('/load')) && !leaves.some(({ symbol }) => symbol === 'm')
}

function sayPlaceless({ aspect, worked, nearest }: Outcome, parts: readonly Part[]): string[] {
  if (parts.length === 0 || aspect?.startsWith('centre') === true) return []
  const mass = parts.reduce((sum, part) => sum + (quantityAt(part, 'mass')?.value.si ?? 0) * Number(part.qty), 0)
  const most = worked.value + mass
  const against =
    nearest === null ? '' : most > nearest.limit ? ', which is beyond the limit' : ', which the limit still allows'
  return [
    `${partsOf(parts.length)} of ${kilograms(mass)} ${parts.length === 1 ? 'has' : 'have'} no place: all of it here would make ${kilograms(most)}${against}.`,
  ]
}

function sayLoad({ worked, nearest }: Outcome, massless: readonly Part[]): string[] {
  if (massless.length === 0) return []
  const lead = `${partsOf(massless.length)} on the vehicle ${massless.length === 1 ? 'has' : 'have'} no mass in the record`
  if (nearest === null) return [`${lead}: with no limit written, nothing tells how much of it would matter.`]
  const room = nearest.limit - worked.value
  if (room <= 0) return [`${lead}: it is at its limit without them, and what they weigh makes it no less.`]
  const sure = room - nearest.uncertainty
  const first =
    sure > 0 && sure < room
      ? `${kilograms(sure)} here would bring it to where the limit lies within what it can be, `
      : ''
  return [`${lead}: ${first}${kilograms(room)} here would bring it to its limit.`]
}

/** How far ten kilograms that nobody knows of would move the centre. */
function sayCentre({ worked }: Outcome, scope: Scope, massless: readonly Part[]): string[] {
  if (massless.length === 0) return []
  const total = placedParts(scope).reduce(
    (sum, { thing }) => sum + (thing === null ? 0 : (quantityAt(thing, 'mass')?.value.si ?? 0)),
    0,
  )
  const moved = (10 * worked.value) / (total + 10)
  return [
    `${partsOf(massless.length)} on the vehicle ${massless.length === 1 ? 'has' : 'have'} no mass in the record: each 10 kg of it over the front axle would move the centre ${digitsOf(moved * 1000, 2)} mm forward.`,
  ]
}

/** Whose the uncertainty is, in hundredths of the variance: masses that were only estimated, other masses, places and lengths. */
function sayShares(contributions: readonly Contribution[]): string[] {
  if (contributions.length === 0) return []
  const isMass = ({ leaf }: Contribution): boolean => leaf.quantity?.dimension === 'mass'
  const isGuess = ({ leaf }: Contribution): boolean => leaf.quantity?.approximate === true
  const percent = (of: (one: Contribution) => boolean): number =>
    Math.round(100 * contributions.filter(of).reduce((sum, { share }) => sum + share, 0))
  const guessed = percent(one => isMass(one) && isGuess(one))
  const masses = percent(one => isMass(one) && !isGuess(one))
  if (guessed === 0) return []
  return [
    `Of the variance ${guessed} % is of masses that are only written as about, ${masses} % of masses that were weighed, the rest of places and lengths: weighing the first is worth the most.`,
  ]
}
