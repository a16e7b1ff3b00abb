import type { Input } from '../input.ts'
import { leafOf, statedLeaf } from '../leaf.ts'
import { writtenLimit } from '../override.ts'
import type { Scope } from '../scope.ts'
import type { Leaf } from '../term.ts'

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
    read: scope => ({ type: 'figure', term: readAcceleration(symbol, scope) }),
  }
}

function readAcceleration(symbol: string, scope: Scope): Leaf {
  const written = writtenLimit({ check: 'restraint', scope, words: null }, of => of === 'acceleration')
  const quantity = written?.max ?? written?.min ?? null
  if (written === null || quantity === null) {
    scope.notebook.assume(said)
    const meaning = 'design acceleration, fore and aft'
    return statedLeaf('assumed', { symbol, meaning, value: standard, unit: 'gn' })
  }
  const why = written.why ?? 'no reason is given'
  scope.notebook.note(`The design acceleration is that of build.md, ${quantity.text}: ${why}. Otherwise ${said}.`)
  const held = { value: quantity, place: written.place, session: null, figure: null }
  const spec = { symbol, meaning: 'design acceleration, set in build.md', unit: 'gn', isExact: true }
  return leafOf({ path: 'build/limits.restraint', held }, spec, 0)
}
