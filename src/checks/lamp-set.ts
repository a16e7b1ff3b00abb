import { defineCheck } from '../checker/check.ts'
import { allFunctions, hasFunctions } from '../checker/derived/lamp-function.ts'
import { wholeVehicle } from '../checker/subjects.ts'
import { requiredFunctions } from '../checker/tables/lamp-rules.ts'

const given = {
  'lamp:headlamps/function': 'dipped beam, main beam, front position',
  'lamp:indicators/function': 'direction indicator',
  'lamp:rear-clusters/function': 'rear position, stop, direction indicator',
  'lamp:fog-lamp/function': 'rear fog',
  'lamp:reversing-lamp/function': 'reversing',
  'lamp:plate-lamp/function': 'rear plate',
  'lamp:reflectors/function': 'rear retro-reflector',
}

/** Which of the functions that a car must have no lamp gives. */
export default defineCheck({
  id: 'lamp-set',
  title: 'Lamp set',
  question: 'Are all the functions that the rule asks for present?',
  subject: wholeVehicle('the vehicle'),
  worthAsking: ({ record }) => hasFunctions(record),
  inputs: { functions: allFunctions() },
  compute: ({ functions }) => ({
    offenders: Object.entries(requiredFunctions)
      .filter(([name]) => !functions.includes(name))
      .map(([name, rule]) => ({ path: name, why: `no ${name.replaceAll('-', ' ')} (${rule})` })),
  }),
  source: {
    title: 'UN Regulation No. 48',
    section: 'section 6: the lamps that a car must have; the list and its numbers are from memory',
  },
  limit: {
    who: 'law',
    source:
      'UN R48, section 6; what the date and the class of the vehicle ask for is for the authority that approves it to say',
    max: { value: 0, unit: '1' },
  },
  notes: [
    'Newer types also need daytime running lamps, a high stop lamp and a hazard warning. Of each function only that it is there is asked, not how many lamps give it.',
  ],
  caution:
    'A lamp that is there and does not work is seen by nobody: walk round it with all of them lit before every run.',
  cannotMiss: 'it counts what is there',
  examples: [
    { given, expect: 'pass', value: 0, source: 'UN R48, section 6: all ten functions, in seven sorts of lamp' },
    {
      given: {
        'lamp:headlamps/function': 'dipped-beam, main-beam',
        'lamp:rear-clusters/function': 'rear-position-lamp, stop-lamp, direction-indicator',
      },
      expect: 'fail',
      value: 5,
      source: 'UN R48, section 6: neither front position, rear fog, reversing nor plate lamp, nor a reflector',
    },
  ],
})
