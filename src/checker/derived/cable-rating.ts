import type { Input } from '../input.ts'
import { byWords, ifGiven } from '../inputs/choose.ts'
import { derived } from '../inputs/derived.ts'
import { value } from '../inputs/value.ts'
import { workOut } from '../term.ts'
import { insulation } from './cable-insulation.ts'
import { groupingFactor } from './loom-grouping.ts'
import { tabulatedRating } from './tabulated-rating.ts'
import { zoneTemperature } from './zone-temperature.ts'

/** What the cables of a circuit carry: the least of its own and of a return cable's, each for its insulation, zone and loom. */
export function correctedRating(symbol = 'I_z'): Input<number> {
  const spec = { symbol, meaning: 'the corrected rating of the cable', dimension: 'current' } as const
  const alone = cableRating('circuit/cable', symbol, '')
  const both = derived({
    ...spec,
    inputs: {
      out: cableRating('circuit/cable', 'I_z_out', ''),
      back: cableRating('circuit/return', 'I_z_back', '_back'),
    },
    formula: [
      {
        line: `${symbol} = min(I_z_out, I_z_back)`,
        unit: 'A',
        says: 'the lesser of the cable there and the cable back',
      },
    ],
  })
  const cable = ifGiven({ ...spec, of: 'circuit/return.area' }, both, alone)
  return byWords({ ...spec, of: 'circuit/return' }, { chassis: alone }, cable)
}

/** One cable's rating: its maker's or a table's for one cable at 30 °C, corrected for its zone's temperature and the cables beside it. */
function cableRating(of: 'circuit/cable' | 'circuit/return', symbol: string, tag: string): Input<number> {
  const whole = wholeRating(of, symbol, tag)
  const most = mostRating(of, symbol)
  return { ...whole, read: scope => whole.read(scope) ?? (scope.leavesOut ? most.read(scope) : null) }
}

/** What a maker rates the cable for is the most that it carries from 30 °C up, whatever its insulation and its loom. */
function mostRating(of: 'circuit/cable' | 'circuit/return', symbol: string): Input<number> {
  const maker = makersRating(of, symbol)
  return {
    ...maker,
    read: scope => {
      const zone = zoneTemperature('t').read(scope)
      const isWarm = zone?.type === 'figure' && workOut(zone.term) >= warmest
      return isWarm ? maker.read(scope) : null
    },
  }
}

const warmest = 303.15 // K, 30 °C, for which makers rate a cable

function wholeRating(of: 'circuit/cable' | 'circuit/return', symbol: string, tag: string): Input<number> {
  return derived({
    symbol,
    meaning: 'the corrected rating of the cable',
    dimension: 'current',
    inputs: {
      rating: oneCable(of, `I_0${tag}`),
      insulation: insulation(of, `T_i${tag}`),
      temperature: zoneTemperature('t'),
      grouping: groupingFactor(of, `k_g${tag}`),
    },
    formula: [
      {
        line: `k_t${tag} = sqrt(max(0, (T_i${tag} - t) / (T_i${tag} - 30 degC)))`,
        unit: '1',
        says: 'for the temperature of the zone; nothing is left where it is that of the insulation',
      },
      { line: `${symbol} = I_0${tag} * k_t${tag} * k_g${tag}`, unit: 'A', says: 'the corrected rating of the cable' },
    ],
  })
}

/** The maker's rating, taken for one cable at 30 °C, else that of a table; the two are never mixed. */
function oneCable(of: string, symbol: string): Input<number> {
  const spec = { symbol, meaning: 'rating of one cable at 30 °C', dimension: 'current' } as const
  return ifGiven({ ...spec, of: `${of}.rating` }, makersRating(of, symbol), tabulatedRating(of, symbol))
}

const makersRating = (of: string, symbol: string): Input<number> =>
  value({
    of: `${of}.rating`,
    symbol,
    meaning: "maker's rating of the cable, one at 30 °C",
    dimension: 'current',
    unit: 'A',
    exact: true,
  })
