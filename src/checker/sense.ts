import type { Quantity } from '../quantities/quantity.ts'
import type { Leaf } from './term.ts'

/** What a figure may be: `any`, `zero` or more, or only `more` than zero. */
export type Sense = 'any' | 'zero' | 'more'

const greatest = 1e15 // in SI: beyond what stands in any workshop, as is what is smaller than one over it

/** What cannot be nothing where it is there at all: sizes, masses, strengths, ratings. */
const moreThanZero: ReadonlySet<string> = new Set(
  `mass length width height thickness bore replaced-bore outside-diameter wheelbase stress-area thread proof-stress
  tensile-strength yield-stress plate-yield-stress allowable-stress leg-size leg-a leg-b bend-angle k-factor contents-density radius
  rolling-circumference profile rim consumption nominal rating capacity filled-volume usable-volume main-fuse cold-cranking cruise-speed
  discharge-coefficient internal-resistance max-speed flow coolant-flow height-top height-bottom spacing count required-length
  belly-clearance area elastic-modulus density power-rating`.split(/\s+/),
)
const negativeToo: ReadonlySet<string> = new Set(['at', 'front-angle', 'rear-angle'])

/** What the property at the end of a path may be: `circuit:pump/cable.area` is more than zero, a temperature anything. */
export function senseOf(path: string, { dimension }: Quantity): Sense {
  const key = path.slice(path.lastIndexOf('/') + 1)
  if (dimension === 'temperature' || dimension === 'money' || negativeToo.has(key)) return 'any'
  if (key === 'length' && path.startsWith('circuit:')) return 'zero' // a cable that is nothing beside the rest
  const last = key.slice(key.lastIndexOf('.') + 1)
  return moreThanZero.has(last) || /^ratio(-|$)/.test(key) ? 'more' : 'zero'
}

/** Why a figure cannot be what it says it is, in words; null where it can. */
export function nonsenseOf({ value, low, isSpread }: Leaf, sense: Sense): string | null {
  if (Math.abs(value) > greatest) return 'is larger than anything that can be measured'
  if (value !== 0 && Math.abs(value) < 1 / greatest) return 'is smaller than anything that can be measured'
  if (sense === 'any') return null
  if (value < 0) return 'is below zero, which it cannot be'
  if (sense === 'more' && value === 0) return 'is zero, which it cannot be'
  if (isSpread && value > 0 && (sense === 'more' ? low <= 0 : low < 0))
    return 'has a tolerance as large as itself, so that it may be nothing at all'
  return null
}
