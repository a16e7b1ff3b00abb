import { defineCheck } from '../checker/check.ts'
import { circuitCurrent } from '../checker/derived/circuit-current.ts'
import { circuitDuty, fuseRating } from '../checker/derived/fuse-rating.ts'
import { circuits } from '../checker/subjects.ts'

/** Whether the fuse carries its load without ageing: a fuse that runs near its rating blows one warm day without a fault. */
export default defineCheck({
  id: 'fuse-carries-load',
  title: 'Fuse carries load',
  question: 'Does the fuse carry a continuous load for as long as it lasts?',
  subject: circuits('each circuit that is live, but not those that start the engine', {
    not: [{ key: 'duty', is: ['starting'] }],
  }),
  worthAsking: ['circuit/fuse.rating', 'circuit/fuse.box', 'circuit/fuse.way', 'circuit/fuse.type'],
  inputs: { load: circuitCurrent(), fuse: fuseRating(), duty: circuitDuty() },
  formula: [{ line: 'I_load = I', unit: 'A', says: 'the load' }],
  source: {
    title: 'OpenStax College Physics 2e',
    section: '21.1: the loads of a circuit add up to what its fuse carries',
  },
  limit: {
    who: 'practice',
    source:
      "common practice after the fuse makers' guides, no text seen: 75 % of the rating at 25 °C for a load that lasts, the whole for one that comes and goes",
    by: 'duty',
    groups: { intermittent: { max: { share: 1, of: 'I_n' } } },
    max: { share: 0.75, of: 'I_n' },
  },
  notes: ['A fuse in a hot place carries less than at 25 °C; its maker says how much.'],
  caution:
    'A fuse that blows without a fault tempts one to fit a larger one, and then nothing protects the cable. Choose cable and fuse together. Disconnect the battery before you work on wiring; local codes and licensed practice decide.',
  examples: [
    {
      given: {
        'circuit/load': '7.5 A ± 0 A',
        'circuit/fuse.rating': '10 A',
        'circuit/duty': 'continuous',
        'build/nominal': '12 V',
      },
      expect: 'pass',
      value: 7.5,
      source: 'Common practice, no text seen: 75 % of 10 A is 7.5 A, at the limit',
    },
    {
      given: {
        'circuit/load': '7.51 A ± 0 A',
        'circuit/fuse.rating': '10 A',
        'circuit/duty': 'continuous',
        'build/nominal': '12 V',
      },
      expect: 'fail',
      value: 7.51,
      source: 'Common practice, no text seen: just past 75 % of 10 A',
    },
    {
      given: {
        'circuit/load': '9.5 A',
        'circuit/fuse.rating': '10 A',
        'circuit/duty': 'intermittent',
        'build/nominal': '12 V',
      },
      expect: 'pass',
      value: 9.5,
      source: 'Common practice, no text seen: a load that comes and goes may use the whole of the fuse',
    },
    {
      given: { 'circuit/load': '327.5 W', 'circuit/fuse.rating': '15 A', 'build/nominal': '12 V' },
      expect: 'fail',
      value: 27.3,
      source:
        'OpenStax College Physics 2e, 21.1, problem: 1800 W, 1400 W and 75 W on 120 V draw 27.3 A and blow a 15 A fuse; the same current from 12 V is a tenth of the power',
    },
    {
      given: {
        'circuit/load': '60 W',
        'circuit/fuse.rating': '7.5 A',
        'circuit/duty': 'continuous',
        'build/nominal': '12 V',
      },
      expect: 'pass',
      value: 5,
      source:
        'Ohm: 60 W / 12 V = 5 A, and 75 % of 7.5 A is 5.625 A. The running current decides, not the inrush of a cold lamp',
    },
    {
      given: { 'circuit/fuse.rating': '10 A', 'circuit/duty': 'continuous', 'build/nominal': '12 V' },
      expect: 'missing',
      missing: ['circuit:example/load'],
      source: 'Without a load there is nothing to carry',
    },
    {
      given: { 'circuit/load': '5 A', 'circuit/fuse.way': '3', 'build/nominal': '12 V' },
      expect: 'missing',
      missing: ['circuit:example/fuse.rating'],
      source: 'A way is named, but not what stands in it',
    },
  ],
})
