import { defineCheck } from '../checker/check.ts'
import { matedPairs } from '../checker/derived/mated-pairs.ts'
import { type MatedWay, matedWays } from '../checker/derived/mated-ways.ts'
import { roundingSlack } from '../checker/limit.ts'

/** A plug and its socket, way by way, as an example gives them. */
const halves = (plug: Readonly<Record<string, string>>, socket: Readonly<Record<string, string>>) => ({
  'connector/mates': 'socket',
  ...Object.fromEntries(Object.entries(plug).map(([pin, words]) => [`connector/pins.${pin}`, words])),
  ...Object.fromEntries(Object.entries(socket).map(([pin, words]) => [`connector:socket/pins.${pin}`, words])),
})

const isBlank = (words: string | null): boolean =>
  words !== null && /^(spare|blank|empty|none|not used|unused|-|–|—)$/i.test(words.trim())

const plainWords = (words: string): string => words.trim().toLowerCase().replace(/\s+/g, ' ')

/** What is wrong with a way; null where nothing is. */
function faultOf(way: MatedWay): string | null {
  if (way.isThere === null) return isBlank(way.hereCarries) ? null : 'meets no way of the other half'
  if (way.isHere === null) return isBlank(way.thereCarries) ? null : 'is met by no way of the other half'
  if ((way.met ?? 1) > 1) return `meets way ${way.isThere}, which another way meets too`
  if (!isLike(way))
    return `carries ${said(way.hereCarries ?? way.hereCircuit)}, and way ${way.isThere} over there ${said(way.thereCarries ?? way.thereCircuit)}`
  return faultOfSize(way)
}

const said = (words: string | null): string => `\`${words ?? ''}\``

function isLike({ hereCarries, thereCarries, hereCircuit, thereCircuit }: MatedWay): boolean {
  if (isBlank(hereCarries) && isBlank(thereCarries)) return true
  const isSame = (one: string | null, other: string | null): boolean =>
    one !== null && other !== null && plainWords(one) === plainWords(other)
  return isSame(hereCarries, thereCarries) || isSame(hereCircuit, thereCircuit)
}

function faultOfSize(way: MatedWay): string | null {
  const takes = (area: number | null, least: number | null, most: number | null): boolean =>
    area === null ||
    (area >= (least ?? 0) * (1 - roundingSlack) && area <= (most ?? Number.POSITIVE_INFINITY) * (1 + roundingSlack))
  if (!takes(way.hereArea, way.hereLeast, way.hereMost) || !takes(way.thereArea, way.thereLeast, way.thereMost))
    return 'has a wire that its terminal does not take'
  const rating = Math.min(way.hereRating ?? Number.POSITIVE_INFINITY, way.thereRating ?? Number.POSITIVE_INFINITY)
  return (way.load ?? 0) > rating * (1 + roundingSlack) ? 'carries more than its contact is rated for' : null
}

/** What is wrong where two halves of a connector meet. */
export default defineCheck({
  id: 'connector-map',
  title: 'Connector map',
  question:
    'Is every way of a mated pair used once, joined like to like, of a size its terminal takes and within its rating?',
  subject: matedPairs(),
  worthAsking: 'always',
  inputs: { ways: matedWays() },
  compute: ({ ways }) => ({
    offenders: ways.flatMap(way => {
      const why = faultOf(way)
      return why === null ? [] : [{ path: way.path, why }]
    }),
  }),
  onlyWorsens: [],
  source: {
    title: 'FAA AC 43.13-1B, change 1',
    section:
      '11-67: the contact rating sets the limit where the wire could carry more, and the wire has to fit the crimp',
  },
  limit: { who: 'practice', source: 'good practice, ours: no way wrong', max: { value: 0, unit: '1' } },
  notes: ['Like goes to like where both say that they carry the same, or name the same circuit.'],
  caution:
    'Two wires swapped in a plug can put the battery on a lead that has no fuse: try each way with a lamp before you connect it. Disconnect the battery before you work on wiring; local codes and licensed practice decide.',
  examples: [
    {
      given: halves(
        { '1.carries': 'side lamps', '2.carries': 'Horn', '3.circuit': 'pump', '4.carries': 'spare' },
        { '1.carries': 'side lamps', '2.carries': 'horn', '3.circuit': 'pump' },
      ),
      expect: 'pass',
      value: 0,
      source: 'Way by way: like to like by words or by circuit, and way 4 is spare',
    },
    {
      given: halves(
        { '1.carries': 'left indicators', '2.carries': 'right indicators' },
        { '1.carries': 'right indicators', '2.carries': 'left indicators' },
      ),
      expect: 'fail',
      value: 2,
      source: 'Way by way: both ways are swapped',
    },
    {
      given: halves(
        { '1.carries': 'left indicators', '1.meets': '2', '2.carries': 'right indicators' },
        { '1.carries': 'right indicators', '1.meets': '2', '2.carries': 'left indicators' },
      ),
      expect: 'pass',
      value: 0,
      source: 'Way by way, as `meets` says: 1 meets 2, and 2 meets 1',
    },
    {
      given: halves(
        { '1.carries': 'horn', '2.carries': 'horn', '2.meets': '1', '3.carries': 'washers' },
        { '1.carries': 'horn', '2.carries': 'wipers' },
      ),
      expect: 'fail',
      value: 3,
      source:
        'Way 2 meets a way that is met already, way 3 meets nothing, and the wipers over there are met by nothing',
    },
    {
      given: {
        ...halves(
          {
            '1.carries': 'pump',
            '1.circuit': 'pump',
            '1.wire.area': '2.5 mm²',
            '2.carries': 'lamp',
            '2.wire.area': '0.35 mm²',
          },
          { '1.carries': 'pump', '2.carries': 'lamp', '3.carries': 'not used' },
        ),
        'connector/section-min': '0.5 mm²',
        'connector/section-max': '2.5 mm²',
        'connector/rating': '10 A',
        'circuit:pump/load': '10.5 A',
        'build/nominal': '12 V',
      },
      expect: 'fail',
      value: 2,
      source:
        'AC 43.13-1B, 11-67: 10.5 A on a contact of 10 A, and 0.35 mm² in a terminal from 0.5 mm² on; 2.5 mm² is at the limit',
    },
    {
      given: halves({ '1.carries': 'horn', '2.wire.colour': 'red' }, { '1.carries': 'horn', '2.carries': 'washers' }),
      expect: 'missing',
      missing: ['connector:example/pins.2.carries'],
      source: 'What way 2 carries is not written, so it cannot be told from the other',
    },
    {
      given: { 'connector/mates': 'socket', 'connector/pins.1.carries': 'horn', 'connector:socket/rating': '10 A' },
      expect: 'missing',
      missing: ['connector:socket/pins'],
      source: 'The other half has no ways in the record',
    },
  ],
})
