import type { Verdict } from '../checker/verdict.ts'
import { type Drawing, lettering, path, type Stroke, tenth } from './drawing.ts'
import { plain } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'

interface Scale {
  readonly width: number
  readonly at: (value: number) => number
}

/** The result with its uncertainty against the limit, on a scale; nothing where there is no limit or no result. */
export function drawResult(verdict: Verdict): PartOfPage[] {
  const { result, limit, working } = verdict
  if (result === null || limit === null || (limit.min === null && limit.max === null)) return []
  const ends = [
    result.value - result.uncertainty,
    result.value + result.uncertainty,
    limit.min,
    limit.max,
    working.interval?.low,
    working.interval?.high,
  ]
  const known = ends.filter(end => typeof end === 'number' && Number.isFinite(end)) as number[]
  const [low, high] = [Math.min(...known), Math.max(...known)]
  if (!(high > low)) return []
  const draw = (width: number): Drawing => drawScale(verdict, { low, high, width })
  const caption = `Heavy bar: the result and its expanded uncertainty (k = 2). ${working.interval === null ? '' : 'Dashed: the worst case by interval. '}Hatched: beyond the limit.`
  return [{ kind: 'drawings', wide: draw(640), narrow: draw(340), framed: false, caption: [plain(caption)] }]
}

function drawScale(verdict: Verdict, { low, high, width }: { low: number; high: number; width: number }): Drawing {
  const room = (high - low) * 0.22
  const scale: Scale = {
    width,
    at: value => tenth(20 + ((value - low + room) / (high - low + 2 * room)) * (width - 40)),
  }
  return {
    width,
    height: 128,
    says: verdict.working.says,
    look: 'result',
    strokes: [...beyond(verdict, scale), ...spread(verdict, scale), ...ticks(scale, low - room, high + room)],
  }
}

function beyond({ limit }: Verdict, { width, at }: Scale): Stroke[] {
  if (limit === null) return []
  const strokes: Stroke[] = []
  if (limit.max !== null)
    strokes.push(
      path('beyond', `M${at(limit.max)} 30H${width - 20}V92H${at(limit.max)}z`),
      path('limit', `M${at(limit.max)} 22V98`),
      limitWords(limit.max, { width, at }, 'at most'),
    )
  if (limit.min !== null)
    strokes.push(
      path('beyond', `M20 30H${at(limit.min)}V92H20z`),
      path('limit', `M${at(limit.min)} 22V98`),
      limitWords(limit.min, { width, at }, 'at least'),
    )
  return strokes
}

function limitWords(value: number, { width, at }: Scale, words: string): Stroke {
  const x = at(value)
  const look = x < 60 ? '' : x > width - 60 ? 'end' : 'mid'
  return lettering(look, { x, y: 16 }, words)
}

function spread({ result, working }: Verdict, { at }: Scale): Stroke[] {
  if (result === null) return []
  const [from, to] = [at(result.value - result.uncertainty), at(result.value + result.uncertainty)]
  const bar =
    to - from < 1
      ? []
      : [
          path('plate', `M${from - 4} 46H${to + 4}V72H${from - 4}z`),
          path('whisk', `M${from} 59H${to}M${from} 51v16M${to} 51v16`),
        ]
  const interval = working.interval
  const worst =
    interval === null || interval.high - interval.low <= 0
      ? []
      : [
          path(
            'worst',
            `M${at(interval.low)} 82H${at(interval.high)}M${at(interval.low)} 78v8M${at(interval.high)} 78v8`,
          ),
        ]
  return [...worst, ...bar, { kind: 'circle', x: at(result.value), y: 59, r: 7, look: 'pt' }]
}

/** Round figures along the scale: 1, 2 or 5 times a power of ten. */
function ticks({ width, at }: Scale, low: number, high: number): Stroke[] {
  const step = niceStep((high - low) / Math.max(3, Math.floor(width / 110)))
  const strokes: Stroke[] = [path('tick', `M20 98H${width - 20}`)]
  for (let index = Math.ceil(low / step); index * step <= high; index++) {
    const value = index * step
    strokes.push(path('tick', `M${at(value)} 98v8`), lettering('sm mid', { x: at(value), y: 122 }, label(value, step)))
  }
  return strokes
}

function niceStep(raw: number): number {
  const power = 10 ** Math.floor(Math.log10(raw))
  return ([1, 2, 5, 10].find(factor => factor * power >= raw) ?? 10) * power
}

function label(value: number, step: number): string {
  return value.toFixed(Math.max(0, -Math.floor(Math.log10(step) + 1e-9))).replace('-', '−')
}
