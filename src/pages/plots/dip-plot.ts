import { scaleLinear } from 'd3-scale'
import { line } from 'd3-shape'
import type { DipMark } from '../../checker/derived/dip-table.ts'
import { type Drawing, lettering, path, type Stroke, tenth } from '../drawing.ts'

interface DipPlot {
  readonly says: string
  readonly tells: string
  readonly marks: readonly DipMark[]
  /** The height of the level at full; null: not drawn. */
  readonly fullMm: number | null
}

const [width, height] = [360, 340]
const [left, right, top, base] = [48, 344, 14, 296]

/** Litres across, height of the level up, as a stick stands in the tank. */
export function drawDip({ says, tells, marks, fullMm }: DipPlot): Drawing {
  const brim = marks.at(-1) ?? { heightMm: 1, litres: 1 }
  const x = scaleLinear([0, Math.max(brim.litres, 1)], [left, right]).nice(5)
  const y = scaleLinear([0, Math.max(brim.heightMm, 1)], [base, top]).nice(5)
  const curve = line<DipMark>(
    ({ litres }) => x(litres),
    ({ heightMm }) => y(heightMm),
  ).digits(1)(marks)
  return {
    width,
    height,
    says,
    tells,
    look: 'plot dip',
    strokes: [
      ...y.ticks(6).flatMap(mm => heightTick(y(mm), mm)),
      ...x.ticks(5).flatMap(litres => litreTick(x(litres), litres)),
      path('deck', `M${left} ${top}V${base}H${right}`),
      path('path heavy', curve ?? ''),
      ...(fullMm === null ? [] : fullLine(tenth(y(fullMm)))),
      lettering('sm end', { x: right, y: base + 40 }, 'litres'),
      lettering('sm', { x: 2, y: base + 40 }, 'mm up the stick'),
    ],
  }
}

const heightTick = (y: number, mm: number): Stroke[] => [
  path('far tick', `M${left} ${tenth(y)}H${right}`),
  lettering('sm end', { x: left - 8, y: y + 4 }, String(mm)),
]

const litreTick = (x: number, litres: number): Stroke[] => [
  path('far tick', `M${tenth(x)} ${base}V${top}`),
  lettering('sm mid', { x, y: base + 20 }, String(litres)),
]

function fullLine(y: number): Stroke[] {
  return [path('ctr level', `M${left} ${y}H${right}`), lettering('sm', { x: left + 8, y: y + 17 }, 'full, 95 %')]
}
