import type { FactValue, PlacedShape } from '../facts/fact.ts'
import { wordsAt } from '../record/lookups.ts'
import type { AsBuiltRecord, Connector, FuseBox, Held, Thing, Volume } from '../record/record.ts'
import { figureUrl } from './addresses.ts'
import { figureRow, placeRow } from './figure-row.ts'

type Row = Record<string, unknown>

/** A circuit as in the note: nested as written, figures as measurements are, words as words. */
export function circuitRow(circuit: Thing): Row {
  const row: Row = { id: circuit.id, name: circuit.name, ...nested(circuit.properties) }
  return { ...row, state: row.state ?? 'live', ...placeRow(circuit.first, null) }
}

export function connectorRow(connector: Connector): Row {
  return {
    id: connector.id,
    name: connector.name,
    mates: connector.mates,
    ...nested(withoutPins(connector.properties)),
    pins: connector.pins.map(pin => ({ pin: pin.pin, ...nested(pin.properties), ...placeRow(pin.place, null) })),
  }
}

export function loomRow(record: AsBuiltRecord, loom: Thing): Row {
  const members = record.circuits
    .filter(circuit => wordsAt(circuit, 'loom')?.value.text === loom.id)
    .map(({ id }) => id)
  return { id: loom.id, name: loom.name, ...nested(loom.properties), circuits: members, ...placeRow(loom.first, null) }
}

export function earthPointRow(record: AsBuiltRecord, point: Thing): Row {
  const ends = record.circuits.filter(circuit => wordsAt(circuit, 'earth')?.value.text === point.id).map(({ id }) => id)
  return { id: point.id, name: point.name, ...nested(point.properties), circuits: ends, ...placeRow(point.first, null) }
}

export function fuseBoxRow(record: AsBuiltRecord, box: FuseBox): Row {
  const part = record.parts.find(({ id }) => id === box.id)
  return {
    id: box.id,
    name: part?.name ?? box.id,
    ways: box.ways,
    used: box.used.map(({ way, circuits }) => ({ way, circuits })),
  }
}

export function volumeRow(volume: Volume): Row {
  return {
    part: volume.part,
    outside: volume.outside === null ? null : shapeRow(volume.outside),
    wall:
      volume.wall === null
        ? null
        : {
            ...figureRow(volume.wall.value),
            ...placeRow(volume.wall.place, figureUrl(volume.wall.session, volume.wall.figure)),
          },
    less: volume.less.map(shapeRow),
  }
}

function shapeRow(held: NonNullable<Volume['outside']>): Row {
  const { text, shape, figures } = held.value
  return {
    text,
    form: shape.form,
    ...sizes(shape),
    ...placeRow(held.place, figureUrl(held.session, figures[0] ?? null)),
  }
}

function sizes(shape: PlacedShape['shape']): Row {
  switch (shape.form) {
    case 'box':
      return { length: figureRow(shape.length), width: figureRow(shape.width), height: figureRow(shape.height) }
    case 'cylinder':
      return { diameter: figureRow(shape.diameter), length: figureRow(shape.length) }
    case 'prism':
      return { corners: shape.corners.map(corner => corner.map(figureRow)), length: figureRow(shape.length) }
  }
}

/** `fuse.rating` and its like become `{ fuse: { rating } }`. */
function nested(properties: Readonly<Record<string, readonly Held<FactValue>[]>>): Row {
  const row: Row = {}
  for (const [key, history] of Object.entries(properties)) {
    const held = history.at(-1)
    if (held === undefined || held.value.type === 'nothing') continue
    place(row, key.split('.'), printed(held))
  }
  return row
}

function place(row: Row, path: readonly string[], value: unknown): void {
  const [first, ...rest] = path
  if (first === undefined) return
  if (rest.length === 0) {
    const there = row[first]
    row[first] = isRow(there) && !isRow(value) ? { ...there, is: value } : value
    return
  }
  const inner = isRow(row[first]) ? row[first] : row[first] === undefined ? {} : { is: row[first] }
  row[first] = inner
  place(inner, rest, value)
}

const isRow = (value: unknown): value is Row => typeof value === 'object' && value !== null && !Array.isArray(value)

function printed(held: Held<FactValue>): unknown {
  const { value } = held
  if (value.type === 'quantity')
    return { ...figureRow(value.quantity), ...placeRow(held.place, figureUrl(held.session, held.figure)) }
  if (value.type === 'words') return value.words.text
  if (value.type === 'list') return value.entries.map(({ words }) => words.text)
  return null
}

const withoutPins = (properties: Thing['properties']): Thing['properties'] =>
  Object.fromEntries(Object.entries(properties).filter(([key]) => !key.startsWith('pins.') && key !== 'mates'))
