import { scaleLinear } from 'd3-scale'
import { curveStepAfter, line } from 'd3-shape'
import { type Drawing, lettering, path, type Stroke, tenth } from '../drawing.ts'
import { timeLine } from './time-line.ts'

export interface MoneyStep {
  readonly day: number
  /** All that was paid up to then, in the build's currency; for placing, not for reading. */
  readonly total: number
  readonly balloon: string
  readonly href: string
  readonly says: string
}

interface MoneyPlot {
  readonly says: string
  readonly tells: string
  /** What was paid before the first session. */
  readonly before: number
  readonly steps: readonly MoneyStep[]
  readonly label: (amount: number) => string
}

const height = 300
const top = 26
const base = 226

/** Money paid in all, as a line of steps over the days; a balloon below it for each session. */
export function drawMoney(plot: MoneyPlot): { wide: Drawing; narrow: Drawing } {
  return { wide: drawIn(plot, 820), narrow: drawIn(plot, 360) }
}

function drawIn(plot: MoneyPlot, width: number): Drawing {
  const { steps, before } = plot
  const days = steps.map(({ day }) => day)
  const [left, right] = [64, width - 14]
  const time = timeLine({ first: Math.min(...days) - 4, last: Math.max(...days) + 4 }, [left, right])
  const up = scaleLinear(
    [Math.min(0, before, ...steps.map(({ total }) => total)), Math.max(1, before, ...steps.map(({ total }) => total))],
    [base, top],
  ).nice(4)
  const points: [number, number][] = [
    [left, up(before)],
    ...steps.map(({ day, total }): [number, number] => [time.x(day), up(total)]),
  ]
  const last = points.at(-1)
  const drawn = line().curve(curveStepAfter).digits(1)([
    ...points,
    ...(last === undefined ? [] : [[right, last[1]] as [number, number]]),
  ])
  const lines = up
    .ticks(4)
    .flatMap((amount): Stroke[] => [
      path('far tick', `M${left} ${tenth(up(amount))}H${right}`),
      lettering('sm end', { x: left - 8, y: up(amount) + 4 }, plot.label(amount)),
    ])
  return {
    width,
    height,
    says: plot.says,
    tells: plot.tells,
    look: 'plot',
    strokes: [...lines, ...time.scale(base), path('path heavy', drawn ?? ''), ...balloons(steps, time.x)],
  }
}

/** Balloons that would touch go a row lower; where all rows are full they overlap in the last. */
function balloons(steps: readonly MoneyStep[], x: (day: number) => number): Stroke[] {
  const rows = [-100, -100] // x of the last balloon in each row
  return steps.map(({ day, balloon, href, says }): Stroke => {
    const at = x(day)
    const free = rows.findIndex(taken => at - taken >= 22)
    const row = free === -1 ? rows.length - 1 : free
    rows[row] = at
    const y = base + 42 + row * 23
    return {
      kind: 'link',
      href,
      says,
      strokes: [
        path('dots', `M${at} ${base}V${y - 10}`),
        { kind: 'circle', x: at, y, r: 10, look: 'bal' },
        lettering('bal-n', { x: at, y }, balloon),
      ],
    }
  })
}
