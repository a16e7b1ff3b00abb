import type { Input } from '../input.ts'
import { byDimension } from '../inputs/choose.ts'
import { derived } from '../inputs/derived.ts'
import { frameValue } from '../inputs/frame-value.ts'
import { value } from '../inputs/value.ts'
import { lookUp } from '../look-up.ts'
import type { Scope } from '../scope.ts'

const kinds = ['vehicle', 'chassis', 'hull', 'body', 'engine'] as const
const spec = { symbol: 'c', meaning: 'fuel used for a distance', dimension: 'consumption' } as const

/** The fuel used for a distance; what is used in a time is divided by the cruise speed. */
export function fuelUse(): Input<number> {
  const byKind = Object.fromEntries(kinds.map(kind => [kind, useOf(kind)]))
  return {
    ...spec,
    reads: [...kinds.map(kind => `${kind}/consumption`), 'vehicle/cruise-speed'],
    formula: [{ line: 'c = q / v', unit: 'L_100km', says: 'fuel for each distance' }],
    read: scope => (byKind[tellingKind(scope)] ?? useOf('vehicle')).read(scope),
  }
}

function useOf(kind: string): Input<number> {
  const of = `${kind}/consumption`
  const perDistance = value({ of, ...spec, unit: 'L_100km' })
  const perTime = derived({
    ...spec,
    inputs: {
      flow: value({ of, symbol: 'q', meaning: 'fuel used in a time', dimension: 'flow', unit: 'L_h' }),
      speed: frameValue('cruise-speed', {
        symbol: 'v',
        meaning: 'speed on a long run',
        dimension: 'speed',
        unit: 'km_h',
      }),
    },
    formula: [{ line: 'c = q / v', unit: 'L_100km', says: 'fuel for each distance' }],
  })
  return byDimension({ ...spec, of }, { flow: perTime }, perDistance)
}

const tellingKind = (scope: Scope): string =>
  kinds.find(kind => lookUp(scope, `${kind}/consumption`).held !== null) ?? 'vehicle'

/** What the engine burns at most, as a flow. */
export function engineDemand(symbol = 'q_e'): Input<number> {
  return value({
    of: 'engine/consumption',
    symbol,
    meaning: 'what the engine burns at full power',
    dimension: 'flow',
    unit: 'L_h',
  })
}
