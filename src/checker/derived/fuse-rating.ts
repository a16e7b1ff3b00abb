import type { Input } from '../input.ts'
import { value } from '../inputs/value.ts'
import { words } from '../inputs/words.ts'

/** The rating of a circuit's fuse. */
export function fuseRating(symbol = 'I_n'): Input<number> {
  return value({
    of: 'circuit/fuse.rating',
    symbol,
    meaning: 'rating of the fuse',
    dimension: 'current',
    unit: 'A',
    exact: true,
  })
}

/** How a circuit is used: continuous where nothing is said, and that is said. */
export function circuitDuty(): Input<string> {
  return words({
    of: 'circuit/duty',
    meaning: 'duty of the circuit',
    default: { words: 'continuous', said: 'duty `continuous`' },
  })
}
