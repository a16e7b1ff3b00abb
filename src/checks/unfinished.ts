import { defineCheck } from '../checker/check.ts'
import { openWork } from '../checker/inputs/open-work.ts'
import { wholeVehicle } from '../checker/subjects.ts'

/** The jobs and temporary fixes that are open and were said to hold up the road or the inspection. */
export default defineCheck({
  id: 'unfinished',
  title: 'Unfinished',
  question: 'Which temporary fixes and jobs still hold up the road or the inspection?',
  subject: wholeVehicle('the vehicle'),
  worthAsking: 'always',
  inputs: { open: openWork() },
  compute: ({ open }) => ({
    offenders: open
      .filter(({ before }) => before !== null)
      .map(({ path, kind, what, before }) => ({ path, why: `${kind}: ${what}, before ${before}` })),
  }),
  source: {
    title: "The build's own notes",
    section: 'task items and temporary fixes marked `before: road` or `before: inspection`',
  },
  limit: {
    who: 'builder',
    source: "the builder's own marks in the notes",
    max: { value: 0, unit: '1' },
    beyond: 'marginal',
  },
  caution:
    'A temporary fix on brakes, steering, fuel or wiring is no repair: do not take the vehicle on the road with it.',
  cannotMiss: 'it counts what is open',
  examples: [
    {
      given: { 'job/seal-hatch': 'seal the engine hatch before road done', 'job/paint': 'paint the tub' },
      expect: 'pass',
      value: 0,
      source: 'One job that held up the road is done, the other holds nothing up',
    },
    {
      given: {
        'job/seal-hatch': 'seal the engine hatch before road',
        'temporary/borrowed-clip': 'borrowed clip on the demister hose before inspection',
        'job/paint': 'paint the tub',
      },
      expect: 'marginal',
      value: 2,
      source: 'One job holds up the road, one temporary fix the inspection',
    },
  ],
})
