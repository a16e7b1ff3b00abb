import { scaleBand, scaleLinear } from 'd3-scale'
import { type Drawing, lettering, path, type Stroke, tenth } from '../drawing.ts'

interface MonthColumn {
  /** `Mar 2026`, and `March 2026` for who cannot see it. */
  readonly short: string
  readonly long: string
  readonly size: number
  readonly text: string
}

interface MonthPlot {
  readonly says: string
  readonly tells: string
  readonly unit: string
  readonly months: readonly MonthColumn[]
}

const height = 220
const top = 24
const base = 180

/** Standing columns, one a month, for a desk and for a phone. */
export function drawMonths(plot: MonthPlot): { wide: Drawing; narrow: Drawing } {
  return { wide: drawIn(plot, 820), narrow: drawIn(plot, 360) }
}

function drawIn({ says, tells, unit, months }: MonthPlot, width: number): Drawing {
  const most = Math.max(...months.map(({ size }) => size), 1)
  const up = scaleLinear([0, most], [base, top]).nice(4)
  const across = scaleBand(
    months.map(({ long }) => long),
    [44, width - 4],
  ).padding(0.3)
  const lines = up
    .ticks(4)
    .flatMap((value): Stroke[] => [
      path('far tick', `M44 ${tenth(up(value))}H${width - 4}`),
      lettering('sm end', { x: 38, y: up(value) + 4 }, String(value)),
    ])
  const room = across.bandwidth()
  return {
    width,
    height,
    says,
    tells,
    look: 'plot',
    strokes: [
      ...lines,
      lettering('sm', { x: 2, y: 12 }, unit),
      ...months.map((month, at) =>
        column(month, {
          x: across(month.long) ?? 0,
          room,
          y: up(month.size),
          isNamed: isNamed(at, room),
        }),
      ),
      path('deck', `M44 ${base}H${width - 4}`),
    ],
  }
}

interface Spot {
  readonly x: number
  readonly room: number
  readonly y: number
  readonly isNamed: boolean
}

function column({ short, long, size, text }: MonthColumn, { x, room, y, isNamed: named }: Spot): Stroke {
  const [left, right, middle] = [tenth(x), tenth(x + room), x + room / 2]
  const strokes = [
    ...(size > 0 ? [path('bar', `M${left} ${base}V${tenth(y)}H${right}V${base}Z`)] : []),
    ...(room > 22 && size > 0 ? [lettering('plot-f mid', { x: middle, y: y - 6 }, text)] : []),
    ...(named ? [lettering('sm mid', { x: middle, y: base + 20 }, short)] : []),
  ]
  return { kind: 'link', href: null, says: `${long}: ${text}`, strokes }
}

/** Names are left out evenly where they would touch. */
function isNamed(at: number, room: number): boolean {
  const each = Math.max(1, Math.ceil(52 / (room / 0.7))) // 52 units: what `Mar 2026` takes
  return at % each === 0
}
