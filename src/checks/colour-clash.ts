import { defineCheck } from '../checker/check.ts'
import { colouredLooms, wiresInLoom } from '../checker/derived/wires-in-loom.ts'

const inBodyLoom = (colours: Readonly<Record<string, string>>) =>
  Object.fromEntries(
    Object.entries(colours).flatMap(([id, colour]) => [
      [`circuit:${id}/loom`, 'example'],
      [`circuit:${id}/cable.colour`, colour],
    ]),
  )

/** Pairs of wires in one loom that look alike where it is opened. */
export default defineCheck({
  id: 'colour-clash',
  title: 'Colour clash',
  question: 'Are there two wires of one colour in one loom that could be mistaken for each other?',
  subject: colouredLooms(),
  worthAsking: 'always',
  inputs: { wires: wiresInLoom() },
  compute: ({ wires }) => {
    const live = wires.filter(({ earth }) => earth === null)
    const alike = (one: (typeof wires)[number]) => live.filter(other => other !== one && other.colour === one.colour)
    const clashing = live.filter(one => alike(one).length > 0)
    const earths = wires.filter(({ earth }) => earth !== null).map(({ path }) => path)
    return {
      count: clashing.reduce((total, one) => total + alike(one).length, 0) / 2,
      offenders: clashing.map(one => ({
        path: one.path,
        why: `is ${one.colour}, as ${alike(one)
          .map(({ path }) => path)
          .join(', ')}`,
      })),
      notes:
        earths.length === 0
          ? []
          : [`Not counted, since they are earths (DIN 72552, terminal 31): ${earths.join(', ')}.`],
    }
  },
  onlyWorsens: [],
  source: {
    title: 'IEC 60757',
    section: 'table 1: the codes of colours, so that GN/VT and green/violet are one; DIN 72552 for terminal 31',
  },
  limit: {
    who: 'practice',
    source: 'good practice, ours: a colour once in a loom, earths apart',
    max: { value: 0, unit: '1' },
  },
  notes: ['Returns are left out: they may all be one colour.'],
  caution:
    'Never trust a colour alone: measure before you cut or join, with the battery disconnected. Local codes and licensed practice decide.',
  examples: [
    {
      given: {
        ...inBodyLoom({ pump: 'green/purple', horn: 'purple/green', lamp: 'green', fan: 'red' }),
        'circuit:fan/return.area': '2.5 mm²',
        'circuit:fan/return.colour': 'green',
      },
      expect: 'pass',
      value: 0,
      source:
        'IEC 60757: the ground colour comes first, so green/violet is not violet/green; the green return is left out',
    },
    {
      given: inBodyLoom({ pump: 'green/purple', horn: 'GN-VT', lamp: 'green with violet tracer', fan: 'red' }),
      expect: 'fail',
      value: 3,
      source: 'IEC 60757: GN is green, VT is violet; three wires of one colour are three pairs',
    },
    {
      given: {
        ...inBodyLoom({ pump: 'black', 'engine-earth': 'black', horn: 'red' }),
        'circuit:lamp/cable.colour': 'red',
      },
      expect: 'pass',
      value: 0,
      source: 'DIN 72552: an earth is terminal 31 and left out; the other red wire runs in no loom',
    },
    {
      given: { ...inBodyLoom({ pump: 'black' }), 'circuit:horn/loom': 'example' },
      expect: 'missing',
      missing: ['circuit:horn/cable.colour'],
      source: 'A wire without a colour may be of any',
    },
  ],
})
