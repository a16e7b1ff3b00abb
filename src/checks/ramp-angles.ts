import { type Aspect, defineCheck } from '../checker/check.ts'
import { frameValue } from '../checker/inputs/frame-value.ts'
import { lookUp } from '../checker/look-up.ts'
import { wholeVehicle } from '../checker/subjects.ts'

const length = (key: string, symbol: string, meaning: string) =>
  frameValue(key, { symbol, meaning, dimension: 'length', unit: 'mm' })

const required = (name: string) => ({
  who: 'builder' as const,
  source: `the ${name} angle that build.md requires`,
  required: [`vehicle/${name}`, `vehicle/${name}-angle`],
})

/** Asked where a figure that nothing else needs was taken of the vehicle or its frame. */
const worth =
  (...keys: string[]): NonNullable<Aspect['worthAsking']> =>
  scope =>
    keys.some(key => ['vehicle', 'chassis', 'hull', 'body'].some(kind => lookUp(scope, `${kind}/${key}`).held !== null))

const ends = { 'vehicle/front-overhang': '655 mm ± 0 mm', 'vehicle/front-clearance': '244 mm ± 0 mm' }

/** How steep a slope and how sharp a crest the vehicle drives over without touching. */
export default defineCheck({
  id: 'ramp-angles',
  title: 'Ramp angles',
  question: 'How steep are the approach, departure and breakover angles?',
  subject: wholeVehicle('the vehicle'),
  worthAsking: worth('front-overhang', 'rear-overhang', 'front-clearance', 'rear-clearance', 'belly-clearance'),
  inputs: {
    frontOverhang: length('front-overhang', 'l_f', 'front overhang, from the contact patch'),
    frontClearance: length('front-clearance', 'h_f', 'clearance at the front end'),
    rearOverhang: length('rear-overhang', 'l_r', 'rear overhang, from the contact patch'),
    rearClearance: length('rear-clearance', 'h_r', 'clearance at the rear end'),
    belly: length('belly-clearance', 'h_b', 'clearance between the axles'),
    wheelbase: length('wheelbase', 'L', 'wheelbase'),
  },
  aspects: {
    approach: {
      formula: [{ line: 'alpha = atan(h_f / l_f)', unit: 'deg', says: 'the steepest slope that the nose clears' }],
      limit: required('approach'),
      worthAsking: worth('front-overhang', 'front-clearance'),
    },
    departure: {
      formula: [{ line: 'alpha = atan(h_r / l_r)', unit: 'deg', says: 'the steepest slope that the tail clears' }],
      limit: required('departure'),
      worthAsking: worth('rear-overhang', 'rear-clearance'),
    },
    breakover: {
      formula: [
        {
          line: 'beta = 2 * atan(2 * h_b / L)',
          unit: 'deg',
          says: 'the sharpest crest that clears the belly amidships',
        },
      ],
      limit: required('breakover'),
      worthAsking: worth('belly-clearance'),
    },
  },
  source: {
    title: '49 CFR 523.2',
    section:
      'approach, breakover and departure angles; with overhangs from the contact patch the line to the tyre is taken to the ground below the hub, which is a little less than the tangent to the tyre that the rule draws',
  },
  limit: null,
  notes: ['The lowest point of the belly is taken as lying midway between the axles. Load lowers all three.'],
  caution: 'Try a slope slowly and with someone outside to watch, who stands clear of where it could slide or roll.',
  examples: [
    {
      given: { 'vehicle/belly-clearance': '15.0 in', 'vehicle/wheelbase': '120.0 in' },
      aspect: 'breakover',
      expect: 'pass',
      value: 28.07,
      source: 'A published example of 15 in under a wheelbase of 120 in: 2 atan(30/120) = 28.07°',
    },
    {
      given: ends,
      aspect: 'approach',
      expect: 'pass',
      value: 20.43,
      source: 'atan(244/655) = atan 0.372 52; nothing is required, so it is a working',
    },
    {
      given: { ...ends, 'require/vehicle/approach': 'at least 25°' },
      aspect: 'approach',
      expect: 'fail',
      value: 20.43,
      source: 'atan(244/655), and build.md asks for 25°',
    },
    {
      given: { 'body/rear-overhang': '470 mm', 'body/rear-clearance': '470 mm' },
      aspect: 'departure',
      expect: 'pass',
      value: 45,
      source: 'As high as it is long: atan 1',
    },
    {
      given: { 'vehicle/belly-clearance': '201 mm' },
      aspect: 'breakover',
      expect: 'missing',
      missing: ['vehicle/wheelbase'],
      source: 'The wheelbase was not measured',
    },
  ],
})
