import type { Circuit } from './circuit.ts'
import type { FuseBoxSheet, FuseWay } from './fuse-ways.ts'
import { widthOf, wrap } from './lettering.ts'
import {
  type DrawingLinks,
  drawing,
  leading,
  letters,
  rectangle,
  stroke,
  tag,
  type WiringDrawing,
  wire,
} from './svg.ts'
import { wireWords } from './wire-words.ts'

const boxLeft = 8
const top = 10
const longestWay = 90 // width of a way's name before it is broken
const ratingWidth = 78
const wireLength = 90
const textWidth = 320
const lineHeight = 17

/** Where the columns of a box stand: its bar right of the ways' names, then the fuses, their ratings, the wires, their words. */
interface Columns {
  readonly way: number
  readonly rail: number
  readonly fuse: number
  readonly rating: number
  readonly right: number
  readonly text: number
}

/** A fuse box way by way: the bar that feeds it, each fuse, the wires that leave it. Wires of a shared way stay apart. */
export function drawFuseBox(box: FuseBoxSheet, links: DrawingLinks): WiringDrawing {
  const columns = columnsOf(box)
  const rows = placeWays(box.ways, columns)
  const bottom = rows.at(-1)?.bottom ?? top + 30
  const says = [...box.ways.map(waySentence), ...box.unplaced.map(({ name }) => `${name} names no way.`)]
  const sheet = {
    width: columns.text + textWidth + 8,
    height: bottom + 10,
    look: 'wd-fuses',
    title: `${box.name}, way by way`,
    says,
  }
  return drawing(sheet, [
    rectangle('out plate half', { x: boxLeft, y: top }, { width: columns.right - boxLeft, height: bottom - top }),
    stroke('rail', `M${columns.rail} ${top}V${bottom}`),
    ...rows.flatMap(row => drawWay(row, columns, links)),
  ])
}

function columnsOf({ ways }: FuseBoxSheet): Columns {
  const way = Math.min(longestWay, Math.max(14, ...ways.map(one => widthOf(one.way))))
  const rail = boxLeft + 8 + way + 10
  const rating = rail + 16 + 32 + 8
  const right = rating + ratingWidth
  return { way, rail, fuse: rail + 16, rating, right, text: right + wireLength + 12 }
}

interface PlacedWay {
  readonly way: FuseWay
  readonly names: readonly string[]
  readonly ratings: readonly string[]
  readonly middle: number
  readonly bottom: number
  readonly wires: readonly PlacedWire[]
}

interface PlacedWire {
  readonly circuit: Circuit
  readonly y: number
  readonly names: readonly string[]
  readonly words: readonly string[]
}

function placeWays(ways: readonly FuseWay[], columns: Columns): PlacedWay[] {
  let y = top
  return ways.map(way => {
    const names = wrap(way.way, columns.way)
    const ratings = ratingLines(way)
    const wires = placeWires(way.circuits, y + 10)
    const last = wires.at(-1)
    const end = last === undefined ? y : last.y - 9 + (last.names.length + last.words.length) * lineHeight + 8
    const bottom = Math.max(end, y + 40, y + (Math.max(names.length, ratings.length) + 1) * lineHeight)
    const placed = { way, names, ratings, middle: (y + bottom) / 2, bottom, wires }
    y = bottom
    return placed
  })
}

function placeWires(circuits: readonly Circuit[], start: number): PlacedWire[] {
  let y = start
  return circuits.map(circuit => {
    const names = wrap(`${circuit.name}${circuit.state === 'live' ? '' : `, ${circuit.state}`}`, textWidth)
    const words = wrap(`${circuit.number}, ${wireWords(circuit.feed)}`, textWidth)
    const placed = { circuit, y: y + 9, names, words }
    y += (names.length + words.length) * lineHeight + 8
    return placed
  })
}

/** The rating, and below it the colour of the fuse's body. */
function ratingLines({ ratings, colours, state }: FuseWay): string[] {
  if (state === 'spare') return ['spare']
  const said = ratings.length === 0 ? ['? A'] : [...ratings, ...colours].flatMap(text => wrap(text, ratingWidth - 6))
  return state === 'no such way' ? [...said, ...wrap('no such way', ratingWidth - 6)] : said
}

function drawWay(
  { way, names, ratings, middle, bottom, wires }: PlacedWay,
  columns: Columns,
  links: DrawingLinks,
): string[] {
  const column = (look: string, x: number, lines: readonly string[]): string[] =>
    lines.map((text, index) =>
      letters(look, { x, y: middle + 5 + (index - (lines.length - 1) / 2) * lineHeight }, text),
    )
  const look = way.state === 'spare' ? 'sm' : way.state === 'no such way' ? 'flag' : 'rating'
  return [
    stroke('thin', `M${boxLeft} ${bottom}H${columns.right}`),
    ...column('way', boxLeft + 8, names),
    ...(way.state === 'spare'
      ? []
      : [stroke('out', `M${columns.rail} ${middle}H${columns.fuse}`), fuse(columns.fuse, middle)]),
    ...column(look, columns.rating, ratings),
    ...wires.map(placed => drawOut(placed, columns, links)),
  ]
}

/** A wire out of the box, its circuit and its colours beside it. */
function drawOut({ circuit, y, names, words }: PlacedWire, columns: Columns, links: DrawingLinks): string {
  const column = (look: string, from: number, lines: readonly string[]): string[] =>
    lines.map((text, index) => letters(look, { x: columns.text, y: y + 5 + (from + index) * lineHeight }, text))
  return leading(
    links.circuit(circuit.id),
    `${circuit.number}, ${wireWords(circuit.feed)}, ${circuit.name}`,
    wire(
      [
        { x: columns.right, y },
        { x: columns.right + wireLength, y },
      ],
      circuit.feed.look,
    ),
    ...column('', 0, names),
    ...column('sm', names.length, words),
  )
}

function fuse(x: number, y: number): string {
  return tag(
    'g',
    { class: 'dev' },
    tag('rect', { class: 'out plate', x, y: y - 7, width: 32, height: 14 }),
    stroke('thin', `M${x} ${y}h32`),
  )
}

/** What is on a way, in words. */
export function waySentence({ way, circuits, ratings, colours, state }: FuseWay): string {
  if (circuits.length === 0) return `Way ${way}: spare.`
  const colour = colours.length === 0 ? '' : ` (${colours.join(' and ')})`
  const rating = ratings.length === 0 ? 'rating not written' : `${ratings.join(' and ')}${colour}`
  const names = circuits.map(({ name, number, feed }) => `${name} (${number}, ${wireWords(feed)})`).join('; ')
  return `Way ${way}: ${rating}, ${names}${state === 'no such way' ? '; the box has no such way' : ''}${state === 'shared' ? '; shared' : ''}.`
}
