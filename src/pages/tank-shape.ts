import type { PlacedShape, Shape } from '../facts/fact.ts'
import type { Quantity } from '../quantities/quantity.ts'
import { findUnit } from '../quantities/units.ts'
import { quantityAt } from '../record/lookups.ts'
import type { AsBuiltRecord, Held, Part, Volume } from '../record/record.ts'

/** A corner of an outline in millimetres, y up. */
export type Corner = readonly [x: number, y: number]

/** A side in millimetres, and the figure that states it; null: it was worked out. */
export interface TankSide {
  readonly mm: number
  readonly held: Held<Quantity> | null
}

/** What a view of a tank shows: how large it is, its outline, and how high its floor stands inside. */
export interface TankShape {
  readonly form: Shape['form']
  /** Across the front view, as written of a box its length. */
  readonly length: TankSide
  /** Across the side view; of a cylinder its diameter. */
  readonly width: TankSide
  readonly height: TankSide
  /** Seen from the front and from the side, the floor at y = 0; null: a circle of the height. */
  readonly front: readonly Corner[] | null
  readonly side: readonly Corner[] | null
  readonly wallMm: number
}

/** Something that is taken off the volume, as it is written; where it stands is not. */
export interface CutOut {
  readonly text: string
  /** Seen from above, in millimetres. */
  readonly acrossMm: number
  readonly deepMm: number
  readonly held: Held<PlacedShape>
}

/** The outside of a tank in millimetres; null where a side of it is not in the record. */
export function tankShape(record: AsBuiltRecord, part: Part): TankShape | null {
  const volume = record.volumes.find(one => one.part === part.id)
  const wallMm = ((volume?.wall ?? quantityAt(part, 'wall'))?.value.si ?? 0) * 1000
  const outside = volume?.outside ?? null
  return outside === null ? boxOfSides(part, wallMm) : fromShape(outside, wallMm)
}

function boxOfSides(part: Part, wallMm: number): TankShape | null {
  const [length, width, height] = ['length', 'width', 'height'].map(key => {
    const held = quantityAt(part, key)
    return held === null ? null : known(held.value, held)
  })
  return length && width && height ? box({ length, width, height }, wallMm) : null
}

function fromShape(held: Held<PlacedShape>, wallMm: number): TankShape | null {
  const { shape, figures } = held.value
  const at = (quantity: Quantity, index: number): TankSide | null =>
    known(quantity, { ...held, figure: figures[index] ?? held.figure })
  if (shape.form === 'box') {
    const [length, width, height] = [at(shape.length, 0), at(shape.width, 1), at(shape.height, 2)]
    return length && width && height ? box({ length, width, height }, wallMm) : null
  }
  if (shape.form === 'cylinder') {
    const [across, length] = [at(shape.diameter, 0), at(shape.length, 1)]
    return across && length
      ? {
          form: 'cylinder',
          length,
          width: across,
          height: across,
          front: rectangle(length.mm, across.mm),
          side: null,
          wallMm,
        }
      : null
  }
  return prism(shape, held, wallMm)
}

/** A prism: its outline upright, seen from the front, and its length away from who looks. */
function prism(shape: Extract<Shape, { form: 'prism' }>, held: Held<PlacedShape>, wallMm: number): TankShape | null {
  const corners = shape.corners.map(([x, y]): Corner => [(x.si ?? 0) * 1000, (y.si ?? 0) * 1000])
  const depth = known(shape.length, { ...held, figure: held.value.figures.at(-1) ?? held.figure })
  if (depth === null) return null
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)]
  const [left, floor] = [Math.min(...xs), Math.min(...ys)]
  const extent = (mm: number): TankSide => ({ mm, held: null })
  const [length, height] = [extent(Math.max(...xs) - left), extent(Math.max(...ys) - floor)]
  const front = corners.map(([x, y]): Corner => [x - left, y - floor])
  return { form: 'prism', length, width: depth, height, front, side: rectangle(depth.mm, height.mm), wallMm }
}

function box(sides: { length: TankSide; width: TankSide; height: TankSide }, wallMm: number): TankShape {
  const { length, width, height } = sides
  return { form: 'box', ...sides, front: rectangle(length.mm, height.mm), side: rectangle(width.mm, height.mm), wallMm }
}

/** The outline of a rectangle. */
export const rectangle = (across: number, up: number): Corner[] => [
  [0, 0],
  [across, 0],
  [across, up],
  [0, up],
]

/** A length with its unit, which in a shape may stand at the last figure only. */
function known(value: Quantity, at: Pick<Held<unknown>, 'place' | 'session' | 'figure'>): TankSide | null {
  if (value.si === null || value.dimension !== 'length') return null
  const symbol = findUnit(value.unit)?.symbol ?? value.unit
  const text = value.text.replace(/^([\d.,\s]*\d)$/, `$1 ${symbol}`)
  const { place, session, figure } = at
  return { mm: value.si * 1000, held: { value: { ...value, text }, place, session, figure } }
}

/** What is taken off a tank, each as wide and as deep as it is written. */
export function cutOuts(volume: Volume | undefined): CutOut[] {
  return (volume?.less ?? []).map(held => {
    const { shape, text } = held.value
    const [across, deep] = seenFromAbove(shape)
    return { text, acrossMm: across, deepMm: deep, held }
  })
}

function seenFromAbove(shape: Shape): readonly [number, number] {
  const mm = (quantity: Quantity): number => (quantity.si ?? 0) * 1000
  if (shape.form === 'box') return [mm(shape.length), mm(shape.width)]
  if (shape.form === 'cylinder') return [mm(shape.length), mm(shape.diameter)]
  const xs = shape.corners.map(([x]) => mm(x))
  return [Math.max(...xs) - Math.min(...xs), mm(shape.length)]
}
