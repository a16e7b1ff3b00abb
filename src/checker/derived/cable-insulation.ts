import type { Input } from '../input.ts'
import { value } from '../inputs/value.ts'
import { lookUp } from '../look-up.ts'

/** The temperature of a cable's insulation; a return that gives none has its circuit's. `of` is `circuit/cable` or `circuit/return`. */
export function insulation(of: string, symbol: string): Input<number> {
  const spec = {
    symbol,
    meaning: 'temperature of the insulation',
    dimension: 'temperature',
    unit: 'degC',
    exact: true,
  } as const
  const own = value({ of: `${of}.insulation`, ...spec })
  if (of === 'circuit/cable') return own
  const circuits = value({ of: 'circuit/cable.insulation', ...spec })
  return {
    ...own,
    reads: [...own.reads, ...circuits.reads],
    read: scope => {
      if (lookUp(scope, `${of}.insulation`).held !== null) return own.read(scope)
      if (lookUp(scope, 'circuit/cable.insulation').held !== null)
        scope.notebook.assume("return cable with its circuit's insulation")
      return circuits.read(scope)
    },
  }
}
