import type { Quantity } from '../quantities/quantity.ts'
import { quantityAt } from '../record/lookups.ts'
import type { AsBuiltRecord, Held, Part, Thing } from '../record/record.ts'

/** A length of the record in millimetres, and the words that state it. */
export interface Known {
  readonly mm: number
  readonly held: Held<Quantity>
}

/** A part with its mass and its distance behind the front axle. */
export interface Weight {
  readonly part: string
  readonly name: string
  readonly kg: number
  readonly atMm: number
}

/** What a side view can be drawn from. Wheelbase, overhangs and the wheels' radius must be there; the rest is drawn where it is. */
export interface SideFigures {
  readonly wheelbase: Known
  readonly front: Known
  readonly rear: Known
  readonly radiusMm: number
  readonly belly: Known | null
  readonly frontClearance: Known | null
  readonly rearClearance: Known | null
  readonly tank: {
    readonly name: string
    readonly atMm: number
    readonly lengthMm: number
    readonly heightMm: number
    readonly clearance: Known
  } | null
  readonly lamps: readonly {
    readonly id: string
    readonly isFront: boolean
    readonly topMm: number
    readonly bottomMm: number
  }[]
  /** Parts on the vehicle by mass, each at its distance behind the front axle. */
  readonly weights: readonly Weight[]
  readonly loads: readonly { readonly isFront: boolean; readonly held: Held<Quantity> }[]
}

/** Finds them; null where they do not suffice. */
export function sideFigures(record: AsBuiltRecord): SideFigures | null {
  const wholes = [record.vehicle, ...fitted(record, ['chassis', 'hull', 'body'])]
  const of = (key: string): Known | null => first(wholes, key)
  const [wheelbase, front, rear, radiusMm] = [
    of('wheelbase'),
    of('front-overhang'),
    of('rear-overhang'),
    wheelRadius(record),
  ]
  if (wheelbase === null || front === null || rear === null || radiusMm === null) return null
  return {
    wheelbase,
    front,
    rear,
    radiusMm,
    belly: of('belly-clearance'),
    frontClearance: of('front-clearance'),
    rearClearance: of('rear-clearance'),
    tank: tankOf(record),
    lamps: lampsOf(record),
    weights: weightsOf(record),
    loads: loadsOf(record),
  }
}

function fitted(record: AsBuiltRecord, kinds: readonly string[]): Part[] {
  return record.parts.filter(part => part.onVehicle && part.partKind !== null && kinds.includes(part.partKind))
}

function first(things: readonly Pick<Thing, 'properties'>[], key: string): Known | null {
  for (const thing of things) {
    const held = quantityAt(thing, key)
    const si = held?.value.si ?? null
    if (held !== null && si !== null && held.value.dimension === 'length') return { mm: si * 1000, held }
  }
  return null
}

/** A tyre's radius as written, else from how far one turn rolls. */
function wheelRadius(record: AsBuiltRecord): number | null {
  const tyres = fitted(record, ['tyre', 'wheel'])
  const radius = first(tyres, 'radius')
  const turn = first(tyres, 'rolling-circumference')
  return radius?.mm ?? (turn === null ? null : turn.mm / (2 * Math.PI))
}

function tankOf(record: AsBuiltRecord): SideFigures['tank'] {
  for (const tank of fitted(record, ['tank'])) {
    const along = liesAcross(record, tank.id) ? 'width' : 'length'
    const [at, length, height, clearance] = ['at', along, 'height', 'ground-clearance'].map(key => first([tank], key))
    if (at && length && height && clearance)
      return { name: tank.name, atMm: at.mm, lengthMm: length.mm, heightMm: height.mm, clearance }
  }
  return null
}

/** Whether the note beside its length says that it was measured across the vehicle. */
function liesAcross(record: AsBuiltRecord, part: string): boolean {
  const length = record.measurements.findLast(({ subject, property }) => subject.id === part && property === 'length')
  return /\bacross\b/i.test(length?.note ?? '')
}

const frontWords = /dipped|main beam|front|daytime/
const rearWords = /rear|stop|reversing|plate/

/** Lamps whose function says at which end they are. */
function lampsOf(record: AsBuiltRecord): SideFigures['lamps'] {
  return fitted(record, ['lamp']).flatMap(lamp => {
    const [top, bottom] = [first([lamp], 'height-top'), first([lamp], 'height-bottom')]
    const held = lamp.properties.function?.at(-1)
    const said = held?.value.type === 'words' ? held.value.words.text : ''
    if (top === null || bottom === null || (!frontWords.test(said) && !rearWords.test(said))) return []
    return [
      {
        id: lamp.id,
        isFront: frontWords.test(said) && !rearWords.test(said.replace(/front[^,]*/g, '')),
        topMm: top.mm,
        bottomMm: bottom.mm,
      },
    ]
  })
}

/** What stands on each axle, where it was weighed. An axle without `at` of its own is told by its name. */
function loadsOf(record: AsBuiltRecord): SideFigures['loads'] {
  return fitted(record, ['axle']).flatMap(axle => {
    const held = quantityAt(axle, 'load')
    const at = first([axle], 'at')
    if (held === null) return []
    const isFront = at === null ? /front/.test(axle.id) : at.mm < 500 // mm behind the front axle
    return isFront || at !== null || /rear|back/.test(axle.id) ? [{ isFront, held }] : []
  })
}

function weightsOf(record: AsBuiltRecord): Weight[] {
  const all = record.parts.flatMap((part): Weight[] => {
    const [mass, at] = [quantityAt(part, 'mass')?.value.si ?? null, first([part], 'at')]
    const kg = mass === null ? 0 : mass * Number(part.qty)
    return !part.onVehicle || kg <= 0 || at === null ? [] : [{ part: part.id, name: part.name, kg, atMm: at.mm }]
  })
  return all.sort((a, b) => b.kg - a.kg || a.atMm - b.atMm)
}
