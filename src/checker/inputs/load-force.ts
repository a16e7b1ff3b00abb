import type { Input } from '../input.ts'
import { byDimension } from './choose.ts'
import { derived } from './derived.ts'
import { value } from './value.ts'

/** The load on a part as a force; a mass is taken times standard gravity, and said. `of` is `bolt/load`. */
export function loadForce(of: string, symbol: string): Input<number> {
  const spec = { symbol, meaning: 'load on it', dimension: 'force' } as const
  const force = value({ of, ...spec, unit: 'N' })
  const hung = derived({
    ...spec,
    inputs: { mass: value({ of, symbol: 'm', meaning: 'load on it, a mass', dimension: 'mass', unit: 'kg' }) },
    formula: [{ line: `${symbol} = m * 1 gn`, unit: 'N', says: 'the mass that hangs on it, at standard gravity' }],
  })
  const weight: Input<number> = {
    ...hung,
    read: scope => {
      scope.notebook.assume('load given as a mass, at rest: × gₙ')
      return hung.read(scope)
    },
  }
  return byDimension({ ...spec, of }, { mass: weight }, force)
}
