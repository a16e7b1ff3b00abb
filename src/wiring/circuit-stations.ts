import type { Circuit, Conductor } from './circuit.ts'
import { conductorWords } from './circuit-return.ts'
import type { Pair, PinWire } from './pair-connectors.ts'
import { capital, endName } from './standing.ts'
import type { SymbolName } from './symbols.ts'
import type { WireLook } from './wire-look.ts'
import { wireWords } from './wire-words.ts'
import type { Wiring } from './wiring.ts'

/** A wire as a drawing shows it. */
interface DrawnWire {
  readonly look: WireLook
  readonly words: string
}

/** One thing on the way of a circuit, with the wire that leads to it from the one before. */
export interface Station {
  readonly symbol: SymbolName
  readonly words: string
  /** Figures under the words: a key of the circuit, and what it is. */
  readonly figure: 'load' | 'fuse.rating' | null
  readonly wire: DrawnWire | null
  /** Where it leads: a part, a connector or another circuit. */
  readonly leads: { readonly kind: 'part' | 'connector' | 'circuit'; readonly id: string } | null
}

/** The way out of a circuit, source first, load last. */
export function stationsOf(wiring: Wiring, circuit: Circuit): Station[] {
  const cable = drawn(circuit.feed)
  const middle = [
    ...circuit.through.map(
      (part): Station => ({
        symbol: part.partKind === 'relay' ? 'relay' : 'contact',
        words: part.name,
        figure: null,
        wire: cable,
        leads: { kind: 'part', id: part.id },
      }),
    ),
    ...stopsOf(circuit, cable),
  ]
  const plugs = plugsOf(wiring, circuit, cable)
  const last = plugs.at(-1)?.after ?? cable
  if (circuit.use === 'charging') return chargingStations(circuit, { cable, middle })
  return [
    ...sourceOf(wiring, circuit),
    ...(circuit.fuse === null ? [] : [fuseStation(wiring, circuit)]),
    ...middle,
    ...plugs.map(({ station }) => station),
    {
      symbol: loadSymbol(circuit),
      words: capital(circuit.feeds ?? 'what it feeds is not written'),
      figure: 'load',
      wire: last,
      leads: circuit.part === null ? null : { kind: 'part', id: circuit.part.id },
    },
  ]
}

const drawn = (wire: Conductor): DrawnWire => ({ look: wire.look, words: conductorWords(wire) })

/** From the generator to the battery, the fuse near the battery. */
function chargingStations(
  circuit: Circuit,
  { cable, middle }: { cable: DrawnWire; middle: readonly Station[] },
): Station[] {
  return [
    {
      symbol: 'generator',
      words: `Alternator${circuit.earth === null ? '' : `, earthed at ${circuit.earth.name}`}`,
      figure: 'load',
      wire: null,
      leads: null,
    },
    ...middle.filter(({ words }) => !/alternator|battery/i.test(words)),
    ...(circuit.fuse === null
      ? []
      : [
          {
            symbol: 'fuse' as const,
            words: `Fuse${circuit.fuse.after === null ? '' : `, ${circuit.fuse.after.value.text} from the battery`}`,
            figure: 'fuse.rating' as const,
            wire: cable,
            leads: null,
          },
        ]),
    { symbol: 'battery', words: 'Battery', figure: null, wire: cable, leads: null },
  ]
}

/** The battery and all that lies between it and the circuit's own fuse: the feed of its box, or the circuit that supplies it. */
function sourceOf(wiring: Wiring, circuit: Circuit): Station[] {
  const chain = feedersOf(wiring, circuit)
  const first = chain[0]?.supply ?? circuit.supply
  const battery: Station = {
    symbol: 'battery',
    words: first === null ? 'Supply not written' : 'Battery',
    figure: null,
    wire: null,
    leads: null,
  }
  const feeders = chain.map(
    (feeder): Station => ({
      symbol: feeder.fuse === null ? 'stop' : 'fuse',
      words: `${capital(feeder.name)}${feeder.fuse?.rating == null ? '' : `, ${feeder.fuse.rating.value.text}`}`,
      figure: null,
      wire: null,
      leads: { kind: 'circuit', id: feeder.id },
    }),
  )
  const key: Station[] = isKeyed(circuit)
    ? [
        {
          symbol: 'contact',
          words: circuit.supply === 'ignition' ? 'Live with the ignition' : 'Live with the accessory position',
          figure: null,
          wire: feederWire(chain.at(-1)),
          leads: null,
        },
      ]
    : []
  return [
    battery,
    ...feeders.map((station, index) => ({ ...station, wire: index === 0 ? null : feederWire(chain[index - 1]) })),
    ...key,
  ]
}

/** Whether the key switches it: where in the way it does is not written, so it is drawn between the feed and the fuse. */
const isKeyed = ({ supply }: Circuit): boolean => supply === 'ignition' || supply === 'accessory'

const feederWire = (feeder: Circuit | undefined): DrawnWire | null => (feeder === undefined ? null : drawn(feeder.feed))

/** The circuits that feed this one, the one nearest to the battery first. A loop ends where it closes. */
function feedersOf(wiring: Wiring, circuit: Circuit): Circuit[] {
  const chain: Circuit[] = []
  const seen = new Set([circuit.id])
  for (let next = feederOf(wiring, circuit); next !== null && !seen.has(next.id); next = feederOf(wiring, next)) {
    seen.add(next.id)
    chain.unshift(next)
  }
  return chain
}

function feederOf({ record, circuits }: Wiring, { supply, fuse }: Circuit): Circuit | null {
  const value = record.parts.find(({ id }) => id === fuse?.box)?.properties.feed?.at(-1)?.value
  const id = value?.type === 'words' ? value.words.text : supply
  return circuits.find(known => known.id === id) ?? null
}

function fuseStation(wiring: Wiring, circuit: Circuit): Station {
  const { box, way, after } = circuit.fuse ?? { box: null, way: null, after: null }
  const alone = `Fuse${after === null ? '' : `, ${after.value.text} from the source`}`
  const words = box === null ? alone : `${endName(wiring.record, box)}${way === null ? '' : `, way ${way}`}`
  return {
    symbol: 'fuse',
    words: capital(words),
    figure: 'fuse.rating',
    wire: isKeyed(circuit) ? null : feederWire(feedersOf(wiring, circuit).at(-1)),
    leads: box === null ? null : { kind: 'part', id: box },
  }
}

/** Stops of the route that are not drawn as something else. */
function stopsOf(circuit: Circuit, wire: DrawnWire): Station[] {
  const { route, feed, through, feeds } = circuit
  const others = new Set([
    feeds,
    feed.from,
    feed.from.replace(/, way .*$/, ''),
    'battery',
    ...through.map(({ name }) => name),
  ])
  const stops = route.filter((stop, index) => !others.has(stop) && index !== route.length - 1)
  return stops.map(stop => ({ symbol: 'stop', words: capital(stop), figure: null, wire, leads: null }))
}

/** Each mated pair on the way, and the wire that comes out of it. */
function plugsOf({ pairs }: Wiring, circuit: Circuit, cable: DrawnWire): { station: Station; after: DrawnWire }[] {
  return pairs.flatMap(pair =>
    pair.rows
      .filter(row => row.left?.circuit === circuit.id || row.right?.circuit === circuit.id)
      .map(row => {
        const [near, far] = row.left?.circuit === circuit.id ? [row.left, row.right] : [row.right, row.left]
        return {
          station: plugStation(pair, { near, far }, cable),
          after: far === null ? cable : { look: far.look, words: `${far.number}, ${wireWords(far)}` },
        }
      }),
  )
}

function plugStation(
  { left, right }: Pair,
  ends: { near: PinWire | null; far: PinWire | null },
  wire: DrawnWire,
): Station {
  const name = (pin: PinWire | null): string =>
    pin === null ? 'no mate written' : `${pin.connector === left.id ? left.name : (right?.name ?? '')}, way ${pin.pin}`
  return {
    symbol: 'plug',
    words: `${name(ends.near)} to ${name(ends.far)}`,
    figure: null,
    wire,
    leads: { kind: 'connector', id: ends.near?.connector ?? left.id },
  }
}

function loadSymbol({ part, use, feeds }: Circuit): SymbolName {
  const words = `${part?.partKind ?? ''} ${feeds ?? ''}`
  if (/\bhorn\b/i.test(words)) return 'horn'
  if (/fuse-box|instrument|socket|radio|\bECU\b/i.test(words)) return 'box'
  if (/\b(motor|pump|fan|starter|wiper)\b/i.test(words) || use === 'pump' || use === 'starting') return 'motor'
  if (/lamp|light/i.test(words) || use === 'lighting' || (use === 'signal' && /indicator|hazard|stop/i.test(words)))
    return 'lamp'
  return use === 'heating' ? 'resistor' : 'box'
}
