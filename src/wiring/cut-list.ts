import type { Circuit, Conductor } from './circuit.ts'
import { isThere } from './circuit.ts'

// Common practice, no source: what is lost in bends and in the lay, and what each end is made off with.
const layShare = 0.03
const endAllowanceM = 0.1 // metres, each end
const cutAllowanceM = 0.1 // metres, each relay or switch at which a run is cut and made off twice, half on each side
const stepM = 0.01 // metres, cut lengths are rounded up to a hand's reading of a tape

/** The allowance in words, printed beside every cut list. */
export const allowanceWords =
  'length as written and its plus tolerance, plus 3 % for the lay, 100 mm for each end and 100 mm for each relay or switch on the way, rounded up to 10 mm'

/** A wire to be cut: its length as written, and as it comes off the drum. */
export interface Cut {
  readonly wire: Conductor
  readonly circuit: Circuit
  /** Metres as written; null where nobody measured it. */
  readonly writtenM: number | null
  readonly cutM: number | null
}

export interface Drum {
  /** `2.5 mm² green/purple`. */
  readonly size: string
  readonly colour: string
  readonly count: number
  readonly totalM: number
  /** Wires of it without a length. */
  readonly unmeasured: number
}

/** The wires of circuits that are there or planned, there and back, thickest last; one drum's wires together, longest first. */
export function listCuts(circuits: readonly Circuit[]): Cut[] {
  return circuits
    .filter(isThere)
    .flatMap(circuit =>
      [circuit.feed, ...(circuit.back === null ? [] : [circuit.back])].map(wire => cutOf(wire, circuit)),
    )
    .sort(compareCuts)
}

/** What a run of this length is cut to, in metres. */
export function cutLength(lengthM: number, joins: number): number {
  const length = lengthM * (1 + layShare) + 2 * endAllowanceM + joins * cutAllowanceM
  return Math.ceil(length / stepM - 1e-6) / (1 / stepM)
}

/** How much of each cable the list takes, drum by drum, in the order of the list. */
export function sumDrums(cuts: readonly Cut[]): Drum[] {
  const drums = new Map<string, Drum>()
  for (const { wire, cutM } of cuts) {
    const [size, colour] = [wire.area?.value.text ?? '', wire.look.written]
    const key = JSON.stringify([size, colour])
    const before = drums.get(key) ?? { size, colour, count: 0, totalM: 0, unmeasured: 0 }
    // Sums run over whole steps, so that a total is what its lines add up to.
    const total = Math.round((before.totalM + (cutM ?? 0)) / stepM) / (1 / stepM)
    drums.set(key, {
      ...before,
      count: before.count + 1,
      totalM: total,
      unmeasured: before.unmeasured + (cutM === null ? 1 : 0),
    })
  }
  return [...drums.values()]
}

function cutOf(wire: Conductor, circuit: Circuit): Cut {
  const { value } = wire.length ?? { value: null }
  const si = value === null ? null : (value.si ?? value.siHigh)
  const isLength = value !== null && value.dimension === 'length' && si !== null && si > 0
  if (!isLength) return { wire, circuit, writtenM: null, cutM: null }
  const plus = value.number !== null && value.number > 0 && value.plus !== null ? (value.plus / value.number) * si : 0
  return { wire, circuit, writtenM: si, cutM: cutLength(si + plus, wire.cutAt.length) }
}

function compareCuts(one: Cut, other: Cut): number {
  const area = ({ wire }: Cut): number => wire.area?.value.si ?? Number.POSITIVE_INFINITY
  const by = area(one) - area(other)
  if (by !== 0 && !Number.isNaN(by)) return by
  return (
    compareText(one.wire.look.written.toLowerCase(), other.wire.look.written.toLowerCase()) ||
    (other.cutM ?? 0) - (one.cutM ?? 0) ||
    compareText(one.wire.number.padStart(8), other.wire.number.padStart(8))
  )
}

const compareText = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0)
