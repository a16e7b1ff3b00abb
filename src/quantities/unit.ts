import type { Dimension } from './quantity.ts'
import { Rational } from './rational.ts'

/** How a number in a unit becomes one in SI: times the factor; with an offset; divided into it; times π too; by the gauge's law; not at all. */
export type Scale = 'factor' | 'offset' | 'reciprocal' | 'angle' | 'gauge' | 'none'

export interface Unit {
  /** Used in JSON. */
  readonly id: string
  /** As printed on pages. */
  readonly symbol: string
  readonly dimension: Dimension
  readonly scale: Scale
  /** Exact; SI units to one of this unit. */
  readonly factor: Rational
  /** Degrees to add before the factor makes them kelvins. */
  readonly offset: Rational
  readonly ucum: string | null
  readonly source: string
  /** Spellings, `+` where a plural s may follow. */
  readonly names: readonly string[]
  /** Spellings made of other units' identifiers, such as `L/h` and `lbf·ft`. */
  readonly made: readonly string[]
}

const siBrochure = 'BIPM SI Brochure, 9th edition'
export const nistSp811 = 'NIST SP 811 (2008), appendix B.8'

/** What a row of the unit table says beside identifier, symbol and dimension. */
interface UnitWording {
  /** Numbers that multiply, then after a bar those that divide: `0.3048 | 3600`. */
  readonly factor: string
  readonly names?: string
  readonly made?: string
  readonly ucum?: string
  readonly scale?: Scale
  readonly offset?: string
  readonly source?: string
}

function product(numbers: string): Rational {
  return numbers
    .trim()
    .split(' ')
    .filter(number => number !== '')
    .reduce((total, number) => {
      const factor = Rational.parse(number)
      if (factor === null)
        throw new Error(`Unexpected factor \`${number}\` in the unit table, expected a decimal number`)
      return total.times(factor)
    }, Rational.one)
}

const list = (text: string | undefined): string[] => (text === undefined ? [] : text.split('|'))

/** A row of the unit table. */
export function unit(idAndSymbol: string, dimension: Dimension, wording: UnitWording): Unit {
  const [id = '', symbol = id] = idAndSymbol.split(' = ')
  const [above = '', below = ''] = wording.factor.split('|')
  return {
    id,
    symbol,
    dimension,
    scale: wording.scale ?? 'factor',
    factor: product(above).over(product(below)),
    offset: product(wording.offset ?? '0'),
    ucum: wording.ucum ?? null,
    source: wording.source ?? siBrochure,
    names: list(wording.names),
    made: list(wording.made),
  }
}
