import { defineCheck } from '../checker/check.ts'
import { value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'

const speed = (key: string, symbol: string, meaning: string) =>
  value({ of: `speedometer/${key}`, symbol, meaning, dimension: 'speed', unit: 'km_h' })

/** By how much the speedometer reads more than the vehicle does. */
export default defineCheck({
  id: 'speedometer',
  title: 'Speedometer',
  question: 'Is the indicated speed lawful after the tyre and axle change?',
  subject: parts(['speedometer'], 'the speedometer'),
  worthAsking: ['speedometer/indicated-speed', 'speedometer/true-speed'],
  inputs: {
    indicated: speed('indicated-speed', 'V_1', 'what the needle shows'),
    trueSpeed: speed('true-speed', 'V_2', 'true speed at that reading'),
  },
  formula: [{ line: 'DeltaV = V_1 - V_2', unit: 'km_h', says: 'by which it reads more than it does' }],
  source: { title: 'UN Regulation No. 39', section: '5.4 (5.3 in an older revision): 0 ≤ V1 − V2 ≤ V2/10 + 4 km/h' },
  limit: {
    who: 'law',
    source:
      'UN R39, 5.4: it never reads less than the true speed, nor more than a tenth and 4 km/h above it; the regulation tries it at 40, 80 and 120 km/h; the approval is for the authority to give',
    min: { value: 0, unit: 'km_h' },
    max: {
      formula: [{ line: 'DeltaV_max = V_2 / 10 + 4 km_h', unit: 'km_h', says: 'a tenth of the true speed and 4 km/h' }],
    },
  },
  caution: 'Have somebody else read the watch: whoever drives keeps their eyes on the road.',
  examples: [
    {
      given: { 'speedometer/indicated-speed': '40.0 km/h', 'speedometer/true-speed': '37.5 km/h' },
      expect: 'pass',
      value: 2.5,
      source: 'UN R39, 5.4: between 0 and 3.75 + 4 km/h',
    },
    {
      given: { 'speedometer/indicated-speed': '114 km/h ± 0 km/h', 'speedometer/true-speed': '100 km/h ± 0 km/h' },
      expect: 'pass',
      value: 14,
      source: 'UN R39, as it is commonly quoted: at a true 100 km/h it may show 114 km/h and no more; at the limit',
    },
    {
      given: { 'speedometer/indicated-speed': '115 km/h ± 0 km/h', 'speedometer/true-speed': '100 km/h ± 0 km/h' },
      expect: 'fail',
      value: 15,
      source: 'UN R39, 5.4: one more than the 14 km/h that are allowed at 100 km/h',
    },
    {
      given: { 'speedometer/indicated-speed': '48.0 km/h', 'speedometer/true-speed': '50.0 km/h' },
      expect: 'fail',
      value: -2,
      source: 'UN R39, 5.4: it may never read less than the true speed',
    },
    {
      given: { 'speedometer/indicated-speed': '81 km/h', 'speedometer/true-speed': '80 km/h' },
      expect: 'pass',
      value: 1,
      source: 'UN R39, 5.4: 1 km/h over, and U = 2 × √2 × 0.5/√3 = 0.82 km/h leaves it above 0',
    },
    {
      given: { 'speedometer/indicated-speed': '25 mph' },
      expect: 'missing',
      missing: ['example/true-speed'],
      source: 'What the vehicle did at that reading was not measured',
    },
  ],
})
