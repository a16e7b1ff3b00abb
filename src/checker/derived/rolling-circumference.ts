import type { Input } from '../input.ts'
import { firstGiven } from '../inputs/choose.ts'
import { derived } from '../inputs/derived.ts'
import { value } from '../inputs/value.ts'

const spec = { symbol: 'C', meaning: 'rolling circumference', dimension: 'length' } as const

/** How far a driven wheel rolls in one turn: as measured, else by its radius, else by the size on the tyre. */
export function rollingCircumference(): Input<number> {
  const measured = (kind: string): Input<number> => value({ of: `${kind}/rolling-circumference`, ...spec, unit: 'mm' })
  return firstGiven(
    spec,
    measured('tyre'),
    measured('wheel'),
    byRadius('tyre'),
    byRadius('wheel'),
    bySize('tyre'),
    bySize('wheel'),
    measured('tyre'),
  )
}

function byRadius(kind: string): Input<number> {
  return derived({
    ...spec,
    inputs: {
      radius: value({ of: `${kind}/radius`, symbol: 'r', meaning: 'rolling radius', dimension: 'length', unit: 'mm' }),
    },
    formula: [{ line: 'C = 2 * pi * r', unit: 'mm', says: 'one turn, by the rolling radius' }],
  })
}

const sizeLines = [
  { line: 'D = D_r + 2 * B * p', unit: 'mm', says: 'nominal diameter of the tyre' },
  { line: 'C = pi * D', unit: 'mm', says: 'one turn of the nominal diameter' },
] as const

/** What is stamped on a tyre's wall. */
function stamped(kind: string) {
  const part = (key: string, symbol: string, meaning: string) => ({
    of: `${kind}/${key}`,
    symbol,
    meaning,
    exact: true,
  })
  return {
    rim: value({ ...part('rim', 'D_r', 'diameter of the rim'), dimension: 'length', unit: 'in' }),
    width: value({ ...part('width', 'B', 'nominal width'), dimension: 'length', unit: 'mm' }),
    profile: value({
      ...part('profile', 'p', 'height of the wall as a share of the width'),
      dimension: 'ratio',
      unit: 'percent',
    }),
  }
}

/** The nominal diameter, rim + 2 × width × profile; a tyre under load rolls some 3 % less, which is said. */
function bySize(kind: string): Input<number> {
  const size = derived({ ...spec, inputs: stamped(kind), formula: sizeLines })
  return {
    ...size,
    read: scope => {
      const found = size.read(scope)
      if (found !== null)
        scope.notebook.assume(
          'rolls as its nominal diameter; under load a tyre rolls some 3 % less, so chalk it and measure',
        )
      return found
    },
  }
}
