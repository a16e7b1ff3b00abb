import { quantityAt } from '../record/lookups.ts'
import type { AsBuiltRecord, Thing } from '../record/record.ts'
import type { Circuit, Conductor, Fuse } from './circuit.ts'
import { doubtsOf } from './circuit-doubts.ts'
import { endTerminals, terminalOf } from './end-terminals.ts'
import { endName, listAt, partOf, textAt } from './standing.ts'
import { wireLook } from './wire-look.ts'

/** All circuits in the order of their wire numbers: the order in which the notes first name them, so that a later note moves none. */
export function listCircuits(record: AsBuiltRecord): Circuit[] {
  return inOrderOfNaming(record, record.circuits).map((thing, index) => readCircuit(record, thing, `W${index + 1}`))
}

/** Things in the order in which the notes first name them: build.md, then the sessions by date. */
export function inOrderOfNaming<T extends Pick<Thing, 'id' | 'first'>>(
  record: AsBuiltRecord,
  things: readonly T[],
): T[] {
  const numbers = new Map(record.sessions.map(({ file, number }) => [file, number]))
  const session = ({ first }: T): number => numbers.get(first.file) ?? 0
  return [...things].sort(
    (one, other) =>
      session(one) - session(other) ||
      one.first.line - other.first.line ||
      one.first.column - other.first.column ||
      (one.id < other.id ? -1 : 1),
  )
}

function readCircuit(record: AsBuiltRecord, thing: Thing, number: string): Circuit {
  const text = (key: string): string | null => textAt(thing, key)
  const feeds = text('feeds')
  const earth = text('earth')
  const route = listAt(thing, 'route').map(stop => endName(record, stop))
  const through = listAt(thing, 'through').map(id => {
    const part = partOf(record, id)
    return {
      id,
      name: part?.name ?? endName(record, id),
      partKind: part?.partKind ?? null,
      terminal: terminalOf(part),
    }
  })
  const whole = {
    id: thing.id,
    name: thing.name,
    number,
    state: text('state') ?? 'live',
    use: text('use'),
    duty: text('duty'),
    system: text('system'),
    supply: text('supply'),
    zone: text('zone'),
    feeds: feeds === null ? null : endName(record, feeds),
    part: partOf(record, feeds),
    load: quantityAt(thing, 'load'),
    fuse: fuseOf(thing),
    through,
    route,
    return: returnOf(thing),
    earth:
      earth === null ? null : { id: earth, name: record.earthPoints.find(({ id }) => id === earth)?.name ?? earth },
    loom: text('loom'),
    joints: quantityAt(thing, 'joints'),
  }
  const ends = endsOf(record, whole)
  const { from, to, earth: atEarth } = endTerminals(record, thing)
  const feed = conductor(thing, 'cable', {
    number,
    ...ends,
    loom: whole.loom,
    cutAt: through.map(({ name }) => name),
    terminals: { from, to },
  })
  const back =
    whole.return === 'cable'
      ? conductor(thing, 'return', {
          number: `${number}R`,
          from: ends.to,
          to: whole.earth?.name ?? 'battery, negative',
          loom: text('return.loom') ?? whole.loom,
          cutAt: [],
          terminals: { from: to, to: atEarth },
        })
      : null
  const circuit = { ...whole, feed, back }
  return { ...circuit, doubts: doubtsOf(record, circuit) }
}

function fuseOf(thing: Thing): Fuse | null {
  const [box, way, type] = ['fuse.box', 'fuse.way', 'fuse.type'].map(key => textAt(thing, key))
  const rating = quantityAt(thing, 'fuse.rating')
  if (box === null && way === null && rating === null) return null
  return { box: box ?? null, way: way ?? null, rating, type: type ?? null, after: quantityAt(thing, 'fuse.after') }
}

function returnOf(thing: Thing): Circuit['return'] {
  const word = textAt(thing, 'return')
  if (word === 'chassis') return 'chassis'
  const said = ['return.area', 'return.colour', 'return.length'].some(key => textAt(thing, key) !== null)
  return said || word !== null ? 'cable' : 'not written'
}

/** Where the run begins and ends: the box and its way, else the first stop, else the supply; the load. */
function endsOf(
  record: AsBuiltRecord,
  { fuse, route, supply, feeds, name }: Pick<Circuit, 'fuse' | 'route' | 'supply' | 'feeds' | 'name'>,
): { from: string; to: string } {
  const box = fuse?.box ?? null
  const way = fuse?.way ?? null
  const start =
    box === null
      ? (route[0] ?? supply ?? 'not written')
      : `${endName(record, box)}${way === null ? '' : `, way ${way}`}`
  return { from: start, to: feeds ?? route.at(-1) ?? name }
}

function conductor(
  thing: Thing,
  key: 'cable' | 'return',
  rest: Pick<Conductor, 'number' | 'from' | 'to' | 'loom' | 'cutAt' | 'terminals'>,
): Conductor {
  return {
    ...rest,
    circuit: thing.id,
    area: quantityAt(thing, `${key}.area`),
    look: wireLook(textAt(thing, `${key}.colour`)),
    length: quantityAt(thing, key === 'cable' ? 'length' : 'return.length'),
  }
}
