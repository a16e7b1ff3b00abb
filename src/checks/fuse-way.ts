import { defineCheck, type Offender } from '../checker/check.ts'
import { correctedRating } from '../checker/derived/cable-rating.ts'
import { circuitCurrent } from '../checker/derived/circuit-current.ts'
import { fuseRating } from '../checker/derived/fuse-rating.ts'
import { circuitsOnWay, dutyOfWay, fuseOfWay, wayFault, waysInUse } from '../checker/derived/fuse-way.ts'
import { each, members } from '../checker/inputs/each.ts'
import { roundingSlack } from '../checker/limit.ts'

const cable = {
  'cable.area': '2.5 mm²',
  'cable.insulation': '105 °C',
  'fuse.box': 'aux-fuses',
  'fuse.way': '3',
} as const

/** Two circuits on one way of a box, as an example gives them. */
const onOneWay = (one: Readonly<Record<string, string>>, other: Readonly<Record<string, string>>) => ({
  'fuse-box:aux-fuses/ways': '8',
  ...Object.fromEntries(Object.entries({ ...cable, ...one }).map(([key, text]) => [`circuit/${key}`, text])),
  ...Object.fromEntries(Object.entries({ ...cable, ...other }).map(([key, text]) => [`circuit:other/${key}`, text])),
  'build/nominal': '12 V',
  'build/ambient': '30 °C ± 0 °C',
})

/** What stands on one way together: one fuse, which has to carry the sum and to protect the weakest cable. */
export default defineCheck({
  id: 'fuse-way',
  title: 'Fuse way',
  question: 'Do all circuits on one way name one fuse, and does it carry and protect them together?',
  subject: waysInUse(),
  worthAsking: 'always',
  inputs: {
    loads: each(
      { symbol: 'I_i', meaning: 'loads of the way', dimension: 'current', of: circuitsOnWay },
      circuitCurrent('I_i'),
    ),
    fuse: fuseOfWay('I_n'),
    duty: dutyOfWay(),
    fault: wayFault(),
    circuits: members(
      { meaning: 'circuits of the way, with their fuse and their cable', of: circuitsOnWay },
      { fuse: fuseRating(), rating: correctedRating() },
    ),
  },
  formula: [{ line: 'I_way = sum(I_i)', unit: 'A', says: 'the loads of the way together' }],
  alsoFails: ({ circuits, fault }) => {
    const [first, ...others] = circuits
    const greatest = Math.max(...circuits.map(({ fuse }) => fuse))
    return [
      ...(fault === null ? [] : [{ path: first?.path ?? '', why: fault }]),
      ...others
        .filter(({ fuse }) => first !== undefined && fuse !== first.fuse)
        .map(
          ({ path, fuse }): Offender => ({
            path,
            why: `names a fuse of ${fuse} A beside one of ${first?.fuse ?? 0} A`,
          }),
        ),
      ...circuits
        .filter(({ rating }) => greatest > rating * (1 + roundingSlack))
        .map(
          ({ path, rating }): Offender => ({
            path,
            why: `has a cable that carries ${Number(rating.toPrecision(3))} A behind a fuse of ${greatest} A`,
          }),
        ),
    ]
  },
  onlyWorsens: ['I_i'],
  source: {
    title: 'OpenStax College Physics 2e',
    section: '21.1: currents of parallel loads add up in what feeds them',
  },
  limit: {
    who: 'practice',
    source:
      "common practice after the fuse makers' guides, no text seen: 75 % of the rating at 25 °C, the whole where all loads come and go; and IEC 60364-4-43, 433.1, In ≤ Iz, for each cable",
    by: 'duty',
    groups: { intermittent: { max: { share: 1, of: 'I_n' } } },
    max: { share: 0.75, of: 'I_n' },
  },
  caution:
    'A thin cable added to a way with a large fuse is not protected by it. Disconnect the battery before you work on wiring; local codes and licensed practice decide.',
  examples: [
    {
      given: onOneWay({ load: '6 A ± 0 A', 'fuse.rating': '15 A' }, { load: '5.25 A ± 0 A', 'fuse.rating': '15 A' }),
      expect: 'pass',
      value: 11.25,
      source: 'Common practice, no text seen: 75 % of 15 A is 11.25 A, at the limit; 2.5 mm² carries 29 A',
    },
    {
      given: onOneWay({ load: '6 A ± 0 A', 'fuse.rating': '15 A' }, { load: '5.26 A ± 0 A', 'fuse.rating': '15 A' }),
      expect: 'fail',
      value: 11.26,
      source: 'Common practice, no text seen: just past 75 % of 15 A',
    },
    {
      given: onOneWay(
        { load: '8 A', 'fuse.rating': '15 A', duty: 'intermittent' },
        { load: '60 W', 'fuse.rating': '15 A', duty: 'intermittent' },
      ),
      expect: 'pass',
      value: 13,
      source: 'Ohm: 8 A + 60 W / 12 V; both come and go, so the whole of the fuse counts',
    },
    {
      given: {
        ...onOneWay({ load: 'about 3 A', 'fuse.rating': '15 A' }, { load: '2 A', 'fuse.rating': '15 A' }),
        'fuse-box:aux-fuses/ways': '2',
      },
      expect: 'fail',
      value: 5,
      source: 'Way 3 of a box of two ways is not there, whatever is fused in it',
    },
    {
      given: onOneWay({ load: 'about 3 A', 'fuse.rating': '15 A' }, { load: '2 A', 'fuse.rating': '10 A' }),
      expect: 'fail',
      value: 5,
      source: 'One way holds one fuse; two ratings are written',
    },
    {
      given: onOneWay(
        { load: 'about 3 A', 'fuse.rating': '15 A' },
        { load: '2 A', 'fuse.rating': '15 A', 'cable.area': '0.75 mm²' },
      ),
      expect: 'fail',
      value: 5,
      source: "IEC 60364-4-43, 433.1: 0.75 mm² carries 14 A by makers' data sheets, less than the fuse of 15 A",
    },
    {
      given: onOneWay({ load: '3 A', 'fuse.rating': '15 A' }, { 'fuse.rating': '15 A' }),
      expect: 'missing',
      missing: ['circuit:other/load'],
      source: 'What the other circuit draws is not written',
    },
  ],
})
