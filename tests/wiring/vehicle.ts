import fc from 'fast-check'
import type { AsBuiltRecord } from '../../src/record/record.ts'
import { foldTexts } from '../record/read-texts.ts'

/** What a circuit of a made vehicle says; what is left out is not written. */
export interface MadeCircuit {
  readonly feeds?: string
  readonly load?: string
  readonly use?: string
  readonly duty?: string
  readonly supply?: string
  readonly box?: string
  readonly way?: string
  readonly rating?: string
  readonly area?: string
  readonly colour?: string
  readonly length?: string
  readonly back?: string
  readonly backLength?: string
  readonly earth?: string
  readonly loom?: string
  readonly through?: readonly string[]
  readonly route?: readonly string[]
  readonly state?: string
}

export interface MadePin {
  readonly wire?: string
  readonly to?: string
  readonly carries?: string
  readonly circuit?: string
  readonly meets?: string
}

/** A vehicle as a few notes, invented. */
export interface Vehicle {
  readonly circuits: Readonly<Record<string, MadeCircuit>>
  readonly connectors?: Readonly<
    Record<string, { readonly mates?: string; readonly pins: Readonly<Record<string, MadePin>> }>
  >
  /** Further parts, as lines of YAML by identifier. */
  readonly parts?: Readonly<Record<string, string>>
}

/** Two fuse boxes of eight ways, a relay, a switch, two looms, two earths: what the circuits of these tests name. */
const standingParts: Readonly<Record<string, string>> = {
  'front-box': '{ name: "Front fuse box", kind: fuse-box, ways: 8, feed: front-feed }',
  'rear-box': '{ name: "Rear fuse box", kind: fuse-box, ways: 4 }',
  'pump-relay': '{ name: "Pump relay", kind: relay }',
  'stop-switch': '{ name: "Stop switch", kind: switch }',
}

const head = `---
title: Test vehicle
looms: { left-loom: { name: Left loom }, right-loom: { name: Right loom } }
earth-points: { nose: { name: Nose }, tail: { name: Tail } }
---
`

/** Folds a made vehicle. */
export function foldVehicle(vehicle: Vehicle): AsBuiltRecord {
  return foldTexts({ build: head, sessions: notesOf(vehicle) }).record
}

const circuitsANote = 60 // front matter has a greatest size

function notesOf({ circuits, ...rest }: Vehicle): Record<string, string> {
  const all = Object.entries(circuits)
  const notes = Array.from({ length: Math.max(1, Math.ceil(all.length / circuitsANote)) }, (_, index) =>
    all.slice(index * circuitsANote, (index + 1) * circuitsANote),
  )
  return Object.fromEntries(
    notes.map((some, index) => [
      `2026-01-01-wiring-${String(index).padStart(2, '0')}.md`,
      noteOf({ ...(index === 0 ? rest : { parts: {} }), circuits: Object.fromEntries(some) }),
    ]),
  )
}

function noteOf({ circuits, connectors = {}, parts = {} }: Vehicle): string {
  const lines = [
    '---',
    'title: Wiring',
    'date: 2026-01-01',
    'parts:',
    ...Object.entries({ ...standingParts, ...parts }).map(([id, text]) => `  ${id}: ${text}`),
    'circuits:',
    ...Object.entries(circuits).map(([id, circuit]) => `  ${id}: ${circuitText(circuit)}`),
    ...(Object.keys(connectors).length === 0 ? [] : ['connectors:']),
    ...Object.entries(connectors).map(
      ([id, { mates, pins }]) => `  ${id}: ${flow({ mates: quoted(mates), pins: flow(mapped(pins, pinText)) })}`,
    ),
    '---',
    '',
    'A day of wiring.',
    '',
  ]
  return lines.join('\n')
}

const quoted = (text: string | undefined): string | undefined => (text === undefined ? undefined : JSON.stringify(text))
const list = (entries: readonly string[] | undefined): string | undefined =>
  entries === undefined ? undefined : `[${entries.map(entry => JSON.stringify(entry)).join(', ')}]`
const mapped = <T>(all: Readonly<Record<string, T>>, print: (one: T) => string): Record<string, string> =>
  Object.fromEntries(Object.entries(all).map(([key, one]) => [JSON.stringify(key), print(one)]))

function flow(entries: Readonly<Record<string, string | undefined>>): string {
  return `{ ${Object.entries(entries)
    .flatMap(([key, text]) => (text === undefined ? [] : [`${key}: ${text}`]))
    .join(', ')} }`
}

function circuitText(made: MadeCircuit): string {
  const fuse = flow({ box: quoted(made.box), way: quoted(made.way), rating: made.rating })
  const cable = flow({ area: made.area, colour: quoted(made.colour) })
  const back =
    made.back === undefined || made.back === 'chassis'
      ? made.back
      : flow({ area: made.back, colour: 'black', length: made.backLength })
  return flow({
    feeds: quoted(made.feeds),
    load: made.load,
    use: made.use,
    duty: made.duty,
    supply: quoted(made.supply),
    fuse: fuse === '{  }' ? undefined : fuse,
    cable: cable === '{  }' ? undefined : cable,
    length: made.length,
    return: back,
    earth: quoted(made.earth),
    loom: quoted(made.loom),
    through: list(made.through),
    route: list(made.route),
    state: made.state,
  })
}

const pinText = ({ wire, to, carries, circuit, meets }: MadePin): string =>
  flow({ wire: quoted(wire), to: quoted(to), carries: quoted(carries), circuit: quoted(circuit), meets: quoted(meets) })

const words = fc.constantFrom(
  'lamp',
  'Left rear lamp, the one behind the spare wheel and the jack',
  'Ωμέγα <b>&"\'',
  'pump',
  'Motorhauptsicherungskastendeckelschraube',
  '風扇',
  'x',
  'heater blower, slow',
)
const stops = fc.constantFrom('left sill', 'rear panel', 'bulkhead grommet', 'under the seat', 'front-box', 'tail')
const colours = fc.constantFrom(
  'red',
  'green/purple',
  'GNYE',
  'brown with white tracer',
  'light blue/pink',
  'puce',
  'black',
  'white/yellow',
)
const some = <T>(of: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(of, { nil: undefined })

const anyCircuit = fc.record({
  feeds: some(words),
  load: some(fc.constantFrom('7 A', '55 W', '160 A ± 10 A')),
  use: some(fc.constantFrom('lighting', 'pump', 'starting', 'charging', 'signal', 'heating', 'other')),
  supply: some(fc.constantFrom('battery', 'ignition', 'c-0', 'c-1', 'c-2')),
  box: some(fc.constantFrom('front-box', 'rear-box', 'no-such-box')),
  way: some(fc.constantFrom('1', '2', '3', '9', '31b')),
  rating: some(fc.constantFrom('5 A', '15 A')),
  area: some(fc.constantFrom('0.5 mm²', '2.5 mm²', '35 mm²', 'AWG 14', '300 mm²')),
  colour: some(colours),
  length: some(fc.constantFrom('0.4 m', '4.8 m', '2300 mm ± 50 mm', '12 ft')),
  back: some(fc.constantFrom('chassis', '2.5 mm²')),
  backLength: some(fc.constantFrom('0.6 m')),
  earth: some(fc.constantFrom('nose', 'tail')),
  loom: some(fc.constantFrom('left-loom', 'right-loom')),
  through: some(fc.constantFrom(['pump-relay'], ['stop-switch', 'pump-relay'])),
  route: some(fc.array(stops, { maxLength: 6 })),
  state: some(fc.constantFrom('planned', 'live', 'removed')),
})

const anyPin = fc.record({
  wire: some(colours.map(colour => `1.5 mm² ${colour}`)),
  to: some(words),
  carries: some(words),
  circuit: some(fc.constantFrom('c-0', 'c-1')),
  meets: some(fc.constantFrom('1', '2', '3', '7')),
})
const anyPins = fc.dictionary(fc.constantFrom('1', '2', '3', '4', '31b'), anyPin, { minKeys: 1, maxKeys: 5 })

/** A vehicle as tired people might write it: anything may be missing, doubled, in a ring or nowhere. */
export const anyVehicle: fc.Arbitrary<Vehicle> = fc
  .tuple(
    fc.array(anyCircuit, { minLength: 1, maxLength: 9 }),
    anyPins,
    anyPins,
    fc.constantFrom(['b', 'a'], ['b', undefined], ['a', 'a'], ['c', 'b']),
  )
  .map(([circuits, pins, others, [mate, back]]) => ({
    circuits: Object.fromEntries(circuits.map((circuit, index) => [`c-${index}`, withoutUndefined(circuit)])),
    connectors: {
      a: { ...(mate === undefined ? {} : { mates: mate }), pins: mapValues(pins) },
      b: { ...(back === undefined ? {} : { mates: back }), pins: mapValues(others) },
    },
  }))

const mapValues = (pins: Record<string, { readonly [key: string]: string | undefined }>): Record<string, MadePin> =>
  Object.fromEntries(Object.entries(pins).map(([key, pin]) => [key, withoutUndefined(pin)]))

/** The same with only what is said. */
function withoutUndefined<T extends object>(said: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(said).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>
  }
}
