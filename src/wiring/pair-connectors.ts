import type { Quantity } from '../quantities/quantity.ts'
import { quantityAt } from '../record/lookups.ts'
import type { AsBuiltRecord, Connector, Held } from '../record/record.ts'
import { terminalOf } from './end-terminals.ts'
import { inOrderOfNaming } from './list-circuits.ts'
import { partOf, textAt } from './standing.ts'
import { type WireLook, wireLook } from './wire-look.ts'

/** The wire at one way of a connector. */
export interface PinWire {
  /** `X2/4`: the connector's number and the way. */
  readonly number: string
  readonly connector: string
  readonly pin: string
  readonly area: Held<Quantity> | null
  readonly look: WireLook
  readonly to: string | null
  readonly carries: string | null
  readonly circuit: string | null
  readonly meets: string | null
  /** What is crimped on it: as the way says, else as its connector or the connector's part does. */
  readonly terminal: string | null
}

/** One half of a pair. */
export interface Half {
  readonly id: string
  readonly name: string
  readonly number: string
  readonly pins: readonly PinWire[]
  readonly ways: number | null
  readonly mates: string | null
}

/** What stands opposite what. A doubled way is met by more than one of the other half. */
export interface PairRow {
  readonly left: PinWire | null
  readonly right: PinWire | null
  /** The way's name on either side, also where it has no wire; null where nothing meets it. */
  readonly leftWay: string | null
  readonly rightWay: string | null
  readonly state: 'mated' | 'unmated' | 'doubled' | 'no wire'
  /** Where the two halves say different things of it. */
  readonly doubt: string | null
}

export interface Pair {
  readonly left: Half
  /** Null: it plugs into nothing that the notes name, or into itself. */
  readonly right: Half | null
  readonly rows: readonly PairRow[]
  readonly doubts: readonly string[]
}

/** All connectors, numbered X1 … in the order in which the notes first name them. */
export function listHalves(record: AsBuiltRecord): Half[] {
  return inOrderOfNaming(record, record.connectors).map((connector, index) =>
    halfOf(record, connector, `X${index + 1}`),
  )
}

/** Each pair once, under the half that was named first; halves without a mate alone. */
export function pairConnectors(record: AsBuiltRecord): Pair[] {
  const halves = listHalves(record)
  const byId = new Map(halves.map(half => [half.id, half]))
  const done = new Set<string>()
  return halves.flatMap(half => {
    if (done.has(half.id)) return []
    done.add(half.id)
    const mate = half.mates === null || half.mates === half.id ? null : (byId.get(half.mates) ?? null)
    if (mate !== null && mate.mates === half.id) done.add(mate.id)
    return [pairUp(half, mate)]
  })
}

/** Sets two halves beside each other, way against way. */
export function pairUp(left: Half, right: Half | null): Pair {
  const doubts = [
    ...(left.mates === left.id ? [`${left.name} is written as its own mate.`] : []),
    ...(right !== null && right.mates !== null && right.mates !== left.id
      ? [`${right.name} names another half than ${left.name} as its mate.`]
      : []),
    ...(left.mates !== null && left.mates !== left.id && right === null
      ? [`Its mate “${left.mates}” has no pins written down.`]
      : []),
  ]
  return { left, right, rows: rowsOf(left, right), doubts }
}

function halfOf(record: AsBuiltRecord, connector: Connector, number: string): Half {
  const part = partOf(record, connector.id)
  const ways = part === null ? null : (quantityAt(part, 'ways')?.value.number ?? null)
  const pins = connector.pins.map((pin): PinWire => {
    const text = (key: string): string | null => textAt(pin, key)
    return {
      number: `${number}/${pin.pin}`,
      connector: connector.id,
      pin: pin.pin,
      area: quantityAt(pin, 'wire.area'),
      look: wireLook(text('wire.colour')),
      to: text('to'),
      carries: text('carries'),
      circuit: text('circuit'),
      meets: text('meets'),
      terminal: text('terminal') ?? terminalOf(connector) ?? terminalOf(part),
    }
  })
  return { id: connector.id, name: connector.name, number, pins, ways, mates: connector.mates }
}

const mostWays = 500 // ours: ways without a wire are listed one by one up to here

/** The ways of a half: those with a wire as written, then those that its part has besides. */
function waysOf({ pins, ways }: Half): string[] {
  const numbered = Array.from({ length: Math.min(Math.max(0, Math.trunc(ways ?? 0)), mostWays) }, (_, index) =>
    String(index + 1),
  )
  const all = [...new Set([...pins.map(({ pin }) => pin), ...numbered])]
  return pins.every(({ pin }) => /^\d+$/.test(pin)) ? all.sort((one, other) => Number(one) - Number(other)) : all
}

function rowsOf(left: Half, right: Half | null): PairRow[] {
  const meeting = waysOf(left).map(way => ({ way, other: right === null ? null : oppositeOf(left, right, way) }))
  const rights = right === null ? [] : waysOf(right)
  const met = new Map<string, number>()
  for (const { way, other } of meeting)
    if (other !== null && pinOf(left, way) !== null) met.set(other, (met.get(other) ?? 0) + 1)
  const order = (way: string | null): number => (way === null ? -1 : rights.indexOf(way))
  // Ways that meet the same one stand together, in the place of the first of them.
  const placed = meeting.map((one, index) => ({
    ...one,
    at: meeting.findIndex(({ other }) => other !== null && other === one.other),
    index,
  }))
  placed.sort(
    (a, b) =>
      (a.at < 0 ? a.index : a.at) - (b.at < 0 ? b.index : b.at) || order(a.other) - order(b.other) || a.index - b.index,
  )
  const rows = placed.map(({ way, other }) =>
    rowOf({ left, right, way, other, met: other === null ? 0 : (met.get(other) ?? 0) }),
  )
  const unmet = rights.filter(way => !meeting.some(({ other }) => other === way))
  return [
    ...rows,
    ...unmet.map(
      (way): PairRow => ({
        left: null,
        leftWay: null,
        right: pinOf(right, way),
        rightWay: way,
        state: pinOf(right, way) === null ? 'no wire' : 'unmated',
        doubt: null,
      }),
    ),
  ]
}

interface Meeting {
  readonly left: Half
  readonly right: Half | null
  readonly way: string
  readonly other: string | null
  readonly met: number
}

function rowOf({ left, right, way, other, met }: Meeting): PairRow {
  const [own, opposite] = [pinOf(left, way), other === null ? null : pinOf(right, other)]
  const isDoubled = own !== null && met > 1
  const state = isDoubled
    ? 'doubled'
    : own !== null && opposite !== null
      ? 'mated'
      : own === null && opposite === null
        ? 'no wire'
        : 'unmated'
  return { left: own, leftWay: way, right: opposite, rightWay: other, state, doubt: doubtOf(own, opposite) }
}

/** The way of the other half that meets this one: as this one says, as the other says, else the one of the same name. */
function oppositeOf(left: Half, right: Half, way: string): string | null {
  const own = pinOf(left, way)
  const ways = waysOf(right)
  if (own?.meets !== null && own?.meets !== undefined) return ways.includes(own.meets) ? own.meets : null
  const claims = right.pins.find(({ meets }) => meets === way)
  if (claims !== undefined) return claims.pin
  const same = pinOf(right, way)
  return ways.includes(way) && (same === null || same.meets === null) ? way : null
}

function doubtOf(own: PinWire | null, other: PinWire | null): string | null {
  if (own === null || other === null) return null
  if (other.meets !== null && other.meets !== own.pin) return `way ${other.pin} is written to meet ${other.meets}`
  if (own.circuit !== null && other.circuit !== null && own.circuit !== other.circuit) return 'two circuits are written'
  const [one, two] = [own.carries, other.carries].map(words => words?.trim().toLowerCase() ?? null)
  return one !== null && two !== null && one !== two && own.circuit === null
    ? 'the two sides carry different things'
    : null
}

const pinOf = (half: Half | null, way: string): PinWire | null => half?.pins.find(({ pin }) => pin === way) ?? null
