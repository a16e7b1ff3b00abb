import type { Shape } from '../../facts/fact.ts'
import type { Volume } from '../../record/record.ts'
import { nonsenseOf } from '../sense.ts'
import type { Leaf, Term } from '../term.ts'
import { workOut } from '../term.ts'
import { insetOutline } from './outline-below.ts'
import { type FoundShape, figuresOf } from './shape-volume.ts'

type Point = readonly [x: number, y: number]

/** Why a shape as written can hold nothing, in words; null where it can. `wall` is taken off on every side. */
export function troubleOfShape(found: FoundShape, wall: Term | null): string | null {
  const figures = Object.values(figuresOf(found.held.value.shape, found)).flat() as Leaf[]
  const isCorner = ({ symbol }: Leaf): boolean => /^[xy](_|$)/.test(symbol)
  for (const leaf of figures) {
    const trouble = nonsenseOf(leaf, isCorner(leaf) ? 'any' : 'more')
    if (trouble !== null) return `the ${leaf.meaning} ${trouble}`
  }
  return found.held.value.shape.form === 'prism' ? troubleOfOutline(found, wall) : null
}

function troubleOfOutline(found: FoundShape, wall: Term | null): string | null {
  const { text } = found.held.value
  const figures = figuresOf(found.held.value.shape, found)
  const [xs, ys] = [figures[`x${found.tag}`], figures[`y${found.tag}`]] as [Term[], Term[]]
  const corners = xs.flatMap((x, at) => (ys[at] === undefined ? [] : [{ x, y: ys[at] }]))
  const points = corners.map(({ x, y }): Point => [workOut(x), workOut(y)])
  if (sidesOf(points).some(([from, to]) => from[0] === to[0] && from[1] === to[1]))
    return `the outline of ${text} has the same corner twice in a row`
  if (crosses(points)) return `the outline of ${text} crosses itself, so it encloses no one area`
  if (wall === null) return null
  const inside = insetOutline(corners, wall, found.tag).map(({ x, y }): Point => [workOut(x), workOut(y)])
  return keepsItsSides(points, inside) && !crosses(inside) ? null : 'the wall as written leaves no inside'
}

const sidesOf = (points: readonly Point[]): (readonly [Point, Point])[] =>
  points.flatMap((from, at) => {
    const to = points[(at + 1) % points.length]
    return to === undefined ? [] : [[from, to] as const]
  })

/** On which side of a line a point lies: above zero to its left, zero on it. */
const turn = ([a, b]: readonly [Point, Point], c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])

/** Whether two sides that share no corner meet, or neighbours fold back onto each other. */
function crosses(points: readonly Point[]): boolean {
  const sides = sidesOf(points)
  return sides.some((one, at) =>
    sides.some((other, beside) => {
      if (beside <= at) return false
      const isNext = beside === at + 1 || (at === 0 && beside === sides.length - 1)
      return isNext ? foldsBack(one, other) : meets(one, other)
    }),
  )
}

function meets(one: readonly [Point, Point], other: readonly [Point, Point]): boolean {
  const [a, b] = [turn(one, other[0]), turn(one, other[1])]
  const [c, d] = [turn(other, one[0]), turn(other, one[1])]
  if (a === 0 && b === 0) return overlaps(one, other)
  return a * b <= 0 && c * d <= 0
}

const overlaps = (one: readonly [Point, Point], other: readonly [Point, Point]): boolean =>
  ([0, 1] as const).every(axis => {
    const [from, to] = [one, other].map(side => side.map(point => point[axis]))
    return Math.max(...(from ?? [])) >= Math.min(...(to ?? [])) && Math.max(...(to ?? [])) >= Math.min(...(from ?? []))
  })

/** A spike: of two sides that share a corner, the second runs back along the first. */
function foldsBack(one: readonly [Point, Point], other: readonly [Point, Point]): boolean {
  const [first, second] = one[1] === other[0] ? [one, other] : [other, one]
  const along = ([from, to]: readonly [Point, Point]): Point => [to[0] - from[0], to[1] - from[1]]
  const [a, b] = [along(first), along(second)]
  return turn(first, second[1]) === 0 && a[0] * b[0] + a[1] * b[1] < 0
}

/** A side that turned round when it was moved in was eaten by the wall. */
function keepsItsSides(before: readonly Point[], after: readonly Point[]): boolean {
  const moved = sidesOf(after)
  return sidesOf(before).every(([from, to], at) => {
    const [start, end] = moved[at] ?? [from, from]
    return (to[0] - from[0]) * (end[0] - start[0]) + (to[1] - from[1]) * (end[1] - start[1]) > 0
  })
}

/** Which cut-out is larger than the tank that it stands in, in words; null where none is. Sizes are compared largest with largest. */
export function tooLargeInside({ outside, less }: Volume, inner: number): string | null {
  if (outside === null) return null
  const room = extentsOf(outside.value.shape).map(size => size - 2 * inner)
  const large = less.find(({ value }) => extentsOf(value.shape).some((size, at) => size > (room[at] ?? 0) * (1 + 1e-9)))
  return large === undefined ? null : `${large.value.text} is larger than the tank that it stands in`
}

/** How far a shape reaches in its three directions, the largest first, in metres. */
function extentsOf(shape: Shape): number[] {
  const span = (values: readonly number[]): number => Math.max(...values) - Math.min(...values)
  const si = ({ si: size }: { readonly si: number | null }): number => size ?? 0
  const sizes =
    shape.form === 'box'
      ? [shape.length, shape.width, shape.height].map(si)
      : shape.form === 'cylinder'
        ? [si(shape.diameter), si(shape.diameter), si(shape.length)]
        : [span(shape.corners.map(([x]) => si(x))), span(shape.corners.map(([, y]) => si(y))), si(shape.length)]
  return sizes.sort((one, other) => other - one)
}
