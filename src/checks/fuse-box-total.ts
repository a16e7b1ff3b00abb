import { type Aspect, defineCheck, type Example } from '../checker/check.ts'
import { correctedRating } from '../checker/derived/cable-rating.ts'
import { feedOfBox, totalOfBox } from '../checker/derived/fuse-box.ts'
import { ofAnother } from '../checker/inputs/each.ts'
import { saidWords } from '../checker/inputs/said-words.ts'
import { value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'

const box = (key: string, symbol: string, meaning: string) =>
  value({ of: `fuse-box/${key}`, symbol, meaning, dimension: 'current', unit: 'A', exact: true })

const aspect = (by: string, symbol: string, worthAsking: string): Aspect => ({
  formula: [{ line: 'I_box = I', unit: 'A', says: 'all ways together' }],
  limit: {
    who: by === 'feedRating' ? 'standard' : 'maker',
    source:
      {
        mainFuse: 'the main fuse of the box',
        boxRating: "the box maker's rating",
        feedRating:
          'the corrected rating of the cable that feeds the box: 33 CFR 183.425 or ISO 6722 data sheets; local codes and licensed practice decide',
      }[by] ?? '',
    by,
    max: { share: 1, of: symbol },
  },
  worthAsking: [worthAsking],
})

const given = {
  'fuse-box/ways': '8',
  'fuse-box/main-fuse': '30 A',
  'fuse-box/rating': '40 A',
  'fuse-box/feed': 'main-feed',
  'circuit:main-feed/cable.area': '2.5 mm²',
  'circuit:main-feed/cable.insulation': '105 °C',
  'circuit:lamps/load': '120 W ± 0 W',
  'circuit:lamps/fuse.box': 'example',
  'circuit:pump/load': '7 A ± 0 A',
  'circuit:pump/fuse.box': 'example',
  'circuit:horn/load': '5 A ± 0 A',
  'circuit:horn/duty': 'intermittent',
  'circuit:horn/fuse.box': 'example',
  'circuit:clock/load': '1 A ± 0 A',
  'circuit:clock/duty': 'standing',
  'circuit:clock/fuse.box': 'example',
  'circuit:heater/load': '20 A ± 0 A',
  'circuit:heater/state': 'planned',
  'circuit:heater/fuse.box': 'example',
  'build/nominal': '12 V',
  'build/ambient': '30 °C ± 0 °C',
} as const

const more = (load: string): Example['given'] => ({ ...given, 'circuit:pump/load': `${load} ± 0 A` })

/** Everything that a box's ways draw at once, against what stands before it. */
export default defineCheck({
  id: 'fuse-box-total',
  title: 'Fuse box total',
  question: 'Do all ways together stay within the feed and the box?',
  subject: parts(['fuse-box'], 'each fuse box that is fitted, modified, made or trial-fitted'),
  worthAsking: ['fuse-box/main-fuse', 'fuse-box/rating', 'fuse-box/feed'],
  inputs: {
    total: totalOfBox('I'),
    main: box('main-fuse', 'I_m', 'main fuse of the box'),
    rating: box('rating', 'I_r', 'rating of the box'),
    feed: ofAnother(feedOfBox, correctedRating('I_z'), box('feed', 'I_z', 'the circuit that feeds the box')),
    mainFuse: saidWords('main-fuse', 'against the main fuse'),
    boxRating: saidWords('rating', 'against the rating of the box'),
    feedRating: saidWords('feed', 'against the feed'),
  },
  aspects: {
    'main-fuse': aspect('mainFuse', 'I_m', 'fuse-box/main-fuse'),
    rating: aspect('boxRating', 'I_r', 'fuse-box/rating'),
    feed: aspect('feedRating', 'I_z', 'fuse-box/feed'),
  },
  onlyWorsens: ['I'],
  source: {
    title: 'OpenStax College Physics 2e',
    section: '21.3: at a junction, what flows in is the sum of what flows out',
  },
  limit: null,
  notes: ['Loads that come and go are counted as if all of them were on at once.'],
  caution:
    'A box or a feed that carries too much chars at its studs long before its fuse opens. Disconnect the battery before you work on wiring; local codes and licensed practice decide.',
  examples: [
    {
      given,
      aspect: 'main-fuse',
      expect: 'pass',
      value: 22,
      source:
        'Junction rule: 120 W / 12 V + 7 A + 5 A; the clock draws with the ignition off and the heater is only planned',
    },
    {
      given: more('15 A'),
      aspect: 'main-fuse',
      expect: 'pass',
      value: 30,
      source: 'Junction rule: 10 + 15 + 5 A, at the limit',
    },
    {
      given: more('15.1 A'),
      aspect: 'main-fuse',
      expect: 'fail',
      value: 30.1,
      source: 'Junction rule: just past the main fuse',
    },
    {
      given: more('25 A'),
      aspect: 'rating',
      expect: 'pass',
      value: 40,
      source: 'Junction rule: 10 + 25 + 5 A, at the rating of the box',
    },
    {
      given: more('26 A'),
      aspect: 'rating',
      expect: 'fail',
      value: 41,
      source: 'Junction rule: just past the rating of the box',
    },
    {
      given,
      aspect: 'feed',
      expect: 'pass',
      value: 22,
      source: "Makers' data sheets of ISO 6722 class B cable: 2.5 mm² carries 29 A at 30 °C",
    },
    {
      given: {
        ...given,
        'fuse-box:sub-box/feed': 'sub-feed',
        'circuit:sub-feed/fuse.box': 'example',
        'circuit:sub-feed/load': '99 A',
        'circuit:work-lamps/load': '8 A ± 0 A',
        'circuit:work-lamps/fuse.box': 'sub-box',
      },
      aspect: 'feed',
      expect: 'fail',
      value: 30,
      source:
        'Junction rule: a feed carries the loads of its own box, 8 A, whatever is written for it; 22 A + 8 A against 29 A',
    },
    {
      given: { ...given, 'circuit:fan/fuse.box': 'example' },
      aspect: 'main-fuse',
      expect: 'missing',
      missing: ['circuit:fan/load'],
      source: 'One load of the box is not written',
    },
  ],
})
