import { type Aspect, defineCheck } from '../checker/check.ts'
import { rollingCircumference } from '../checker/derived/rolling-circumference.ts'
import { ifGiven } from '../checker/inputs/choose.ts'
import { value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'

const gears = ['1', '2', '3', '4', '5', '6', '7', '8', 'reverse'] as const
const ratio = (of: string, symbol: string, meaning: string) =>
  value({ of, symbol, meaning, dimension: 'ratio', unit: '1' })
const final = { symbol: 'i_f', meaning: 'ratio of the final drive', dimension: 'ratio' } as const

function gear(name: string): Aspect {
  return {
    formula: [
      { line: `v = 1000 rpm * C / (i_${name} * i_f)`, unit: 'km_h', says: 'road speed at 1000 rpm of the engine' },
    ],
    limit: null,
    worthAsking: [`gearbox/ratio-${name}`],
  }
}

const box = {
  'gearbox/ratio-1': '3.45',
  'gearbox/ratio-2': '1.95',
  'gearbox/ratio-3': '1.28',
  'gearbox/ratio-4': '0.97',
  'gearbox/ratio-5': '0.80',
  'gearbox/ratio-6': '0.76',
  'gearbox/ratio-7': '0.69',
  'gearbox/ratio-8': '0.60',
  'gearbox/ratio-reverse': '3.33',
  'axle:front-axle/ratio': '4.06',
  'tyre:tyres/rolling-circumference': '1795 mm',
}
const byHand = (ratios: string) => `60 × 1.795 m / (${ratios}): 0.06 n C / (i_g i_f) with n = 1000`

/** The road speed that 1000 rpm of the engine give in each gear. */
export default defineCheck({
  id: 'gearing',
  title: 'Gearing',
  question: 'What road speed does 1000 rpm give in each gear?',
  subject: parts(['gearbox'], 'each gearbox that is fitted, modified, made or trial-fitted'),
  worthAsking: gears.map(name => `gearbox/ratio-${name}`),
  inputs: {
    ...Object.fromEntries(
      gears.map(name => [`gear${name}`, ratio(`gearbox/ratio-${name}`, `i_${name}`, `ratio in gear ${name}`)]),
    ),
    final: ifGiven(
      { ...final, of: 'gearbox/ratio' },
      ratio('gearbox/ratio', 'i_f', final.meaning),
      ratio('axle/ratio', 'i_f', final.meaning),
    ),
    circumference: rollingCircumference(),
  },
  aspects: Object.fromEntries(gears.map(name => [name, gear(name)])),
  source: {
    title: 'ISO 4000-1 and ETRTO, as tyre sizes are commonly worked',
    section:
      'v = n C / (i_g i_f), one turn of the engine over both ratios; C as measured, else of the nominal diameter',
  },
  limit: null,
  notes: ['Slip is not in it. Real tyres of one size differ by a few per cent.'],
  caution: null,
  examples: [
    {
      given: {
        'gearbox/ratio-4': '0.76',
        'axle:front-axle/ratio': '4.10',
        'tyre:tyres/rolling-circumference': '2288 mm',
      },
      aspect: '4',
      expect: 'pass',
      value: 44.1,
      source: 'A published example of 2200 rpm, 0.76, 4.10 and 2.288 m gives 96.9 km/h: 44.05 km/h at 1000 rpm',
    },
    { given: box, aspect: '1', expect: 'pass', value: 7.69, source: byHand('3.45 × 4.06') },
    { given: box, aspect: '2', expect: 'pass', value: 13.6, source: byHand('1.95 × 4.06') },
    { given: box, aspect: '3', expect: 'pass', value: 20.72, source: byHand('1.28 × 4.06') },
    { given: box, aspect: '4', expect: 'pass', value: 27.35, source: byHand('0.97 × 4.06') },
    { given: box, aspect: '5', expect: 'pass', value: 33.16, source: byHand('0.80 × 4.06') },
    { given: box, aspect: '6', expect: 'pass', value: 34.9, source: byHand('0.76 × 4.06') },
    { given: box, aspect: '7', expect: 'pass', value: 38.45, source: byHand('0.69 × 4.06') },
    { given: box, aspect: '8', expect: 'pass', value: 44.21, source: byHand('0.60 × 4.06') },
    { given: box, aspect: 'reverse', expect: 'pass', value: 7.97, source: byHand('3.33 × 4.06') },
    {
      given: {
        'gearbox/ratio-1': '3.45',
        'axle:front-axle/ratio': '4.06',
        'tyre:tyres/width': '225 mm',
        'tyre:tyres/profile': '65 %',
        'tyre:tyres/rim': '17 in',
      },
      aspect: '1',
      expect: 'pass',
      value: 9.747,
      source: 'A 225/65 R17 tyre is published as 724.3 mm across and 2275 mm round; 60 × 2.2755 m / (3.45 × 4.06)',
    },
    {
      given: { 'gearbox/ratio-1': '3.45', 'tyre:tyres/rolling-circumference': '1795 mm' },
      aspect: '1',
      expect: 'missing',
      missing: ['axle/ratio'],
      source: 'Nothing is known of the final drive',
    },
  ],
})
