import type { Input } from '../input.ts'
import { firstGiven } from '../inputs/choose.ts'
import { value } from '../inputs/value.ts'

/** Where what the whole vehicle may weigh is written. */
export const grossRatings = ['vehicle/gross-rating', 'vehicle/rating'] as const

/** What the whole vehicle may weigh, as written. */
export function grossRating(symbol: string): Input<number> {
  const meaning = 'gross rating of the vehicle'
  const written = (of: string): Input<number> =>
    value({ of, symbol, meaning, dimension: 'mass', unit: 'kg', exact: true })
  const [gross, plain] = grossRatings
  return firstGiven({ symbol, meaning: 'gross rating', dimension: 'mass' }, written(gross), written(plain))
}
