import { defineCheck } from '../checker/check.ts'
import { stressArea, threadDiameter } from '../checker/derived/stress-area.ts'
import { nutFactor } from '../checker/derived/tightening.ts'
import { loadForce } from '../checker/inputs/load-force.ts'
import { value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'

const preload = {
  line: 'F_p = 0.75 * S_p * A_s',
  unit: 'N',
  says: '75 % of the proof load, to which it is tightened',
} as const

/** What a bolt carries beside what it may, and the torque that tightens it. */
export default defineCheck({
  id: 'bolt-load',
  title: 'Bolt load',
  question: 'What may the bolt carry, and what torque tightens it?',
  subject: parts(['bolt'], 'each bolt that is fitted, modified, made or trial-fitted; its load is that of one'),
  worthAsking: ['bolt/load', 'bolt/proof-stress', 'bolt/torque', 'bolt/torque-set'],
  inputs: {
    load: loadForce('bolt/load', 'F'),
    area: stressArea(),
    proof: value({
      of: 'bolt/proof-stress',
      symbol: 'S_p',
      meaning: 'proof stress of its class',
      dimension: 'pressure',
      unit: 'MPa',
      exact: true,
    }),
    diameter: threadDiameter(),
    factor: nutFactor(),
  },
  formula: [{ line: 'F_bolt = F', unit: 'N', says: 'the load on one bolt' }],
  beside: [preload, { line: 'T = K * d * F_p', unit: 'Nm', says: 'the torque that tightens it, an estimate' }],
  source: {
    title: 'ISO 898-1',
    section:
      "proof stress and stress area π/4 (d − 0.9382 P)²; T = K F d, Shigley's Mechanical Engineering Design, 9th edition, table 8-15",
  },
  limit: {
    who: 'practice',
    source:
      'ISO 898-1 for the proof load; three quarters of it as preload is common practice, and the load on a preloaded joint stays below its preload',
    max: { formula: [preload] },
  },
  notes: [
    'A torque is only an estimate of a preload: the nut factor scatters by a quarter either way. The load is taken along the bolt; one across it needs its own sum.',
  ],
  caution:
    "Bolts of brakes, steering, suspension, seats and belts: the maker's class and torque go first, and qualified people check them. A bolt that was stretched, bent or heated is scrap.",
  examples: [
    {
      given: {
        'bolt/load': '2.90 kN',
        'bolt/thread': 'M8 × 1.25',
        'bolt/stress-area': '36.6 mm²',
        'bolt/proof-stress': '580 MPa',
        'bolt/finish': 'zinc',
      },
      expect: 'pass',
      value: 2900,
      source: 'ISO 898-1, M8 of class 8.8: proof load 21.2 kN, of which 75 % is 15.9 kN',
    },
    {
      given: { 'bolt/load': '17.00 kN', 'bolt/thread': 'M8', 'bolt/proof-stress': '580 MPa' },
      expect: 'fail',
      value: 17000,
      source:
        'ISO 898-1: π/4 × (8 − 0.9382 × 1.25)² = 36.61 mm², the table has 36.6; × 580 MPa × 0.75 = 15.93 kN, and 17 kN is more',
    },
    {
      given: { 'bolt/load': '1000.0 kg', 'bolt/stress-area': '84.3 mm²', 'bolt/proof-stress': '830 MPa' },
      expect: 'pass',
      value: 9807,
      source:
        'ISO 898-1, M12 of class 10.9: proof load 70.0 kN, of which 75 % is 52.5 kN; 1000 kg × 9.80665 hang on it',
    },
    {
      given: { 'bolt/load': '8.75 kN', 'bolt/thread': 'M6', 'bolt/proof-stress': '580 MPa' },
      expect: 'marginal',
      value: 8750,
      source:
        'ISO 898-1, M6 of class 8.8: 20.12 mm² × 580 MPa × 0.75 = 8754 N, within half of the last digit of 8.75 kN',
    },
    {
      given: { 'bolt/load': '2.9 kN', 'bolt/thread': 'M8 × 1.25' },
      expect: 'missing',
      missing: ['example/proof-stress'],
      source: 'Without its class nothing says what it may carry',
    },
  ],
})
