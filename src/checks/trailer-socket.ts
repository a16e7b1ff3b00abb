import { defineCheck, type Offender } from '../checker/check.ts'
import { type SocketWay, socketWays, trailerSockets } from '../checker/derived/socket-ways.ts'
import { roundingSlack } from '../checker/limit.ts'

/** A socket whose connector of the same name has these ways, each `section: what it carries`. */
const socket = (standard: string, ways: Readonly<Record<string, string>>) => ({
  'trailer-socket/standard': standard,
  ...Object.fromEntries(
    Object.entries(ways).flatMap(([way, words]) => {
      const [section = '', carries = ''] = words.split(': ')
      return [
        [`connector/pins.${way}.wire.area`, section],
        [`connector/pins.${way}.carries`, carries],
      ]
    }),
  ),
})

const sevenWays = {
  '1': '1.5 mm²: left direction indicator',
  '2': '1.5 mm²: rear fog lamp',
  '3': '2.5 mm²: common return',
  '4': '1.5 mm²: right direction indicator',
  '5': '1.5 mm²: right rear position and plate lamp',
  '6': '1.5 mm²: stop lamps',
  '7': '1.5 mm²: left rear position and plate lamp',
} as const

function faultOf({ carries, wanted, fits, section, least, needed }: SocketWay): string | null {
  if (wanted === null) return 'is a contact that the standard has not'
  if (needed !== null) return `is not wired, and contact ${needed}, whose return it is, is used`
  if (fits === null) return `carries \`${carries ?? ''}\`, where the standard has: ${wanted}`
  const isThin = section !== null && least !== null && section < least * (1 - roundingSlack)
  return isThin ? 'has a thinner wire than the standard' : null
}

/** Whether any trailer can be plugged in: each contact as its standard has it. */
export default defineCheck({
  id: 'trailer-socket',
  title: 'Trailer socket',
  question: "Does the socket follow the standard's allocation and cross-sections?",
  subject: trailerSockets(),
  worthAsking: 'always',
  inputs: { ways: socketWays() },
  compute: ({ ways }) => ({
    offenders: ways.flatMap((way): Offender[] => {
      const why = faultOf(way)
      return why === null ? [] : [{ path: way.path, why }]
    }),
    notes: ways.flatMap(({ name, carries, differs }) =>
      differs === null
        ? []
        : [
            `Contact ${name} carries \`${carries ?? ''}\`; trade pages have: ${differs}. Markets and years differ here: compare it with the very trailer before you plug in.`,
          ],
    ),
  }),
  onlyWorsens: [],
  source: {
    title: 'ISO 1724 and ISO 3732 (seven contacts each) and ISO 11446-1 (thirteen)',
    section: 'contact allocation and sections, as connector makers and trailer trade pages print them',
  },
  limit: {
    who: 'standard',
    source:
      'ISO 1724, ISO 3732 and ISO 11446-1; whether a standard is law is for local codes and licensed practice to decide',
    max: { value: 0, unit: '1' },
  },
  notes: [
    'The returns of contacts 9 and 10 of ISO 11446 must not be joined to contact 3 on the trailer; the record cannot show that.',
  ],
  caution:
    'A trailer whose stop lamp and indicator are swapped misleads who drives behind it: try every lamp with a trailer board before the road. Local codes and licensed practice decide.',
  examples: [
    {
      given: socket('ISO 1724', sevenWays),
      expect: 'pass',
      value: 0,
      source: 'ISO 1724:2003: the allocation and the sections as trade pages print them',
    },
    {
      given: socket('ISO 1724', {
        ...sevenWays,
        '1': '1.5 mm²: right indicators',
        '4': '1.5 mm²: left indicators',
        '3': '1.5 mm²: earth',
      }),
      expect: 'fail',
      value: 3,
      source: 'ISO 1724:2003: the indicators are swapped, and the common return is 2.5 mm²',
    },
    {
      given: socket('ISO 1724', {
        '1': '1.5 mm²: L',
        '3': '2.5 mm²: 31',
        '4': '1.5 mm²: R',
        '5': '1.5 mm²: terminal 58R',
        '6': '1.5 mm²: 54',
        '7': '1.5 mm²: terminal 58L',
      }),
      expect: 'pass',
      value: 0,
      source: 'ISO 1724:2003 with the terminal names of DIN 72552; the fog lamp may be left out',
    },
    {
      given: socket('ISO 11446-1, 13 pin', {
        ...sevenWays,
        '8': '1.5 mm²: reversing lamp',
        '9': '2.5 mm²: permanent supply',
        '10': '2.5 mm²: ignition-controlled supply',
        '11': '2.5 mm²: return for contact 10',
        '12': '1.5 mm²: reserved',
        '13': '2.5 mm²: return for contact 9',
      }),
      expect: 'pass',
      value: 0,
      source: 'ISO 11446-1:2012: the allocation and the sections as a connector maker prints them',
    },
    {
      given: socket('ISO 11446', {
        ...sevenWays,
        '8': '1.5 mm²: fridge supply',
        '9': '1.5 mm²: permanent supply',
        '14': '1.5 mm²: radio',
      }),
      expect: 'fail',
      value: 4,
      source:
        'ISO 11446-1:2012: contact 8 is the reversing lamp, 9 has 2.5 mm² and its return on 13, and there is no 14',
    },
    {
      given: socket('12S', {
        '1': '1.5 mm²: reversing lamp',
        '2': '1.5 mm²: water pump',
        '3': '2.5 mm²: earth',
        '4': '2.5 mm²: permanent 12 V',
        '6': '2.5 mm²: battery',
      }),
      expect: 'fail',
      value: 1,
      source:
        'ISO 3732 as trade pages print it: contact 6 feeds the refrigerator with the ignition on; what is on 2 differs by market and is only told',
    },
    {
      given: socket('ISO 1724', {
        '1': '1.5 mm²: left indicator',
        '3': '2.5 mm²: earth',
        '4': '1.5 mm²: right indicator',
        '6': '1.5 mm²: stop',
        '7': '1.5 mm²: left tail',
      }),
      expect: 'missing',
      missing: ['connector:example/pins.5.carries'],
      source: 'What contact 5 carries is not written',
    },
    {
      given: { 'trailer-socket/ways': '7', 'connector/pins.1.carries': 'left indicator' },
      expect: 'missing',
      missing: ['example/standard'],
      source: 'Seven contacts may be ISO 1724 or another allocation',
    },
  ],
})
