import type { Input } from '../input.ts'
import { leafOf, statedLeaf } from '../leaf.ts'
import { writtenLimit } from '../resolve-limit.ts'

const standard = 20 // gₙ, fore and aft, as UN R67 asks of gas containers in cars; from memory
const sideways = 8 // gₙ, sideways and up, the same
const said = `${standard} gₙ fore and aft, ${sideways} gₙ sideways and up, as UN R67 asks of gas containers in cars, borrowed; from memory`

/** The acceleration that the tank is to be held against: that of build.md, else the default. */
export function designAcceleration(symbol = 'a'): Input<number> {
  return {
    symbol,
    meaning: 'design acceleration',
    dimension: 'acceleration',
    reads: ['limits/restraint'],
    read: scope => {
      const written = writtenLimit({ check: 'restraint', scope, words: null }, of => of === 'acceleration')
      const quantity = written?.max ?? written?.min ?? null
      if (written === null || quantity === null) {
        scope.notebook.assume(said)
        return {
          type: 'figure',
          term: statedLeaf('assumed', {
            symbol,
            meaning: 'design acceleration, fore and aft',
            value: standard,
            unit: 'gn',
          }),
        }
      }
      scope.notebook.note(
        `The design acceleration is that of build.md, ${quantity.text}: ${written.why ?? 'no reason is given'}. Otherwise ${said}.`,
      )
      const held = { value: quantity, place: written.place, session: null, figure: null }
      const leaf = leafOf(
        { path: 'build/limits.restraint', held },
        { symbol, meaning: 'design acceleration, set in build.md', unit: 'gn', isExact: true },
        0,
      )
      return { type: 'figure', term: leaf }
    },
  }
}
