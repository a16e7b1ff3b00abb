import { workFormula } from '../formula.ts'
import type { Found, Input } from '../input.ts'
import { figureAt } from '../inputs/value.ts'
import { statedLeaf } from '../leaf.ts'
import { lookUp } from '../look-up.ts'
import type { Scope } from '../scope.ts'
import {
  annealedCopper,
  flexibleCopper,
  flexibleCopperSource,
  strandingAllowance,
} from '../tables/conductor-resistance.ts'
import type { Leaf, Term } from '../term.ts'
import { comparePlated } from './compared-ratings.ts'

/** Resistance of each metre of a conductor at 20 °C, by its section or gauge. `of` is `circuit/cable` or `circuit/return`. */
export function conductorResistance(of: string, symbol: string): Input<number> {
  return {
    symbol,
    meaning: 'resistance of each metre at 20 °C',
    dimension: 'resistance-per-length',
    reads: [`${of}.area`],
    tables: [flexibleCopperSource],
    read: scope => readResistance(of, symbol, scope),
  }
}

function readResistance(of: string, symbol: string, scope: Scope): Found | null {
  const target = lookUp(scope, `${of}.area`)
  if (target.held === null) {
    scope.notebook.need(target.path, 'section or gauge of the cable is not written')
    return null
  }
  const found = figureAt(
    target,
    {
      symbol: symbol.replace(/^[a-z]+_20/, 'A'),
      meaning: 'section of the cable',
      dimension: 'area',
      unit: 'mm2',
      exact: true,
      isSize: true,
    },
    scope,
  )
  if (found?.type !== 'figure' || found.term.type !== 'leaf') return null
  return {
    type: 'figure',
    term:
      found.term.quantity?.unit === 'AWG' ? byGauge(found.term, symbol, scope) : bySection(found.term, symbol, scope),
  }
}

function byGauge(area: Leaf, symbol: string, scope: Scope): Term {
  scope.notebook.look({
    table: 'Gauge',
    row: `${area.text ?? ''} is ${(area.value * 1e6).toFixed(3)} mm²`,
    source: 'ASTM B258, copper at 17.241 nΩ·m',
  })
  comparePlated(area, scope)
  return workFormula(
    [
      {
        line: `${symbol} = ${annealedCopper} Ohm_km * 1 mm2 / A`,
        unit: 'mOhm_m',
        says: 'each metre at 20 °C, by its gauge',
      },
    ],
    { A: area },
  )
}

function bySection(area: Leaf, symbol: string, scope: Scope): Term {
  const section = String(Number((area.value * 1e6).toPrecision(9)))
  const row = Object.hasOwn(flexibleCopper, section) ? flexibleCopper[section] : undefined
  if (row === undefined) {
    scope.notebook.assume(
      `${section} mm² is not in IEC 60228: ${annealedCopper} nΩ·m × ${strandingAllowance} over its section, the largest ratio of the table up to 50 mm²`,
    )
    return workFormula(
      [
        {
          line: `${symbol} = ${strandingAllowance} * ${annealedCopper} Ohm_km * 1 mm2 / A`,
          unit: 'mOhm_m',
          says: 'each metre at 20 °C, by its section',
        },
      ],
      { A: area },
    )
  }
  scope.notebook.look({
    table: 'Conductor resistance',
    row: `${section} mm²: ${row} Ω/km`,
    source: flexibleCopperSource,
  })
  return statedLeaf('table', {
    symbol,
    meaning: `resistance of each metre at 20 °C, ${section} mm²`,
    value: row,
    unit: 'mOhm_m',
  })
}
