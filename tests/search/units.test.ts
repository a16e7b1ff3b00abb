import ucum from '@lhncbc/ucum-lhc'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { plainReading, type Quantity } from '../../src/quantities/quantity.ts'
import { readOneQuantity } from '../../src/quantities/read-one-quantity.ts'
import type { Unit } from '../../src/quantities/unit.ts'
import { units } from '../../src/quantities/units.ts'
import { figureGroups } from '../../src/search/figure-groups.ts'
import { findFigures, openGroup } from '../../src/search/find-figures.ts'
import { readQuery } from '../../src/search/read-query.ts'

const plain = { approximate: 0.05, reading: plainReading }

// The oracle of every conversion is @lhncbc/ucum-lhc.
const oracle = ucum.UcumLhcUtils.getInstance()

/** Units that UCUM knows too and whose symbol reads back as the unit. */
const known = units.filter(
  unit => unit.ucum !== null && readOneQuantity(`5 ${unit.symbol}`, plainReading)?.unit === unit.id,
)
const pairs = known.flatMap(one =>
  known
    .filter(other => other.dimension === one.dimension && other.scale === one.scale)
    .map(other => [one, other] as const),
)

function inUnit(value: number, from: Unit, to: Unit): number | null {
  const { status, toVal } = oracle.convertUnitTo(from.ucum ?? '', value, to.ucum ?? '')
  return status === 'succeeded' && toVal !== null && Number.isFinite(toVal) ? toVal : null
}

/** Digits without an exponent, as people write. */
const written = (value: number): string =>
  value.toLocaleString('en', { useGrouping: false, maximumSignificantDigits: 12 })

function finds(asked: string, figure: Quantity): boolean {
  const found: number[] = []
  const [group] = figureGroups([figure])
  for (const size of readQuery(asked, plain).quantities.flatMap(({ sizes }) => sizes))
    if (group !== undefined && group.name === size.group)
      findFigures(openGroup(group), size, entry => found.push(entry))
  return found.length > 0
}

describe('a quantity of four digits', () => {
  test(`in ${known.length} units finds itself in every unit of its dimension, and not what is a fiftieth off`, () => {
    expect(known.length).toBeGreaterThan(80)
    fc.assert(
      fc.property(fc.constantFrom(...pairs), fc.integer({ min: 1001, max: 9999 }), ([from, to], value) => {
        const figure = readOneQuantity(`${value} ${from.symbol}`, plainReading)
        const [same, off] = [inUnit(value, from, to), inUnit(value * 1.02, from, to)]
        fc.pre(figure !== null && same !== null && off !== null && Math.abs(same) > 1e-9 && Math.abs(same) < 1e9)
        if (figure === null || same === null || off === null) return
        const [equal, other] = [`${written(same)} ${to.symbol}`, `${written(off)} ${to.symbol}`]
        expect({ equal, found: finds(equal, figure) }).toEqual({ equal, found: true })
        // A figure that is nought without its last digits would be as coarse as what it must not find.
        if (Math.abs(off - same) > 1e-9) expect({ other, found: finds(other, figure) }).toEqual({ other, found: false })
      }),
      { numRuns: 400, seed: 7 },
    )
  })

  test('finds nothing of another dimension', () => {
    const figure = readOneQuantity('4321 mm', plainReading)
    expect(
      figure === null
        ? null
        : known.filter(unit => unit.dimension !== 'length' && finds(`4.321 ${unit.symbol}`, figure)),
    ).toEqual([])
  })
})

describe('the tree of stretches', () => {
  test('gives what a scan of all gives', () => {
    const figures = Array.from({ length: 600 }, (_, at) =>
      readOneQuantity(
        at % 7 === 0 ? `${at} to ${at + 90} mm` : `${(at * 37) % 500}${at % 3 === 0 ? '.5' : ''} mm`,
        plainReading,
      ),
    )
    const [group] = figureGroups(figures)
    if (group === undefined) throw new Error('Unexpected figures without a group, expected lengths')
    for (const asked of ['100 mm', '4 in', '>450 mm', '< 3 mm', '95..105 mm', 'about 250 mm']) {
      const [size] = readQuery(asked, plain).quantities.flatMap(({ sizes }) => sizes)
      if (size === undefined) throw new Error(`Unexpected \`${asked}\`, expected a quantity`)
      const found: number[] = []
      findFigures(openGroup(group), size, entry => found.push(entry))
      const single = figures.flatMap((figure, at) => (figure !== null && finds(asked, figure) ? [at] : []))
      expect([asked, found.sort((a, b) => a - b)]).toEqual([asked, single])
      expect(found.length).toBeGreaterThan(0)
    }
  })
})
