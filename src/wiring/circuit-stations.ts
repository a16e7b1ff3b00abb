import type { Circuit } from './circuit.ts'
import { fuseStation, sourceOf } from './circuit-source.ts'
import type { Pair, PinWire } from './pair-connectors.ts'
import { capital } from './standing.ts'
import { type DrawnWire, drawn, type Station } from './station.ts'
import type { SymbolName } from './symbols.ts'
import { wireWords } from './wire-words.ts'
import type { Wiring } from './wiring.ts'

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
      words: [capital(circuit.feeds ?? 'what it feeds is not written'), ...alsoAt(wiring, circuit)].join('; also at '),
      figure: 'load',
      wire: last,
      leads: circuit.part === null ? null : { kind: 'part', id: circuit.part.id },
    },
  ]
}

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
  return pairs.filter(isJoint).flatMap(pair =>
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

/** A connector that plugs into nothing, such as a trailer's socket, is no joint on the way: the circuit ends there as well. */
const isJoint = ({ left, right }: Pair): boolean => right !== null || left.mates !== null

function alsoAt({ pairs }: Wiring, circuit: Circuit): string[] {
  return pairs
    .filter(pair => !isJoint(pair))
    .flatMap(({ left }) =>
      left.pins.flatMap(({ pin, circuit: carried }) => (carried === circuit.id ? [`${left.name}, way ${pin}`] : [])),
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
