import { defineCheck } from '../checker/check.ts'
import { fuelUse } from '../checker/derived/fuel-use.ts'
import { fuelTanks } from '../checker/derived/tank-contents.ts'
import { each } from '../checker/inputs/each.ts'
import { value } from '../checker/inputs/value.ts'
import { lookUp } from '../checker/look-up.ts'
import { type Scope, withSubject } from '../checker/scope.ts'
import { wholeVehicle } from '../checker/subjects.ts'

const usable = value({
  of: 'tank/usable-volume',
  symbol: 'V_u',
  meaning: 'what can be drawn from it',
  dimension: 'volume',
  unit: 'L',
})

/** Asked where a fuel tank is there, and what can be drawn from one or what is used was written. */
function isWorthAsking(scope: Scope): boolean {
  const tanks = fuelTanks(scope)
  const isDrawn = tanks.some(tank => lookUp(withSubject(scope, tank), 'tank/usable-volume').held !== null)
  const isUsed = ['vehicle', 'chassis', 'hull', 'body'].some(kind => lookUp(scope, `${kind}/consumption`).held !== null)
  return tanks.length > 0 && (isDrawn || isUsed)
}

/** How far the fuel that can be drawn from all tanks goes. */
export default defineCheck({
  id: 'range',
  title: 'Range',
  question: 'How far does the usable fuel go?',
  subject: wholeVehicle('the vehicle, its fuel tanks together'),
  worthAsking: isWorthAsking,
  inputs: {
    usable: each(
      {
        symbol: 'V_u',
        meaning: 'what can be drawn from each tank',
        dimension: 'volume',
        of: fuelTanks,
        wanted: 'fuel tank',
      },
      usable,
    ),
    use: fuelUse(),
  },
  formula: [{ line: 's = sum(V_u) / c', unit: 'km', says: 'as far as the usable fuel goes' }],
  source: {
    title: 'OpenStax College Physics 2e',
    section: '12.1: fuel used for a distance, and in a time at a speed (100 km/h at 10.0 km/L is 2.78 cm³/s)',
  },
  limit: { who: 'builder', source: 'the range that build.md requires', required: ['vehicle/range'] },
  notes: ['A consumption measured on one run holds for that run: load, wind and sand use more.'],
  caution: null,
  examples: [
    {
      given: { 'tank/usable-volume': '54.0 L', 'tank/contents': 'petrol', 'vehicle/consumption': '9.2 L/100 km' },
      expect: 'pass',
      value: 587,
      source: '54 L / 9.2 L × 100 km; nothing is required, so it is a working',
    },
    {
      given: {
        'tank/usable-volume': '30.0 L ± 0 L',
        'tank/contents': 'petrol',
        'tank:second/usable-volume': '20.0 L ± 0 L',
        'tank:fresh-water/usable-volume': '40.0 L',
        'vehicle/consumption': '10.0 km/L',
        'require/vehicle/range': 'at least 400 km',
      },
      expect: 'pass',
      value: 500,
      source: 'OpenStax, 12.1: 10.0 km/L; 30 L and 20 L of fuel, and the water does not count',
    },
    {
      given: {
        'tank/usable-volume': '20.0 L ± 0 L',
        'engine:engine/consumption': '10.0 L/h ± 0 L/h',
        'vehicle/cruise-speed': '80 km/h ± 0 km/h',
        'require/vehicle/range': 'at least 200 km',
      },
      expect: 'fail',
      value: 160,
      source: '20 L at 10 L/h last 2 h, which is 160 km at 80 km/h',
    },
    {
      given: { 'tank/usable-volume': '54 L' },
      expect: 'missing',
      missing: ['vehicle/consumption'],
      source: 'What it uses was not measured',
    },
    {
      given: { 'tank/filled-volume': '58 L', 'vehicle/consumption': '9.2 L/100 km' },
      expect: 'missing',
      missing: ['example/usable-volume'],
      source: 'How much of it the pump can draw was not measured',
    },
  ],
})
