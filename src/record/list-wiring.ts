import type { Held } from './held.ts'
import { compareText } from './order-sessions.ts'
import { lastWords } from './property-store.ts'
import type { Connector, FuseBox, Pin, Thing } from './record.ts'

/** A connector with its pins in the order in which they were first written. */
export function asConnector(thing: Thing): Connector {
  const mates = lastWords(thing.properties.mates ?? [])?.value.text ?? null
  return { ...thing, mates, pins: listPins(thing.properties) }
}

/** The box of a part of kind `fuse-box`: its ways in their order, those without a circuit spare. */
export function asFuseBox(box: Thing, circuits: readonly Thing[]): FuseBox {
  const fused = circuits.filter(
    circuit => wordsOf(circuit, 'fuse.box') === box.id && wordsOf(circuit, 'state') !== 'removed',
  )
  const ways = waysOf(box)
  const wayOf = (circuit: Thing): string | null => wordsOf(circuit, 'fuse.way')
  const numbered = Array.from({ length: Math.min(ways ?? 0, mostWays) }, (_, index) => String(index + 1))
  const all = [...new Set([...numbered, ...fused.flatMap(circuit => wayOf(circuit) ?? [])])]
  return {
    id: box.id,
    ways,
    used: all
      .sort(compareWays)
      .map(way => ({ way, circuits: fused.filter(circuit => wayOf(circuit) === way).map(({ id }) => id) })),
    unplaced: fused.filter(circuit => wayOf(circuit) === null).map(({ id }) => id),
  }
}

const mostWays = 500 // ours: a box of more ways is a slip of the pen, and its spare ways are not listed one by one

const wordsOf = (thing: Thing, key: string): string | null => {
  const held = thing.properties[key]?.at(-1)
  if (held?.value.type === 'words') return held.value.words.text
  return held?.value.type === 'quantity' ? held.value.quantity.numberText : null
}

function waysOf(box: Thing): number | null {
  const held = box.properties.ways?.at(-1)
  return held?.value.type === 'quantity' ? held.value.quantity.number : null
}

/** `2` before `10`, `10` before `10a`, numbers before names. */
function compareWays(one: string, other: string): number {
  const [a, b] = [Number.parseInt(one, 10), Number.parseInt(other, 10)]
  if (Number.isNaN(a) || Number.isNaN(b))
    return Number(Number.isNaN(a)) - Number(Number.isNaN(b)) || compareText(one, other)
  return a - b || compareText(one, other)
}

// `pins.31b.wire.area`: the pin's own name may hold dots, so what is known is looked for at the end.
//       ^^^ ^^^^^^^^^
const pinKey = /^pins\.(?<pin>.+?)(?:\.(?<property>wire|wire\.[a-z-]+|to|carries|circuit|meets|terminal))?$/

function listPins(properties: Thing['properties']): Pin[] {
  const pins = new Map<string, Map<string, Pin['properties'][string]>>()
  for (const [key, history] of Object.entries(properties)) {
    const { pin, property = '' } = pinKey.exec(key)?.groups ?? {}
    if (pin === undefined) continue
    pins.set(pin, (pins.get(pin) ?? new Map()).set(property, history))
  }
  return [...pins].flatMap(([pin, said]) => pinOf(pin, said) ?? [])
}

function pinOf(
  pin: string,
  said: ReadonlyMap<string, readonly Held<Thing['properties'][string][number]['value']>[]>,
): Pin | null {
  const histories = [...said.values()]
  const isTakenBack = histories.every(history => history.at(-1)?.value.type === 'nothing')
  const first = histories[0]?.[0]
  if (first === undefined || (isTakenBack && said.has(''))) return null
  const properties = Object.fromEntries([...said].filter(([property]) => property !== ''))
  return { pin, place: first.place, session: first.session, properties }
}
