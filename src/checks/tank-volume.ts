import { defineCheck } from '../checker/check.ts'
import { calculatedVolume } from '../checker/derived/tank-volume.ts'
import { optional } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'

/** What a tank should hold by its dimensions, beside what was measured when it was filled. */
export default defineCheck({
  id: 'tank-volume',
  title: 'Tank volume',
  question: 'What should the tank hold by its dimensions, and does the measured fill agree?',
  subject: parts(['tank'], 'each tank that is fitted, modified, made or trial-fitted'),
  worthAsking: [
    'volume/outside',
    'volume/less',
    'tank/filled-volume',
    'tank/wall',
    'tank/length',
    'tank/width',
    'tank/height',
  ],
  inputs: {
    calculated: calculatedVolume('V'),
    filled: optional({
      of: 'tank/filled-volume',
      symbol: 'V_f',
      meaning: 'measured fill',
      dimension: 'volume',
      unit: 'L',
    }),
  },
  formula: [{ line: 'V_tank = V', unit: 'L', says: 'what it should hold' }],
  source: {
    title: 'Solid geometry',
    section:
      'box L·B·H, cylinder π/4·D²·L, prism outline × length; the outside less the wall on every side, less what stands inside',
  },
  limit: {
    who: 'practice',
    source:
      'JCGM 100:2008: two values of one thing agree where their difference is no more than the root of both expanded uncertainties squared',
    agreesWith: 'V_f',
  },
  caution:
    'A tank that has held fuel can explode when it is welded, cut or ground, however long it has been empty. Measure its fill with water before it has ever held fuel, or with a metered pump in the open, away from anything that sparks. Local codes and licensed practice decide.',
  examples: [
    {
      given: {
        'volume/outside': 'box 860 x 380 x 300 mm',
        'volume/less': 'box 374 x 90 x 40 mm',
        'tank/wall': '3 mm',
        'tank/filled-volume': '92 L',
      },
      expect: 'pass',
      value: 92.56,
      source:
        'Solid geometry: 854 × 374 × 294 mm = 93.90 L, less 374 × 90 × 40 mm = 1.346 L; U is 0.82 L beside the 0.58 L of a fill written as 92 L',
    },
    {
      given: {
        'volume/outside': 'box 860 x 380 x 300 mm',
        'volume/less': 'box 374 x 90 x 40 mm',
        'tank/wall': '3 mm',
        'tank/filled-volume': '84 L',
      },
      expect: 'fail',
      value: 92.56,
      source: 'The same tank beside a fill of 84 L: 8.6 L apart, and no more than 1.0 L is their uncertainty',
    },
    {
      given: { 'volume/outside': 'cylinder 1500 x 5000 mm', 'tank/wall': '0.0 mm' },
      expect: 'pass',
      value: 8835.729,
      source:
        'A published tank of 1.5 m across and 5 m long holds 8.835 729 m³; nothing was measured, so it is a working',
    },
    {
      given: { 'tank/length': '500 mm', 'tank/width': '300 mm', 'tank/height': '200 mm', 'tank/wall': '2 mm' },
      expect: 'pass',
      value: 28.776,
      source: 'Solid geometry: 496 × 296 × 196 mm',
    },
    {
      given: {
        'volume/outside': 'prism of [0,0] [520,0] [520,140] [260,300] [0,300] x 640 mm',
        'tank/filled-volume': '80 L',
      },
      expect: 'missing',
      missing: ['example/wall'],
      source: 'A volume in litres cannot be told from the outside without the wall',
    },
  ],
})
