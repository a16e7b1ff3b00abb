import { defineCheck } from '../checker/check.ts'
import { ifGiven } from '../checker/inputs/choose.ts'
import { derived } from '../checker/inputs/derived.ts'
import { figureEnd } from '../checker/inputs/figure-ends.ts'
import { optional, value } from '../checker/inputs/value.ts'
import type { Limit } from '../checker/limit.ts'
import { parts } from '../checker/subjects.ts'

const length = (key: string, symbol: string, meaning: string) =>
  ({ of: `control-cable/${key}`, symbol, meaning, dimension: 'length', unit: 'mm' }) as const

const byLever = derived({
  symbol: 's_out',
  meaning: 'travel of the far end',
  dimension: 'length',
  inputs: {
    travel: value(length('travel', 's_in', 'travel of the near end')),
    ratio: value({
      of: 'control-cable/lever-ratio',
      symbol: 'i',
      meaning: 'travel in over travel out of the lever at its end',
      dimension: 'ratio',
      unit: '1',
    }),
  },
  formula: [{ line: 's_out = s_in / i', unit: 'mm', says: 'travel of the far end, by the lever' }],
})
const far = { symbol: 's', meaning: 'travel of the far end', dimension: 'length' } as const
const measured = length('end-travel', 's_end', 'travel of the far end, as measured')

/** What build.md requires of a property, or what the cable's own `required-…` says. */
const within = (key: string, [low, high]: readonly [string, string]): Limit => ({
  who: 'builder',
  source: `required in build.md of ${key}`,
  required: [`control-cable/${key}`],
  instead: {
    whenGiven: `control-cable/required-${key}`,
    limit: {
      who: 'builder',
      source: `what the run asks for, required-${key} in the notes; too long counts as well as too short`,
      min: { share: 1, of: low },
      max: { share: 1, of: high },
    },
  },
})

const ends = (key: string, symbol: string, meaning: string) => ({
  low: figureEnd(length(key, `${symbol}_min`, `least ${meaning}`), 'min'),
  high: figureEnd(length(key, `${symbol}_max`, `greatest ${meaning}`), 'max'),
})
const lengthEnds = ends('required-length', 'L', 'length')
const travelEnds = ends('required-travel', 's', 'travel of the far end')

/** Whether a cable is of the right length, and moves its far end as far as that has to go. */
export default defineCheck({
  id: 'control-cable',
  title: 'Control cable',
  question: 'Are length, travel and lever ratio right at both ends?',
  subject: parts(['control-cable'], 'each control cable that is fitted, modified, made or trial-fitted'),
  worthAsking: ['length', 'travel', 'required-length', 'required-travel', 'lever-ratio', 'end-travel'].map(
    key => `control-cable/${key}`,
  ),
  inputs: {
    length: value(length('length', 'L', 'length of the cable')),
    travel: ifGiven({ ...far, of: measured.of }, value({ ...measured, symbol: 's' }), byLever),
    byLever,
    measured: optional(measured),
    shortest: lengthEnds.low,
    longest: lengthEnds.high,
    least: travelEnds.low,
    most: travelEnds.high,
  },
  aspects: {
    length: {
      formula: [{ line: 'L_cable = L', unit: 'mm', says: 'the length of the cable' }],
      limit: within('length', ['L_min', 'L_max']),
      worthAsking: ['control-cable/length', 'control-cable/required-length'],
    },
    travel: {
      formula: [{ line: 's_far = s', unit: 'mm', says: 'the travel of the far end' }],
      limit: within('travel', ['s_min', 's_max']),
      worthAsking: ['control-cable/travel', 'control-cable/end-travel', 'control-cable/required-travel'],
    },
    'lever-ratio': {
      formula: [{ line: 's_lever = s_out', unit: 'mm', says: 'the travel of the far end, by the lever' }],
      limit: {
        who: 'practice',
        source:
          'JCGM 100:2008: what the lever gives and what was measured agree where they differ by no more than the root of both expanded uncertainties squared; a cable that stretches or a sleeve that gives loses travel',
        agreesWith: 's_end',
      },
      worthAsking: scope => scope.subject.thing !== null && hasBoth(scope.subject.thing.properties),
    },
  },
  source: {
    title: 'OpenStax College Physics 2e',
    section: '9.5: the travels of a lever are as its arms, the inverse of its mechanical advantage',
  },
  limit: null,
  notes: [
    "The tightest bend that the cable may take is its maker's to say; where a bare wire runs through a fairlead, aircraft allow it to turn by 3° (FAA AC 43.13-1B, 7-149).",
  ],
  caution:
    'A throttle must shut by itself, also when the engine rocks, and a clutch or brake cable must never be the one thing that holds: brakes are for qualified people to check before the road.',
  examples: [
    {
      given: { 'control-cable/length': '896 mm ± 2 mm', 'control-cable/required-length': '890 mm to 902 mm' },
      aspect: 'length',
      expect: 'pass',
      value: 896,
      source: 'JCGM 106:2012, 8.2: 896 ± 2.3 mm lies between 890 and 902 mm',
    },
    {
      given: { 'control-cable/length': '884 mm ± 2 mm', 'control-cable/required-length': '890 mm to 902 mm' },
      aspect: 'length',
      expect: 'fail',
      value: 884,
      source: 'Short by 6 mm, and U is 2.3 mm: 2 × 2 mm / √3 (JCGM 100:2008, 4.3.7)',
    },
    {
      given: { 'control-cable/length': '910 mm ± 2 mm', 'control-cable/required-length': '890 mm to 902 mm' },
      aspect: 'length',
      expect: 'fail',
      value: 910,
      source: 'Too long by 8 mm counts as well',
    },
    {
      given: {
        'control-cable/travel': '57.0 mm',
        'control-cable/lever-ratio': '1.50',
        'control-cable/required-travel': '36 mm to 39 mm',
      },
      aspect: 'travel',
      expect: 'pass',
      value: 38,
      source: 'OpenStax, 9.5: 57 mm / 1.5',
    },
    {
      given: {
        'control-cable/travel': '57.0 mm',
        'control-cable/lever-ratio': '1.50',
        'require/example/travel': 'at least 40 mm',
      },
      aspect: 'travel',
      expect: 'fail',
      value: 38,
      source: 'OpenStax, 9.5: 57 mm / 1.5, and build.md asks for 40 mm',
    },
    {
      given: {
        'control-cable/travel': '57.0 mm',
        'control-cable/lever-ratio': '1.50',
        'control-cable/end-travel': '36.0 mm',
      },
      aspect: 'lever-ratio',
      expect: 'fail',
      value: 38,
      source: 'OpenStax, 9.5: the lever gives 38 mm, of which 2 mm are lost on the way, and U is 0.16 mm',
    },
    {
      given: { 'control-cable/length': '1240 mm' },
      aspect: 'length',
      expect: 'pass',
      value: 1240,
      source: 'Nothing is required of it, so it is a working',
    },
    {
      given: { 'control-cable/travel': '57 mm', 'control-cable/required-travel': '36 mm to 39 mm' },
      aspect: 'travel',
      expect: 'missing',
      missing: ['example/lever-ratio'],
      source: 'Without the lever, and without the travel of the far end, nothing can be worked',
    },
  ],
})

/** The lever is worth a question of its own where both its sides were measured. */
function hasBoth(properties: object): boolean {
  return ['travel', 'lever-ratio', 'end-travel'].every(key => Object.hasOwn(properties, key))
}
