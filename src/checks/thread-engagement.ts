import { defineCheck } from '../checker/check.ts'
import { stressArea, threadDiameter } from '../checker/derived/stress-area.ts'
import { value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'

const stress = (key: string, symbol: string, meaning: string) =>
  value({ of: `bolt/${key}`, symbol, meaning, dimension: 'pressure', unit: 'MPa', exact: true })

const steel = {
  'bolt/thread': 'M8 × 1.25',
  'bolt/stress-area': '36.6 mm²',
  'bolt/tensile-strength': '800 MPa',
}

/** Whether a bolt would break before it strips the thread out of the plate that it is screwed into. */
export default defineCheck({
  id: 'thread-engagement',
  title: 'Thread engagement',
  question: 'Is enough thread engaged in the tapped plate?',
  subject: parts(['bolt'], 'each bolt that is fitted, modified, made or trial-fitted'),
  worthAsking: ['bolt/engagement', 'bolt/plate-yield-stress'],
  inputs: {
    engaged: value({
      of: 'bolt/engagement',
      symbol: 'L_e',
      meaning: 'length of thread in the plate',
      dimension: 'length',
      unit: 'mm',
    }),
    area: stressArea(),
    diameter: threadDiameter(),
    strength: stress('tensile-strength', 'R_m', 'stress at which the bolt breaks'),
    plate: stress('plate-yield-stress', 'R_p', 'yield stress of the plate'),
  },
  formula: [{ line: 'L_engaged = L_e', unit: 'mm', says: 'the thread that is engaged' }],
  source: {
    title: 'ISO 68-1',
    section:
      'basic profile: at the outside diameter seven eighths of each pitch are plate, so π d × 7/8 shears for each length; both from memory; it yields in shear at 0.577 of its yield stress (von Mises); tolerances of the thread are not in it',
  },
  limit: {
    who: 'practice',
    source:
      'the bolt is to break before the plate strips: a broken bolt is seen and replaced, a stripped plate lets go without a sign; ISO 68-1 for the areas',
    min: {
      formula: [
        { line: 'F_m = R_m * A_s', unit: 'N', says: 'the load at which the bolt breaks' },
        {
          line: 'L_min = F_m / (0.577 * R_p * 7 / 8 * pi * d)',
          unit: 'mm',
          says: 'the length at which the bolt breaks before the plate strips',
        },
      ],
    },
  },
  notes: ['Count full threads only: neither the chamfer of the hole nor the point of the bolt.'],
  caution:
    'Seats, belts, brakes and steering are not hung on a thread in thin plate without a welded boss or a nut behind it: qualified people decide.',
  examples: [
    {
      given: { ...steel, 'bolt/engagement': '12.0 mm', 'bolt/plate-yield-stress': '355 MPa' },
      expect: 'pass',
      value: 12,
      source:
        'ISO 68-1: 36.6 mm² × 800 MPa = 29.28 kN; 0.577 × 355 × 7/8 × π × 8 = 4504.6 N for each mm: 6.5 mm at least',
    },
    {
      given: { ...steel, 'bolt/engagement': '6.0 mm', 'bolt/plate-yield-stress': '125 MPa' },
      expect: 'fail',
      value: 6,
      source:
        'The same bolt in 5083-O, 125 MPa (EN 485-2): 29.28 kN over 1586.1 N for each mm is 18.5 mm, more than 2 d',
    },
    {
      given: {
        'bolt/thread': 'M6',
        'bolt/tensile-strength': '800 MPa',
        'bolt/engagement': '5 mm',
        'bolt/plate-yield-stress': '355 MPa',
      },
      expect: 'marginal',
      value: 5,
      source:
        'ISO 68-1: π/4 × (6 − 0.9382)² = 20.12 mm² × 800 = 16.10 kN over 3378.4 N for each mm: 4.77 mm, and a length written as 5 mm may be 4.5 mm',
    },
    {
      given: { ...steel, 'bolt/plate-yield-stress': '355 MPa' },
      expect: 'missing',
      missing: ['example/engagement'],
      source: 'How much thread is engaged was not measured',
    },
  ],
})
