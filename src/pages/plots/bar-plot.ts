import { scaleLinear } from 'd3-scale'
import { type Drawing, lettering, path, type Stroke, tenth } from '../drawing.ts'

export interface Bar {
  readonly label: string
  /** Relative to the page; null leads nowhere. */
  readonly href: string | null
  /** Side by side from zero; what is below zero is not drawn and stands in `text` alone. */
  readonly pieces: readonly { readonly size: number; readonly look: 'bar' | 'bar hatched' | 'bar open' }[]
  /** Where a line crosses the bar: what lies beyond it came back. Null: nowhere. */
  readonly crossedAt?: number | null
  /** The figure at the bar's end, in words. */
  readonly text: string
}

interface BarPlot {
  readonly says: string
  readonly tells: string
  readonly bars: readonly Bar[]
}

interface Layout {
  readonly width: number
  /** Where bars begin, and room for the figure at their end. */
  readonly left: number
  readonly right: number
  readonly row: number
  /** From the top of a row to its bar. */
  readonly drop: number
}

const barHeight = 16 // units of the drawing

/** Lying bars with their names and figures, for a desk and for a phone. */
export function drawBars(plot: BarPlot): { wide: Drawing; narrow: Drawing } {
  return {
    wide: drawIn(plot, { width: 820, left: 210, right: 90, row: 28, drop: 6 }),
    // On a phone the name stands above its bar.
    narrow: drawIn(plot, { width: 360, left: 2, right: 84, row: 46, drop: 22 }),
  }
}

function drawIn({ says, tells, bars }: BarPlot, layout: Layout): Drawing {
  const { width, left, right, row } = layout
  const most = Math.max(...bars.map(lengthOf), 0)
  const along = scaleLinear([0, most > 0 ? most : 1], [left, width - right])
  const height = bars.length * row + 8
  return {
    width,
    height,
    says,
    tells,
    look: 'plot',
    strokes: [
      ...bars.flatMap((bar, at) => drawBar(bar, at * row + 4, { layout, along })),
      path('deck', `M${left} 0V${height}`),
    ],
  }
}

const lengthOf = ({ pieces }: Bar): number => pieces.reduce((sum, { size }) => sum + Math.max(size, 0), 0)

interface Ground {
  readonly layout: Layout
  readonly along: (size: number) => number
}

function drawBar(bar: Bar, top: number, { layout, along }: Ground): Stroke[] {
  const y = top + layout.drop
  const middle = y + barHeight / 2
  let from = 0
  const pieces = bar.pieces.flatMap(({ size, look }): Stroke[] => {
    if (size <= 0) return []
    const [start, end] = [tenth(along(from)), tenth(along(from + size))]
    from += size
    return [path(look, `M${start} ${y}H${end}V${y + barHeight}H${start}Z`)]
  })
  const isNarrow = layout.drop > barHeight
  const name = isNarrow
    ? lettering('plot-n', { x: layout.left + 4, y: y - 7 }, bar.label)
    : lettering('plot-n end', { x: layout.left - 10, y: middle + 5 }, shortened(bar.label))
  const figure = lettering('plot-f', { x: along(lengthOf(bar)) + 8, y: middle + 5 }, bar.text)
  const cross = bar.crossedAt ?? null
  const line = cross === null ? [] : [path('limit', `M${tenth(along(cross))} ${y - 4}V${y + barHeight + 4}`)]
  return [
    { kind: 'link', href: bar.href, says: `${bar.label}: ${bar.text}`, strokes: [name, ...pieces, ...line, figure] },
  ]
}

const longestName = 28 // characters that fit beside the bars; the table has the whole name

const shortened = (label: string): string =>
  label.length <= longestName ? label : `${label.slice(0, longestName - 1).trimEnd()}…`
