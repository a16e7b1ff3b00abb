import { type Aspect, defineCheck } from '../checker/check.ts'
import { axleLoad, axleRating, wheelbase } from '../checker/derived/axle-load.ts'
import { grossRating, grossRatings } from '../checker/derived/gross-rating.ts'
import { massCentre } from '../checker/derived/mass-centre.ts'
import { sayUnweighed } from '../checker/derived/unweighed.ts'
import { hasBalance, ladenWith } from '../checker/derived/vehicle-masses.ts'
import type { Limit } from '../checker/limit.ts'
import { wholeVehicle } from '../checker/subjects.ts'

const rated = (symbol: string): Limit => ({
  who: 'maker',
  source:
    'the rating of the axle or of the vehicle as written in the notes; the authority that approves the vehicle decides what it may weigh',
  max: { share: 1, of: symbol },
})
const borne = (line: string, says: string, rating: string): Aspect => ({
  formula: [{ line, unit: 'kg', says }],
  limit: rated(rating),
})
const placed = (line: string, says: string): Aspect => ({ formula: [{ line, unit: 'mm', says }], limit: null })
const stands = (aspect: string, verdict: 'pass' | 'fail', value: number) => ({ aspect, expect: verdict, value })
const aircraft = {
  'part:empty/mass': '1169 lb',
  'part:empty/at': '10.6 in',
  'part:oil/mass': '17 lb',
  'part:oil/at': '-49 in',
  'part:pilot/mass': '170 lb',
  'part:pilot/at': '16 in',
  'part:fuel/mass': '83 lb',
  'part:fuel/at': '22 in',
}
const car = {
  'vehicle/wheelbase': '2400 mm ± 0 mm',
  'part:engine/mass': '200.0 kg ± 0 kg',
  'part:engine/at': '0 mm ± 0 mm',
  'part:tub/mass': '300.0 kg ± 0 kg',
  'part:tub/at': '1200 mm ± 0 mm',
}
const axles = { 'axle:front-axle/rating': '600 kg', 'axle:rear-axle/rating': '200 kg' }
const weighed = { 'axle:front-axle/load': '360 kg ± 5 kg', 'axle:rear-axle/load': '140 kg ± 5 kg' }
const tank = {
  'tank:fuel-tank/filled-volume': '50.0 L ± 0 L',
  'tank:fuel-tank/contents-density': '0.800 kg/L ± 0 kg/L',
  'tank:fuel-tank/at': '1800 mm ± 0 mm',
}

/** What stands on each axle, and where the centre of gravity lies, as it is and laden. */
export default defineCheck({
  id: 'axle-loads',
  title: 'Axle loads',
  question: 'What stands on each axle, laden and not, and where is the centre of gravity?',
  subject: wholeVehicle('the vehicle'),
  worthAsking: hasBalance,
  inputs: {
    front: axleLoad({ end: 'front', symbol: 'W_f', compares: true }),
    rear: axleLoad({ end: 'rear', symbol: 'W_r', compares: true }),
    frontUnladen: axleLoad({ end: 'front', symbol: 'm_f', compares: false }),
    rearUnladen: axleLoad({ end: 'rear', symbol: 'm_r', compares: false }),
    centre: massCentre(false, 'x_c'),
    centreLaden: massCentre(true, 'x_cl'),
    wheelbase,
    added: ladenWith('m_a'),
    places: ladenWith('x_a'),
    frontRating: axleRating('front', 'R_f'),
    rearRating: axleRating('rear', 'R_r'),
    gross: grossRating('R_g'),
  },
  aspects: {
    front: borne('m_front = W_f', 'on the front axle', 'R_f'),
    rear: borne('m_rear = W_r', 'on the rear axle', 'R_r'),
    centre: placed('x_centre = x_c', 'the centre behind the front axle'),
    'front-laden': borne('m_front = m_f + sum(m_a) - sum(m_a * x_a) / L', 'on the front axle, laden', 'R_f'),
    'rear-laden': borne('m_rear = m_r + sum(m_a * x_a) / L', 'on the rear axle, laden', 'R_r'),
    'centre-laden': placed('x_centre = x_cl', 'the centre behind the front axle, laden'),
    total: { ...borne('m_total = m_f + m_r', 'on both axles', 'R_g'), worthAsking: grossRatings },
    'total-laden': {
      ...borne('m_total = m_f + m_r + sum(m_a)', 'on both axles, laden', 'R_g'),
      worthAsking: grossRatings,
    },
  },
  afterword: sayUnweighed,
  source: {
    title: 'FAA AC 43.13-1B, change 1',
    section:
      'chapter 10, figures 10-10 and 10-11: the centre is the sum of the moments over the sum of the weights; an axle bears its share of the moments over the wheelbase',
  },
  limit: null,
  caution:
    'Weigh on level ground, with nobody between the wheels, and never lift one end higher than the stands allow. What the vehicle may weigh and tow is for the authority that approves it.',
  examples: [
    {
      given: aircraft,
      ...stands('centre', 'pass', 284.3),
      source: 'FAA AC 43.13-1B, figure 10-10: 16 104 lb·in over 1439 lb, printed as 11.2 in; 11.191 in by its digits',
    },
    {
      given: { ...car, ...axles },
      ...stands('front', 'pass', 350),
      source: '200 kg over the front axle, and half of 300 kg amidships',
    },
    {
      given: { ...car, ...axles, 'axle:rear-axle/rating': '140 kg' },
      ...stands('rear', 'fail', 150),
      source: 'Half of 300 kg amidships, and the axle is rated 140 kg',
    },
    {
      given: { ...car, ...axles, ...weighed },
      ...stands('front', 'pass', 360),
      source: 'The weighed load goes before the 350 kg of the parts',
    },
    {
      given: { 'vehicle/wheelbase': '2.5 m', 'axle:front-axle/load': '520 kg', 'axle:rear-axle/load': '480 kg' },
      ...stands('centre', 'pass', 1200),
      source:
        'OpenStax University Physics, 12.1: 52 % on the front wheels of a wheelbase of 2.5 m: 1.3 m ahead of the rear axle, 1.2 m behind the front',
    },
    {
      given: { ...car, ...axles, ...tank },
      ...stands('front-laden', 'pass', 359.5),
      source: '350 kg and of 0.95 × 50 L × 0.8 kg/L = 38 kg at 1800 of 2400 mm a quarter',
    },
    {
      given: { ...car, ...axles, ...tank, 'axle:rear-axle/rating': '175 kg' },
      ...stands('rear-laden', 'fail', 178.5),
      source: '150 kg and three quarters of 38 kg of fuel',
    },
    {
      given: { ...car, ...tank, 'vehicle/load': '150 kg ± 0 kg', 'vehicle/at': '1400 mm ± 0 mm' },
      ...stands('centre-laden', 'pass', 928),
      source: '(300 × 1200 + 38 × 1800 + 150 × 1400)/(500 + 38 + 150) = 638 400/688 = 927.9 mm',
    },
    {
      given: { ...car, 'vehicle/gross-rating': '600 kg' },
      ...stands('total', 'pass', 500),
      source: '200 kg and 300 kg',
    },
    {
      given: { ...car, 'vehicle/rating': '600 kg', 'vehicle/load': '150 kg ± 0 kg', 'vehicle/at': '1400 mm' },
      ...stands('total-laden', 'fail', 650),
      source: '200 kg, 300 kg and a load of 150 kg',
    },
    {
      given: { 'part:engine/mass': '200 kg', 'part:engine/at': '0 mm' },
      aspect: 'rear',
      expect: 'missing',
      missing: ['vehicle/wheelbase'],
      source: 'Moments say nothing of an axle whose place is not known',
    },
  ],
})
