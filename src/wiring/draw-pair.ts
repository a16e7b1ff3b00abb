import { wrap } from './lettering.ts'
import type { Pair, PairRow, PinWire } from './pair-connectors.ts'
import {
  type DrawingLinks,
  drawing,
  leading,
  letters,
  type Point,
  rectangle,
  stroke,
  type WiringDrawing,
  wire,
} from './svg.ts'
import { wireWords } from './wire-words.ts'

const wireLength = 240
const half = 58 // width of one half's box
const gapBetween = 40
const margin = 8
const lineHeight = 17
const leftBox = margin + wireLength
const rightBox = leftBox + half + gapBetween
const width = rightBox + half + wireLength + margin

/** Two halves of a connector way against way, or one half alone: what goes in on the left, what comes out on the right. */
export function drawPair(pair: Pair, links: DrawingLinks): WiringDrawing {
  const { left, right } = pair
  const title = right === null ? `${left.name}, without a mate` : `${left.name} and ${right.name}, way against way`
  const heads = [wrap(left.name, leftBox + half - margin), wrap(right?.name ?? '', width - rightBox - margin)]
  const top = Math.max(...heads.map(lines => lines.length)) * lineHeight + 14
  const rows = placeRows(pair.rows, top)
  const bottom = rows.at(-1)?.bottom ?? top
  const says = [...pair.rows.map(rowSentence), ...pair.doubts]
  return drawing({ width, height: bottom + 10, look: 'wd-pair', title, says }, [
    ...heads.flatMap((lines, index) =>
      lines.map((text, line) =>
        letters('head', { x: index === 0 ? margin : rightBox, y: 16 + line * lineHeight }, text),
      ),
    ),
    rectangle('out plate half', { x: leftBox, y: top }, { width: half, height: bottom - top }),
    ...(right === null
      ? []
      : [rectangle('out plate half', { x: rightBox, y: top }, { width: half, height: bottom - top })]),
    ...rows.flatMap(placed => drawRow(placed, links)),
  ])
}

interface PlacedRow {
  readonly row: PairRow
  readonly top: number
  readonly middle: number
  readonly bottom: number
  readonly above: readonly [readonly string[], readonly string[]]
  readonly below: readonly [readonly string[], readonly string[]]
}

function placeRows(rows: readonly PairRow[], start: number): PlacedRow[] {
  let top = start
  return rows.map(row => {
    const lines = (text: string): string[] => (text === '' ? [] : wrap(text, wireLength - 12))
    const above = [lines(wireText(row.left)), lines(wireText(row.right))] as const
    const below = [lines(goesText(row.left)), lines(goesText(row.right))] as const
    const ways = Math.max(wrap(row.leftWay ?? '', half - 8).length, wrap(row.rightWay ?? '', half - 8).length)
    const middle = top + Math.max(ways / 2, 1, ...above.map(({ length }) => length)) * lineHeight + 12
    const bottom = middle + Math.max(ways / 2, 1, ...below.map(({ length }) => length)) * lineHeight + 10
    const placed = { row, top, middle, bottom, above, below }
    top = bottom
    return placed
  })
}

const wireText = (pin: PinWire | null): string => (pin === null ? '' : wireWords(pin))
const goesText = (pin: PinWire | null): string =>
  pin === null ? '' : [pin.carries, pin.to].filter(text => text !== null).join(' · ')

function drawRow({ row, top, middle, bottom, above, below }: PlacedRow, links: DrawingLinks): string[] {
  return [
    stroke('thin', `M${leftBox} ${bottom}h${half}`),
    ...(row.rightWay === null && row.right === null ? [] : [stroke('thin', `M${rightBox} ${bottom}h${half}`)]),
    ...side(row.left, { x: margin, from: margin, to: leftBox, middle, above: above[0], below: below[0], links }),
    ...side(row.right, {
      x: rightBox + half + 12,
      from: rightBox + half,
      to: width - margin,
      middle,
      above: above[1],
      below: below[1],
      links,
    }),
    ...wayName(row.leftWay, { x: leftBox + half / 2, y: middle }),
    ...wayName(row.rightWay, { x: rightBox + half / 2, y: middle }),
    ...joint(row, { top, middle }),
  ]
}

function wayName(way: string | null, { x, y }: Point): string[] {
  const lines = way === null ? [] : wrap(way, half - 8)
  return lines.map((text, index) =>
    letters('mid way', { x, y: y + 5 + (index - (lines.length - 1) / 2) * lineHeight }, text),
  )
}

interface Side {
  readonly x: number
  readonly from: number
  readonly to: number
  readonly middle: number
  readonly above: readonly string[]
  readonly below: readonly string[]
  readonly links: DrawingLinks
}

function side(pin: PinWire | null, { x, from, to, middle, above, below, links }: Side): string[] {
  if (pin === null) return []
  const href = pin.circuit === null ? links.connector(pin.connector) : links.circuit(pin.circuit)
  const said = `${pin.number}, ${[wireWords(pin), pin.carries, pin.to].filter(text => text !== null).join(', ')}`
  return [
    leading(
      href,
      said,
      ...above.map((text, index) =>
        letters('wl', { x, y: middle - 10 - (above.length - 1 - index) * lineHeight }, text),
      ),
      wire(
        [
          { x: from, y: middle },
          { x: to, y: middle },
        ],
        pin.look,
      ),
      ...below.map((text, index) => letters('sm', { x, y: middle + 21 + index * lineHeight }, text)),
    ),
  ]
}

/** Two arrowheads where a way meets its mate; a bar across where it meets nothing. */
function joint(
  { state, leftWay, rightWay, left, right }: PairRow,
  { middle }: { top: number; middle: number },
): string[] {
  const [from, to] = [leftBox + half, rightBox]
  if (state === 'mated' || state === 'doubled') {
    const centre = (from + to) / 2
    const mark = stroke(
      'out',
      `M${from} ${middle}H${centre - 2}M${centre - 9} ${middle - 7}l7 7-7 7M${centre} ${middle - 7}l7 7-7 7M${centre + 7} ${middle}H${to}`,
    )
    return state === 'mated' ? [mark] : [mark, letters('mid flag', { x: centre, y: middle - 12 }, 'doubled')]
  }
  if (state === 'no wire') return []
  return [
    ...(leftWay === null || left === null ? [] : [stroke('out', `M${from} ${middle}h8m0-7v14`)]),
    ...(rightWay === null || right === null ? [] : [stroke('out', `M${to} ${middle}h-8m0-7v14`)]),
    letters('mid flag', { x: (from + to) / 2, y: middle - 12 }, 'open'),
  ]
}

/** What meets what at one way, in words. */
function rowSentence({ left, right, leftWay, rightWay, state, doubt }: PairRow): string {
  const said = (pin: PinWire | null, way: string | null): string =>
    pin === null
      ? `way ${way ?? '?'}, no wire`
      : `way ${pin.pin}, ${[wireWords(pin), pin.carries, pin.to].filter(text => text !== null).join(', ')}`
  const more = `${state === 'doubled' ? '; doubled' : ''}${doubt === null ? '' : `; ${doubt}`}.`
  if (state === 'no wire') return `Way ${leftWay ?? rightWay ?? '?'}: no wire on either side.`
  if (left === null) return `Nothing meets ${said(right, rightWay)}${more}`
  if (right === null)
    return `Way ${left.pin} meets ${rightWay === null ? 'nothing' : said(null, rightWay)}: ${said(left, leftWay).replace(/^way [^,]*, /, '')}${more}`
  return `${said(left, leftWay).replace('way', 'Way')} meets ${said(right, rightWay)}${more}`
}
