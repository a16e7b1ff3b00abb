import { placeKeys } from './figure-schemas.ts'
import {
  closed,
  figure,
  flag,
  listOf,
  named,
  number,
  oneOf,
  open,
  orNull,
  type Schema,
  text,
  told,
  words,
} from './schema-makers.ts'

const actions = [
  'ordered',
  'received',
  'made',
  'modified',
  'trial-fitted',
  'fitted',
  'removed',
  'rejected',
  'returned',
  'sold',
  'scrapped',
]

const shapeKeys = { text, form: oneOf('box', 'cylinder', 'prism'), ...placeKeys }
const size = named('bareFigure')

const event = closed({
  session: words,
  action: oneOf(...actions),
  fits: oneOf('yes', 'no', 'with-work', null),
  cost: orNull(named('amount')),
  why: words,
  file: text,
  line: { type: 'integer', minimum: 1 },
})

/** Things of the vehicle. Where an edition withholds cost, `cost` is null. */
export const thingDefinitions: Record<string, Schema> = {
  session: closed({
    id: text,
    number: { type: 'integer', minimum: 1 },
    date: told('ISO 8601; empty where the note has none that exists', text),
    title: text,
    by: told('Who wrote the note, as written', words),
    hours: figure,
    file: text,
    url: text,
  }),
  part: closed({
    id: text,
    name: text,
    kind: words,
    system: words,
    state: oneOf(...actions),
    onVehicle: flag,
    qty: number,
    from: words,
    cost: told('Of one, as written last', orNull(named('amount'))),
    replaces: words,
    replacedBy: words,
    history: listOf(event),
  }),
  circuit: open({ id: text, name: text, state: text, ...placeKeys }, named('said')),
  connector: open(
    {
      id: text,
      name: text,
      mates: words,
      pins: listOf(open({ pin: text, ...placeKeys }, named('said'))),
    },
    named('said'),
  ),
  runOfCircuits: open({ id: text, name: text, circuits: listOf(text), ...placeKeys }, named('said')),
  fuseBox: closed({
    id: text,
    name: text,
    ways: figure,
    used: listOf(closed({ way: text, circuits: listOf(text) })),
  }),
  shape: {
    anyOf: [
      closed({ ...shapeKeys, length: size, width: size, height: size }, { url: text }),
      closed({ ...shapeKeys, diameter: size, length: size }, { url: text }),
      closed(
        {
          ...shapeKeys,
          corners: listOf({ type: 'array', prefixItems: [size, size], items: false, minItems: 2 }),
          length: size,
        },
        { url: text },
      ),
    ],
  },
  volume: closed({
    part: text,
    outside: orNull(named('shape')),
    wall: orNull(named('placedFigure')),
    less: listOf(named('shape')),
  }),
}
