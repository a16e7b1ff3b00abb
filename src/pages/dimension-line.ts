import { lettering, path, type Stroke, tenth } from './drawing.ts'

export interface DimensionText {
  readonly text: string
  /** Number in the balloon; null: worked out, the line is dash and dot. */
  readonly balloon: string | null
  readonly href: string | null
  readonly says: string
}

const head = 11 // length of an arrow head
const half = 3.5 // half of its width

/** A dimension between two uprights: extension lines from `from`, the line with its arrows at `y`, its figure above. */
export function lengthLine(at: { x1: number; x2: number; y: number; from: number }, text: DimensionText): Stroke {
  const [x1, x2, y] = [tenth(at.x1), tenth(at.x2), tenth(at.y)]
  const width = x2 - x1
  const isTight = width < 40
  const line = isTight ? `M${x1 - 24} ${y}H${x2 + 24}` : `M${x1} ${y}H${x2}`
  const middle = (x1 + x2) / 2
  const hasRoom = width > 150
  const spot = hasRoom ? middle + inkWidth(text.text) / 2 + 26 : isTight ? x2 + 36 : middle
  return link(text, [
    path('dim', `M${x1} ${at.from}V${tenth(y + 6)}M${x2} ${at.from}V${tenth(y + 6)}`),
    path(text.balloon === null ? 'dim worked' : 'dim', line),
    path(
      'arrow',
      arrowHeads(x1, x2, isTight)
        .map(([x, side]) => `M${x} ${y}l${side * head} -${half}v${2 * half}z`)
        .join(''),
    ),
    lettering('mid', { x: middle, y: y - (hasRoom || text.balloon === null ? 6 : 16) }, text.text),
    ...balloon(text, { x: spot, y }),
  ])
}

/** A height above the ground, with its figure beside it. */
export function heightLine(at: { x: number; y1: number; y2: number }, text: DimensionText): Stroke {
  const [x, y1, y2] = [tenth(at.x), tenth(at.y1), tenth(at.y2)]
  const isTight = y2 - y1 < 30
  const line = isTight ? `M${x} ${y1 - 20}V${y2 + 20}` : `M${x} ${y1}V${y2}`
  return link(text, [
    path('dim', `M${x - 9} ${y1}h18${line}`),
    path(
      'arrow',
      arrowHeads(y1, y2, isTight)
        .map(([y, side]) => `M${x} ${y}l-${half} ${side * head}h${2 * half}z`)
        .join(''),
    ),
    lettering('', { x: x + 9, y: (y1 + y2) / 2 + 5 }, text.text),
    ...balloon(text, { x: x + 9 + inkWidth(text.text) + 18, y: (y1 + y2) / 2 }),
  ])
}

/** Both ends with the way that their heads point: inwards, or outwards where there is no room inside. */
function arrowHeads(from: number, to: number, isTight: boolean): (readonly [number, number])[] {
  const side = isTight ? -1 : 1
  return [
    [from, side],
    [to, -side],
  ]
}

/** About how wide lettering of 14 units is: half its height and a little, by the character. */
function inkWidth(text: string): number {
  return text.length * 8 // units of the drawing
}

function link(text: DimensionText, strokes: readonly Stroke[]): Stroke {
  return { kind: 'link', href: text.href, says: text.says, strokes }
}

function balloon({ balloon: number }: DimensionText, { x, y }: { x: number; y: number }): Stroke[] {
  if (number === null) return []
  return [{ kind: 'circle', x: tenth(x), y: tenth(y), r: 10.5, look: 'bal' }, lettering('bal-n', { x, y }, number)]
}
