import { waySentence } from './draw-fuse-box.ts'
import type { FuseBoxSheet, FuseWay } from './fuse-ways.ts'
import { widthOf, wrap } from './lettering.ts'
import { drawing, letters, rectangle, stroke, type WiringDrawing } from './svg.ts'

const cardWidth = 380 // drawn at 100 mm on paper
const cell = cardWidth / 2
const lineHeight = 15
const small = 13 // size of the names' lettering
const longestWay = 60 // width of a way's name before it is broken

/** The card for the lid: way, rating, what it feeds, two columns, to be cut out and put in. */
export function drawLidCard(box: FuseBoxSheet): WiringDrawing {
  const nameWidth = Math.min(longestWay, Math.max(14, ...box.ways.map(({ way }) => widthOf(way))))
  const cells = box.ways.map(way => cellOf(way, nameWidth))
  const rows = Math.ceil(cells.length / 2)
  const head = wrap(box.name, cardWidth - 20)
  const top = head.length * 17 + 14
  const tops = [top]
  for (let row = 0; row < rows; row += 1)
    tops.push((tops[row] ?? top) + Math.max(cells[row]?.lines ?? 1, cells[row + rows]?.lines ?? 1) * lineHeight + 14)
  const bottom = tops[rows] ?? top
  const at = (index: number) => ({ x: index < rows ? 0 : cell, y: tops[index % rows] ?? top })
  const title = `${box.name}, card for the lid`
  return drawing(
    { width: cardWidth + 2, height: bottom + 2, look: 'wd-card', title, says: box.ways.map(waySentence) },
    [
      rectangle('out plate', { x: 1, y: 1 }, { width: cardWidth, height: bottom }),
      ...head.map((text, index) => letters('head', { x: 10, y: 20 + index * 17 }, text)),
      ...tops.slice(0, rows).map(y => stroke('thin', `M1 ${y}H${cardWidth + 1}`)),
      stroke('thin', `M${cell} ${top}V${bottom + 1}`),
      ...cells.flatMap((one, index) => drawCell(one, { ...at(index), nameWidth })),
    ],
  )
}

/** One way of the card, broken into lines. */
interface Cell {
  readonly way: readonly string[]
  readonly rating: readonly string[]
  readonly names: readonly string[]
  readonly lines: number
}

const ratingWidth = 34

function cellOf({ way, ratings, circuits }: FuseWay, nameWidth: number): Cell {
  const names =
    circuits.length === 0
      ? ['spare']
      : circuits.flatMap(({ name }) => wrap(name, cell - nameWidth - ratingWidth - 32, small))
  const cut = {
    way: wrap(way, nameWidth),
    rating: ratings.flatMap(text => wrap(text.replace(/ A$/, ''), ratingWidth)),
    names,
  }
  return { ...cut, lines: Math.max(cut.way.length, cut.rating.length, names.length) }
}

function drawCell(
  { way, rating, names }: Cell,
  { x, y, nameWidth }: { x: number; y: number; nameWidth: number },
): string[] {
  const column = (look: string, left: number, lines: readonly string[]): string[] =>
    lines.map((text, index) => letters(look, { x: x + left, y: y + 19 + index * lineHeight }, text))
  const second = 10 + nameWidth + 8
  return [
    ...column('way', 10, way),
    ...column('rating', second, rating),
    ...column('sm', second + ratingWidth + 6, names),
  ]
}
