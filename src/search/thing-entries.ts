import type { FactValue, Words } from '../facts/fact.ts'
import type { AsBuiltRecord, Connector, Held, Part, Pin, Thing } from '../record/record.ts'
import { type Desk, type Entry, inWords } from './entry.ts'
import { linkedThing } from './linked-thing.ts'
import type { HitKind } from './search-index.ts'

/** Parts, circuits, connectors with their pins, and every other thing that the notes declare. */
export function thingEntries(desk: Desk): Entry[] {
  const { parts, circuits, connectors, looms, donors, systems, earthPoints } = desk.record
  return [
    ...parts.map(part =>
      entryOf(desk, part, { kind: 'part', words: partWords(part), last: part.events.at(-1) ?? null }),
    ),
    ...circuits.map(circuit =>
      entryOf(desk, circuit, { kind: 'circuit', words: standingWords(circuit.properties), last: null }),
    ),
    ...connectors.flatMap(connector => connectorEntries(desk, connector)),
    ...[...looms, ...donors, ...systems, ...earthPoints].map(thing =>
      entryOf(desk, thing, {
        kind: 'text',
        words: [inWords(thing.kind), ...standingWords(thing.properties)],
        last: null,
      }),
    ),
  ]
}

interface Telling {
  readonly kind: HitKind
  readonly words: readonly string[]
  /** Where it was said last, if not where it was first. */
  readonly last: Pick<Held<unknown>, 'place' | 'session'> | null
}

function entryOf(desk: Desk, thing: Thing, { kind, words, last }: Telling): Entry {
  const linked = linkedThing(desk, thing)
  const place = last?.place ?? thing.first
  return {
    kind,
    path: thing.kind === 'part' ? thing.id : `${thing.kind}:${thing.id}`,
    label: { text: thing.name, also: '' },
    name: inWords(thing.id),
    said: { text: words.join(', '), also: inWords(thing.kind) },
    mark: null,
    place,
    session: last?.session ?? sessionOf(desk.record, place.file),
    address: linked.address,
    anchor: '',
    thing: linked,
    figure: null,
    isAside: false,
  }
}

const sessionOf = (record: AsBuiltRecord, file: string): string | null =>
  record.sessions.find(session => session.file === file)?.id ?? null

const happened: Readonly<Record<string, string>> = { 'with-work': 'fits with work', no: 'does not fit', yes: 'fits' }

function partWords(part: Part): string[] {
  const fits = part.events.at(-1)?.fits ?? null
  return [
    inWords(part.state),
    ...(fits === null ? [] : [happened[fits] ?? '']),
    ...(part.partKind === null ? [] : [inWords(part.partKind)]),
    ...(part.from === null ? [] : [`from ${said(part.from.value)}`]),
    ...standingWords(part.properties, new Set(['kind', 'system', 'from', 'name', 'photos', 'receipt'])),
  ]
}

/** What stands of each property in words, `feeds lift pump`; figures, pins and pictures are found by themselves. */
function standingWords(properties: Thing['properties'], not: ReadonlySet<string> = new Set()): string[] {
  return Object.entries(properties).flatMap(([key, history]) => {
    const words = valueWords(history.at(-1)?.value)
    return words === '' || not.has(key) || key.startsWith('pins.') ? [] : [`${inWords(key)} ${words}`]
  })
}

function valueWords(value: FactValue | undefined): string {
  switch (value?.type) {
    case 'words':
      return said(value.words)
    case 'list':
      return value.entries.map(({ words }) => said(words)).join(', ')
    default:
      return ''
  }
}

const said = ({ text }: Words): string => text.replace(/\s+/gu, ' ').trim()

function connectorEntries(desk: Desk, connector: Connector): Entry[] {
  const mates = connector.mates === null ? [] : [`mates ${inWords(connector.mates)}`]
  const whole = entryOf(desk, connector, {
    kind: 'connector',
    words: [...mates, ...standingWords(connector.properties, new Set(['mates', 'name']))],
    last: null,
  })
  return [whole, ...connector.pins.map(pin => pinEntry(whole, pin))]
}

function pinEntry(whole: Entry, { pin, place, session, properties }: Pin): Entry {
  return {
    ...whole,
    path: `${whole.path}/${pin}`,
    label: { text: `${whole.label?.text}: pin ${pin}`, also: '' },
    name: `${whole.name} ${pin}`,
    said: { text: standingWords(properties).join(', '), also: '' },
    place,
    session,
  }
}
