import { defineCheck, type Offender } from '../checker/check.ts'
import { earthPoints, liveCircuits, wiredVehicle } from '../checker/derived/vehicle-circuits.ts'
import { members } from '../checker/inputs/each.ts'
import { optional } from '../checker/inputs/value.ts'
import { optionalWords } from '../checker/inputs/words.ts'

/** The circuits whose current has no way back that the record names, or one more than its earth point holds. */
export default defineCheck({
  id: 'return-path',
  title: 'Return path',
  question: 'Does every circuit have a return, and is each earth point named and within its count?',
  subject: wiredVehicle(),
  worthAsking: 'always',
  inputs: {
    circuits: members(
      { meaning: 'circuits that are live', of: liveCircuits },
      {
        back: optionalWords({ of: 'circuit/return', meaning: 'its return' }),
        area: optional({
          of: 'circuit/return.area',
          symbol: 'A',
          meaning: 'section of the return',
          dimension: 'area',
          unit: 'mm2',
        }),
        earth: optionalWords({ of: 'circuit/earth', meaning: 'the earth point where its return ends' }),
      },
    ),
    points: members(
      { meaning: 'earth points', of: earthPoints },
      {
        count: optional({
          of: 'earth-point/count',
          symbol: 'n',
          meaning: 'how many returns it holds',
          dimension: 'ratio',
          unit: '1',
          exact: true,
        }),
      },
    ),
  },
  compute: ({ circuits, points }) => {
    const isCable = ({ back, area }: (typeof circuits)[number]): boolean => area !== null || back === 'cable'
    const without = circuits.filter(one => one.back === null && one.area === null)
    const unnamed = circuits.filter(one => one.back !== null && !isCable(one) && one.earth === null)
    const crowded = points.flatMap(({ path, count }): Offender[] => {
      const ending = circuits.filter(({ earth }) => `earth-point:${earth ?? ''}` === path)
      if (count === null) return []
      return ending
        .slice(count)
        .map(one => ({ path: one.path, why: `is one too many at ${path}, which holds ${count}` }))
    })
    const uncounted = points.filter(({ count }) => count === null).map(({ path }) => path)
    return {
      offenders: [
        ...without.map(({ path }) => ({ path, why: 'has no return' })),
        ...unnamed.map(({ path }) => ({ path, why: 'returns through the chassis and names no earth point' })),
        ...crowded,
      ],
      notes: uncounted.length === 0 ? [] : [`How many returns they hold is not written: ${uncounted.join(', ')}.`],
    }
  },
  source: {
    title: '13 CCR 1249(a)',
    section:
      'the frame may be the return where it is adequately earthed; so each return has to end at a point that is known',
  },
  limit: {
    who: 'practice',
    source: 'good practice, ours: no current without a known way back',
    max: { value: 0, unit: '1' },
  },
  caution:
    'A return that is missing finds its own way: through a control cable, a fuel pipe or a bearing. Local codes and licensed practice decide.',
  cannotMiss: 'what is absent is what it counts',
  examples: [
    {
      given: {
        'circuit:pump/return': 'chassis',
        'circuit:pump/earth': 'left-rear',
        'circuit:lamp/return': 'cable',
        'circuit:lamp/return.area': '2.5 mm²',
        'earth-point:left-rear/count': '1',
      },
      expect: 'pass',
      value: 0,
      source:
        'Both have a return: one through the chassis at a point of one place, one by a cable, which needs no earth point',
    },
    {
      given: {
        'circuit:pump/load': '7 A',
        'circuit:lamp/return': 'chassis',
        'circuit:horn/return': 'chassis',
        'circuit:horn/earth': 'nose',
        'circuit:fan/return': 'chassis',
        'circuit:fan/earth': 'nose',
        'earth-point:nose/count': '1',
      },
      expect: 'fail',
      value: 3,
      source: 'The pump has none, the lamp names no earth point, and of horn and fan one is too many at the nose',
    },
    {
      given: { 'circuit:pump/load': '7 A', 'circuit:lamp/state': 'planned' },
      expect: 'fail',
      value: 1,
      source: 'The pump has no return; the lamp is only planned',
    },
  ],
})
