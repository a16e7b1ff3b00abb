import { type FormulaLine, workFormula } from '../formula.ts'
import { type Step, type Term, workOut } from '../term.ts'

/** One corner of an outline, y up. */
export interface Corner {
  readonly x: Term
  readonly y: Term
}

const line = (text: string, says: string): FormulaLine => ({ line: text, unit: 'mm', says })

/** The outline moved in by the wall, corners kept sharp: where the two sides that meet in each, both moved in, meet again. */
export function insetOutline(corners: readonly Corner[], wall: Term, tag: string): Corner[] {
  const sign = signedArea(corners) > 0 ? '' : '-'
  const [into, out] = ['sqrt((x - x_p)^2 + (y - y_p)^2)', 'sqrt((x_n - x)^2 + (y_n - y)^2)']
  const under = `(1 + ((x - x_p) * (x_n - x) + (y - y_p) * (y_n - y)) / (${into} * ${out}))`
  return corners.map((corner, at) => {
    const [before, next] = [around(corners, at - 1), around(corners, at + 1)]
    const terms = { x: corner.x, y: corner.y, x_p: before.x, y_p: before.y, x_n: next.x, y_n: next.y, w: wall }
    const name = `in${tag}_${at + 1}`
    return {
      x: workFormula(
        [
          line(
            `x_${name} = x - ${sign}w * ((y - y_p) / ${into} + (y_n - y) / ${out}) / ${under}`,
            'corner inside the wall',
          ),
        ],
        terms,
      ),
      y: workFormula(
        [
          line(
            `y_${name} = y + ${sign}w * ((x - x_p) / ${into} + (x_n - x) / ${out}) / ${under}`,
            'corner inside the wall',
          ),
        ],
        terms,
      ),
    }
  })
}

/** The lowest corner's height. */
function floorOf(corners: readonly Corner[]): Term {
  return corners.map(({ y }) => y).reduce((low, y) => (workOut(y) < workOut(low) ? y : low))
}

/** From the lowest to the highest corner, in metres. */
export function heightOf(corners: readonly Corner[]): number {
  const heights = corners.map(({ y }) => workOut(y))
  return Math.max(...heights) - Math.min(...heights)
}

/** Area of the part of an outline that lies below a height above its lowest corner. */
export function areaBelow(corners: readonly Corner[], height: Term, symbol: string): Step {
  const level = workFormula([line('y_level = y + h', 'height of the level')], { y: floorOf(corners), h: height })
  const kept = corners.flatMap((corner, at) => keptOf(corner, around(corners, at + 1), level))
  const of = (side: 'x' | 'y', by: number): Term[] => kept.map((_, at) => around(kept, at + by)[side])
  return workFormula(
    [{ line: `${symbol} = abs(sum(x * y_n - x_n * y)) / 2`, unit: 'mm2', says: 'area of the outline up to the level' }],
    { x: of('x', 0), y: of('y', 0), x_n: of('x', 1), y_n: of('y', 1) },
  )
}

/** A side's first corner where it lies below the level, and where the side crosses it. */
function keptOf(corner: Corner, next: Corner, level: Term): Corner[] {
  const [from, to, at] = [workOut(corner.y), workOut(next.y), workOut(level)]
  const isCrossed = from < at !== to < at && from !== at && to !== at
  const crossing = (): Corner => ({
    y: level,
    x: workFormula([line('x_c = x + (x_n - x) * (y_c - y) / (y_n - y)', 'where the level meets a side')], {
      x: corner.x,
      y: corner.y,
      x_n: next.x,
      y_n: next.y,
      y_c: level,
    }),
  })
  return [...(from <= at ? [corner] : []), ...(isCrossed ? [crossing()] : [])]
}

function signedArea(corners: readonly Corner[]): number {
  return corners.reduce((area, { x, y }, at) => {
    const next = around(corners, at + 1)
    return area + workOut(x) * workOut(next.y) - workOut(next.x) * workOut(y)
  }, 0)
}

function around(corners: readonly Corner[], at: number): Corner {
  const found = corners.at(at % corners.length)
  if (found === undefined) throw new Error('Unexpected outline without corners')
  return found
}
