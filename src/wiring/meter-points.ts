import type { Circuit } from './circuit.ts'
import { stationsOf } from './circuit-stations.ts'
import { lengthsBetween, stopsAlong } from './loom-lengths.ts'
import { capital } from './standing.ts'
import type { Wiring } from './wiring.ts'

/** Volts lost on each part of a circuit's way with its load on. */
interface Losses {
  readonly nominal: number
  /** In the feed of the fuse box. */
  readonly feed: number
  readonly out: number
  readonly back: number
  /** In all joints together, of which half are taken to lie on either side. */
  readonly joints: number
}

/** A place at which a meter's red lead is held, its black one on the battery's negative post. */
export interface MeterPoint {
  readonly words: string
  readonly side: 'out' | 'back'
  /** Volts lost from the battery to here, or from here home: least and most, which differ where the notes tell no length. */
  readonly lost: { readonly least: number; readonly most: number }
}

/** Station by station from the battery to the load and home. */
export function meterPoints(wiring: Wiring, circuit: Circuit, losses: Losses): MeterPoint[] {
  const { feed, out, back, joints } = losses
  const stations = stationsOf(wiring, circuit).filter(({ symbol, words }) => symbol !== 'battery' && words !== '')
  const fuse = stations.findIndex(({ leads, symbol }) => symbol === 'fuse' && leads?.kind !== 'circuit')
  const shares = sharesAlong(wiring, circuit)
  const half = joints / 2
  const load = capital(circuit.feeds ?? circuit.name)
  let reached = 0
  const outward = stations.map(({ words, figure }, at): MeterPoint => {
    if (figure === 'load') return outPoint(`${load}, where the wire comes in`, feed + out + half)
    if (at < fuse) return outPoint(words, 0, feed)
    if (at === fuse) return outPoint(words, feed)
    const share = shares.get(words) ?? null
    reached = share ?? reached
    return outPoint(
      words,
      feed + out * reached,
      feed + out * (share ?? nextShare(stations.slice(at + 1), shares)) + half,
    )
  })
  return [
    { words: 'Battery, positive post', side: 'out', lost: { least: 0, most: 0 } },
    ...outward,
    { words: `${load}, its other side`, side: 'back', lost: same(back + half) },
    ...earthOf(circuit, losses),
  ]
}

const same = (volts: number): MeterPoint['lost'] => ({ least: volts, most: volts })
const outPoint = (words: string, least: number, most = least): MeterPoint => ({
  words: capital(words),
  side: 'out',
  lost: { least, most },
})

/** The chassis beside the earth point; a wire of its own ends there, and what lies behind it was not counted. */
function earthOf({ earth, back }: Circuit, losses: Losses): MeterPoint[] {
  if (earth === null) return []
  const lost = back === null ? losses.back : 0
  return [{ words: `${capital(earth.name)}, bare metal beside the bolt`, side: 'back', lost: same(lost) }]
}

/** How far along the wire each stop lies, as a share, where other circuits of known length end at it. */
function sharesAlong({ looms }: Wiring, circuit: Circuit): ReadonlyMap<string, number> {
  const whole = circuit.feed.length?.value.si ?? null
  const loom = looms.find(({ id }) => id === circuit.loom)
  const [start] = stopsAlong(circuit)
  const found = new Map<string, number>()
  if (whole === null || whole <= 0 || loom === undefined || start === undefined) return found
  const known = lengthsBetween(loom.members.filter(({ id }) => id !== circuit.id))
  for (const stop of circuit.route) {
    const length = known.get(JSON.stringify([start, stop]))
    if (length !== undefined && length < whole) found.set(capital(stop), length / whole)
  }
  return found
}

function nextShare(after: readonly { readonly words: string }[], shares: ReadonlyMap<string, number>): number {
  for (const { words } of after) {
    const share = shares.get(words)
    if (share !== undefined) return share
  }
  return 1
}
