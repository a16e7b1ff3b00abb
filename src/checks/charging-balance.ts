import { defineCheck } from '../checker/check.ts'
import { partElseBuild } from '../checker/derived/part-else-build.ts'
import { chargedFrom, continuousLoads } from '../checker/derived/running-loads.ts'
import { saidWords } from '../checker/inputs/said-words.ts'

const given = {
  'alternator/rating': '90 A',
  'alternator/idle-output': '40 A',
  'circuit:lamps/load': '480 W ± 0 W',
  'circuit:lamps/duty': 'continuous',
  'circuit:pump/load': '7 A ± 0 A',
  'circuit:pump/duty': 'continuous',
  'circuit:horn/load': '5 A',
  'circuit:horn/duty': 'intermittent',
  'circuit:starter/load': '200 A',
  'circuit:starter/duty': 'starting',
  'build/nominal': '12 V',
} as const

/** Whether the alternator carries what runs together, at speed and at idle, so that the battery is not flattened on the way. */
export default defineCheck({
  id: 'charging-balance',
  title: 'Charging balance',
  question: 'Does the alternator carry what runs together?',
  subject: chargedFrom(),
  worthAsking: [
    'alternator/rating',
    'alternator/idle-output',
    'build/alternator.rating',
    'build/alternator.idle-output',
  ],
  inputs: {
    loads: continuousLoads('I_i'),
    rating: partElseBuild('alternator', 'rating', {
      symbol: 'I_r',
      meaning: 'rating of the alternator',
      dimension: 'current',
      unit: 'A',
    }),
    idle: partElseBuild('alternator', 'idle-output', {
      symbol: 'I_idle',
      meaning: 'what the alternator gives at idle',
      dimension: 'current',
      unit: 'A',
    }),
    atSpeed: saidWords('speed', 'at speed'),
    atIdle: saidWords('idle', 'at idle'),
  },
  aspects: {
    speed: {
      formula: [{ line: 'I_on = sum(I_i)', unit: 'A', says: 'all continuous loads together' }],
      limit: {
        who: 'practice',
        source: 'FAA AC 43.13-1B, 11-35a, which calls it a rule of thumb: no more than 80 % of the rating',
        by: 'atSpeed',
        max: { share: 0.8, of: 'I_r' },
      },
    },
    idle: {
      formula: [{ line: 'I_on = sum(I_i)', unit: 'A', says: 'all continuous loads together' }],
      limit: {
        who: 'maker',
        source: 'what the alternator gives at idle',
        by: 'atIdle',
        max: { share: 1, of: 'I_idle' },
      },
    },
  },
  onlyWorsens: ['I_i'],
  source: { title: 'FAA AC 43.13-1B, change 1', section: '11-35: the load analysis, continuous loads added up' },
  limit: null,
  notes: [
    'FAA AC 43.13-1B, 11-35, has the warning for low voltage come on at 13.0 V where the system charges at 14 V, at 26.0 V where it charges at 28 V: a battery that reads less with the engine at speed is not being charged.',
  ],
  caution:
    'Never take the battery off while the engine runs: the alternator and all that is electronic may be destroyed, and gas at the battery ignites from a spark. Local codes and licensed practice decide.',
  examples: [
    {
      given,
      aspect: 'speed',
      expect: 'pass',
      value: 47,
      source: 'AC 43.13-1B, 11-35a: 480 W / 12 V + 7 A; 80 % of 90 A is 72 A',
    },
    {
      given: { ...given, 'circuit:pump/load': '32 A ± 0 A' },
      aspect: 'speed',
      expect: 'pass',
      value: 72,
      source: 'AC 43.13-1B, 11-35a: 80 % of 90 A, at the limit',
    },
    {
      given: { ...given, 'circuit:pump/load': '32.1 A ± 0 A' },
      aspect: 'speed',
      expect: 'fail',
      value: 72.1,
      source: 'AC 43.13-1B, 11-35a: just past 80 % of 90 A',
    },
    {
      given,
      aspect: 'idle',
      expect: 'fail',
      value: 47,
      source: 'AC 43.13-1B, 11-35: more is drawn than the 40 A that the alternator gives at idle',
    },
    {
      given: {
        ...given,
        'circuit:main-feed/load': '60 A',
        'circuit:main-feed/duty': 'continuous',
        'fuse-box:main-box/feed': 'main-feed',
        'circuit:lamps/fuse.box': 'main-box',
        'circuit:charge-lead/use': 'charging',
        'circuit:charge-lead/load': '60 A',
        'circuit:charge-lead/feeds': 'battery, from the alternator',
      },
      aspect: 'speed',
      expect: 'pass',
      value: 47,
      source: 'Neither the feed of a box nor the lead from the alternator is a load of its own',
    },
    {
      given: {
        'alternator/idle-output': '40 A',
        'circuit:pump/load': '7 A',
        'circuit:pump/duty': 'continuous',
        'build/nominal': '12 V',
      },
      aspect: 'speed',
      expect: 'missing',
      missing: ['example/rating'],
      source: 'The rating of the alternator is not written',
    },
  ],
})
