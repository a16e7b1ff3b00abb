import { defineCheck } from '../checker/check.ts'
import { value } from '../checker/inputs/value.ts'
import type { Limit } from '../checker/limit.ts'
import { parts } from '../checker/subjects.ts'

const angle = (key: string, symbol: string, meaning: string) =>
  value({ of: `prop-shaft/${key}`, symbol, meaning, dimension: 'angle', unit: 'deg' })

const least = { value: 0.5, unit: 'deg' } as const
const each: Limit = {
  who: 'practice',
  source:
    "common practice, no source: at least 0.5°, so that the needles turn and do not dent the cup, at most 3° where the maker names none; a maker's table by speed goes first",
  min: least,
  max: { share: 1, of: 'delta_max' },
  instead: {
    whenGiven: 'prop-shaft/max-angle',
    limit: {
      who: 'maker',
      source: "the maker's steepest angle; at least 0.5° is common practice, no source, so that the needles turn",
      min: least,
      max: { share: 1, of: 'delta_max' },
    },
  },
}

const shaft = { 'prop-shaft/front-angle': '18.0° ± 0.3°', 'prop-shaft/rear-angle': '17.7° ± 0.3°' }

/** Whether both joints of a shaft stand at one angle, as they must for an even turn, and at one that they bear. */
export default defineCheck({
  id: 'joint-angles',
  title: 'Joint angles',
  question: "Are the two joints' angles alike, and within the limit?",
  subject: parts(['prop-shaft'], 'each shaft with a joint at each end that is fitted, modified, made or trial-fitted'),
  worthAsking: ['prop-shaft/front-angle', 'prop-shaft/rear-angle', 'prop-shaft/max-angle'],
  inputs: {
    front: angle('front-angle', 'delta_f', 'angle of the front joint'),
    rear: angle('rear-angle', 'delta_r', 'angle of the rear joint'),
    most: value({
      of: 'prop-shaft/max-angle',
      symbol: 'delta_max',
      meaning: 'steepest angle that the maker allows',
      dimension: 'angle',
      unit: 'deg',
      exact: true,
      default: { value: 3, unit: 'deg', said: 'steepest angle 3°, since no maker is named' },
    }),
  },
  aspects: {
    difference: {
      formula: [{ line: 'delta = abs(delta_f - delta_r)', unit: 'deg', says: 'by which the angles differ' }],
      limit: {
        who: 'practice',
        source: 'common practice, no source: at most 1° apart',
        max: { value: 1, unit: 'deg' },
      },
    },
    front: { formula: [{ line: 'delta = delta_f', unit: 'deg', says: 'the front joint' }], limit: each },
    rear: { formula: [{ line: 'delta = delta_r', unit: 'deg', says: 'the rear joint' }], limit: each },
  },
  beside: [
    {
      line: 'k_most = 1 / cos(delta_f)',
      unit: 'percent',
      says: 'fastest that the middle shaft turns, of the speed put in',
    },
    { line: 'k_least = cos(delta_f)', unit: 'percent', says: 'slowest that it turns, twice in each turn' },
    {
      line: 'k_out = 1 / (cos(delta_f) * cos(delta_r))',
      unit: 'percent',
      says: 'fastest that the driven shaft would turn, were the yokes of the middle shaft a quarter turn out of line',
    },
  ],
  source: {
    title: 'Khurmi and Gupta, Theory of Machines',
    section:
      "double Hooke's joint: the driven shaft turns evenly only where both angles are equal, the shafts lie in one plane and the yokes of the middle shaft are in line; one joint at 20° makes 500 rpm swing from 469.85 to 532.1 rpm",
  },
  limit: null,
  notes: ['The yokes at the ends of the middle shaft must stand in line: that cannot be told from the angles.'],
  caution:
    'Steering and propeller shafts are for qualified people to check before the road. Never lie under a vehicle that stands on jacks, and never measure a shaft that turns.',
  examples: [
    { given: shaft, aspect: 'difference', expect: 'pass', value: 0.3, source: '18.0° − 17.7°' },
    {
      given: { 'prop-shaft/front-angle': '19.0°', 'prop-shaft/rear-angle': '17.0°' },
      aspect: 'difference',
      expect: 'fail',
      value: 2,
      source: '19.0° − 17.0°, twice what is allowed; each turn is uneven twice',
    },
    {
      given: { 'prop-shaft/front-angle': '2.0°', 'prop-shaft/rear-angle': '3.0°' },
      aspect: 'difference',
      expect: 'marginal',
      value: 1,
      source: 'At the limit, and each angle is only known to 0.05°',
    },
    {
      given: { ...shaft, 'prop-shaft/max-angle': '25°' },
      aspect: 'front',
      expect: 'pass',
      value: 18,
      source: 'A column joint whose maker allows 25°',
    },
    {
      given: shaft,
      aspect: 'rear',
      expect: 'fail',
      value: 17.7,
      source: 'Without a figure of the maker 3° is the most',
    },
    {
      given: { 'prop-shaft/front-angle': '0.0°', 'prop-shaft/rear-angle': '0.0°' },
      aspect: 'front',
      expect: 'fail',
      value: 0,
      source: 'A joint in line never turns its needles: at least 0.5°',
    },
    {
      given: { 'prop-shaft/front-angle': '2.0°' },
      aspect: 'rear',
      expect: 'missing',
      missing: ['example/rear-angle'],
      source: 'The rear joint was not measured',
    },
  ],
})
