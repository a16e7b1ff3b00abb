import { type FormulaLine, workFormula } from '../formula.ts'
import type { Found, Input } from '../input.ts'
import { readAll, termsOf } from '../inputs/derived.ts'
import { each } from '../inputs/each.ts'
import { optional, value } from '../inputs/value.ts'
import { type Scope, withSubject } from '../scope.ts'
import { workOut } from '../term.ts'
import { fuelPumps, lineFlow, otherSuctionLines, sideOf } from './fuel-line.ts'
import { densityOfContents, ofFuel, viscosityOfContents } from './tank-contents.ts'

const length = (key: string, symbol: string, meaning: string): Input<number> =>
  value({ of: `part/${key}`, symbol, meaning, dimension: 'length', unit: 'mm' })

export const lineBore = length('bore', 'd', 'bore of the line')

const inputs = {
  flow: lineFlow(),
  bore: lineBore,
  length: length('length', 'L', 'length of the line'),
  density: ofFuel(densityOfContents()),
  viscosity: ofFuel(viscosityOfContents()),
  rise: optional({
    of: 'part/rise',
    symbol: 'h',
    meaning: 'by which its end lies above its start',
    dimension: 'length',
    unit: 'mm',
    sense: 'any',
  }),
}

const speed: FormulaLine = { line: 'v = q / (pi / 4 * d^2)', unit: 'm_s', says: 'speed in the line' }
const reynolds: FormulaLine = { line: 'Re = v * d * 1 s / nu', unit: '1', says: 'Reynolds number' }
const laminar: FormulaLine = { line: 'f = 64 / Re', unit: '1', says: 'friction factor, laminar' }
const turbulent: FormulaLine = {
  line: 'f = 0.25 / (ln(0.0015 mm / (3.7 * d) + 5.74 / Re^0.9) / ln(10))^2',
  unit: '1',
  says: 'friction factor, turbulent, drawn tube of 0.0015 mm roughness (Swamee and Jain)',
}
const lastLine = (symbol: string, says: string): FormulaLine => ({
  line: `${symbol} = f * L / d * rho * v^2 / 2 + rho * 1 gn * h`,
  unit: 'kPa',
  says,
})
const firstTurbulent = 2000 // Reynolds number up to which the flow is laminar, OpenStax College Physics 2e, 12.5

/** The pressure that a straight line loses to friction, and to its rise where that is written. */
export function lineLoss(symbol = 'p'): Input<number> {
  return {
    symbol,
    meaning: 'pressure lost in the line',
    dimension: 'pressure',
    reads: [...new Set(Object.values(inputs).flatMap(({ reads }) => reads))],
    formula: [
      speed,
      reynolds,
      laminar,
      turbulent,
      lastLine(symbol, 'lost to friction, and to the rise where it is written'),
    ],
    read: (scope): Found | null => {
      const found = readAll(inputs, scope)
      if (found === null) return null
      const terms = termsOf(inputs, found)
      const last = lastLine(symbol, terms.h === 'absent' ? 'lost to friction' : 'lost to friction and to the rise')
      const isLaminar = workOut(workFormula([speed, reynolds], terms)) < firstTurbulent
      const term = workFormula([speed, reynolds, isLaminar ? laminar : turbulent, last], terms)
      return { type: 'figure', term }
    },
  }
}

const others = each(
  { symbol: 'p_o', meaning: 'lost in the other lines to the pump', dimension: 'pressure', of: otherSuctionLines },
  lineLoss('p_i'),
)
const limit = value({
  of: 'pump/suction-limit',
  symbol: 'p_lim',
  meaning: 'the loss on its inlet that the pump stands',
  dimension: 'pressure',
  unit: 'kPa',
  exact: true,
})

/** What the pump's suction limit leaves for the subject after the other lines to the pump; absent for a line that is none of them. */
export function suctionLeft(symbol = 'p_s'): Input<number> {
  return {
    symbol,
    meaning: "the pump's suction limit, less what the other lines to it lose",
    dimension: 'pressure',
    reads: ['pump/suction-limit'],
    isOptional: true,
    read: scope => readLeft(symbol, scope),
  }
}

function readLeft(symbol: string, scope: Scope): Found | null {
  const [pump] = fuelPumps(scope)
  if (sideOf(scope.subject) !== 'suction' || pump === undefined) return { type: 'none' }
  const [most, lost] = [limit.read(withSubject(scope, pump)), others.read(scope)]
  if (most?.type !== 'figure' || lost?.type !== 'figures') return null
  if (lost.terms.length === 0) return most
  const line = `${symbol} = p_lim - sum(p_o)`
  const says = 'what the suction limit leaves after the other lines to the pump'
  return { type: 'figure', term: workFormula([{ line, unit: 'kPa', says }], { p_lim: most.term, p_o: lost.terms }) }
}
