import { defineCheck } from '../checker/check.ts'
import { fuelLines, lineFlow, lineSide } from '../checker/derived/fuel-line.ts'
import { lineBore, lineLoss, suctionLeft } from '../checker/derived/line-loss.ts'

const slow = { max: { value: 1, unit: 'm_s' } } as const
const fast = { max: { value: 2.5, unit: 'm_s' } } as const
const pump = { 'pump:fuel-pump/flow': '95 L/h', 'tank:fuel-tank/contents': 'petrol' }
const suction = { 'hose/name': 'hose, tank to pump', 'hose/bore': '8.0 mm', 'hose/length': '550 mm' }

/** How fast the fuel runs in each line, and what pressure it loses on the way. */
export default defineCheck({
  id: 'fuel-line',
  title: 'Fuel line',
  question: "What speed and pressure loss does the pump's flow give in feed and return?",
  subject: fuelLines('each hose and pipe of the fuel system that is fitted, modified, made or trial-fitted'),
  worthAsking: ['part/flow', 'part/bore'],
  inputs: { flow: lineFlow(), bore: lineBore, loss: lineLoss(), side: lineSide(), left: suctionLeft() },
  aspects: {
    speed: {
      formula: [{ line: 'v_line = q / (pi / 4 * d^2)', unit: 'm_s', says: 'speed in the line' }],
      limit: {
        who: 'practice',
        source:
          'common practice, no source: at most 1 m/s to the pump, so that the fuel does not boil there, and 2.5 m/s from it and back',
        by: 'side',
        groups: { suction: slow, pressure: fast, return: fast },
        ...fast,
      },
    },
    loss: {
      formula: [{ line: 'Deltap = p', unit: 'kPa', says: 'pressure lost in the line' }],
      limit: { who: 'maker', source: "the pump's suction limit", max: { share: 1, of: 'p_s' } },
    },
  },
  source: {
    title: 'OpenStax College Physics 2e',
    section:
      '12.1: v = Q/A; 12.4 and 12.5: Reynolds number and laminar flow; 11.4: a height weighs ρ g h; loss f (L/d) ρ v²/2 (Darcy), f by Swamee and Jain, 1976, where it is turbulent',
  },
  limit: null,
  notes: [
    'Filters, valves and bends are not in the loss, and what it lifts only where its rise is written: leave room for them. Equal area is not equal resistance.',
    'A line is held at least every 300 mm (Australian National Guidelines for street rods, 2.2); other places have other figures.',
  ],
  caution:
    'Let the pressure off before you open a line, engine cold and battery off, and keep an extinguisher at hand. Hose must be of a grade for the fuel in it.',
  examples: [
    {
      given: { 'pipe/flow': '0.500 L/s', 'pipe/bore': '18.0 mm' },
      aspect: 'speed',
      expect: 'pass',
      value: 1.96,
      source:
        'OpenStax, 12.1: 0.500 L/s in a hose of 0.900 cm radius run at 1.96 m/s; 2.5 m/s are allowed from the pump on',
    },
    {
      given: { 'pipe/flow': '0.500 L/s', 'pipe/bore': '5.00 mm' },
      aspect: 'speed',
      expect: 'fail',
      value: 25.5,
      source: 'OpenStax, 12.1: 0.500 L/s in a nozzle of 0.250 cm radius run at 25.5 m/s',
    },
    {
      given: { ...pump, 'hose/name': 'suction hose', 'hose/bore': '5.0 mm' },
      aspect: 'speed',
      expect: 'fail',
      value: 1.344,
      source: 'OpenStax, 12.1: 95 L/h = 26.39 cm³/s over 19.63 mm², and 1 m/s is allowed to the pump',
    },
    {
      given: { ...pump, ...suction, 'pump:fuel-pump/suction-limit': '12 kPa' },
      aspect: 'loss',
      expect: 'pass',
      value: 0.276,
      source:
        'v = 0.5250 m/s, Re = 0.525 × 8 mm / 0.8 mm²/s = 5250, 0.0015/29.6 + 5.74/2229 = 0.002626, f = 0.25/2.5807² = 0.03754, × 550/8 × 775 × 0.525²/2 = 275.7 Pa, by Swamee and Jain',
    },
    {
      given: { ...pump, ...suction, 'pump:fuel-pump/suction-limit': '0.20 kPa' },
      aspect: 'loss',
      expect: 'fail',
      value: 0.276,
      source: 'The same line, and a pump that stands no more than 0.20 kPa',
    },
    {
      given: {
        'pipe/flow': '4.32 L/h ± 0 L/h',
        'pipe/bore': '3.00 mm ± 0 mm',
        'pipe/length': '250 mm ± 0 mm',
        'tank:fuel-tank/contents': 'water',
        'tank:fuel-tank/contents-density': '1 kg/L ± 0 kg/L',
      },
      aspect: 'loss',
      expect: 'missing',
      missing: ['tank/contents'],
      source: 'Water is no fuel, so what flows in the line is not known',
    },
    {
      given: {
        'pipe/flow': '4.32 L/h',
        'pipe/bore': '3.00 mm',
        'pipe/length': '250 mm',
        'tank:fuel-tank/contents': 'diesel',
      },
      aspect: 'loss',
      expect: 'pass',
      value: 0.574,
      source:
        'Hagen and Poiseuille, OpenStax 12.4: 8 η l Q/(π r⁴) with 845 kg/m³ × 4.5 mm²/s = 3.8025 mPa·s, 1.2 cm³/s, 1.5 mm of radius: 573.8 Pa; nothing limits it',
    },
    {
      given: { 'pipe/flow': '95 L/h' },
      aspect: 'speed',
      expect: 'missing',
      missing: ['example/bore'],
      source: 'The bore was not measured',
    },
  ],
})
