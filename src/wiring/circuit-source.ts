import type { Circuit } from './circuit.ts'
import { capital, endName } from './standing.ts'
import { type DrawnWire, drawn, type Station } from './station.ts'
import type { Wiring } from './wiring.ts'

/** The battery and all that lies between it and the circuit's own fuse: the feed of its box, or the circuit that supplies it. */
export function sourceOf(wiring: Wiring, circuit: Circuit): Station[] {
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

/** The fuse of the circuit itself. */
export function fuseStation(wiring: Wiring, circuit: Circuit): Station {
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
