import { stretchesOverlap } from '../quantities/quantities-overlap.ts'
import type { AskedSize } from './asked-size.ts'
import type { FigureGroup } from './search-index.ts'

/** A group ready for asking: `reach` holds, at the middle of each stretch of the order, the greatest `high` within it. */
export interface OpenGroup extends FigureGroup {
  readonly reach: Float64Array
}

const slack = 1e-9 // relative: what conversion to floats may add to an end
const best = 1000 // closeness of what is just what was asked for
const farthest = 0.25 // of what was asked for: beyond it nothing is nearer than anything else

/** Makes the group a tree of stretches, so that asking looks at no more than it finds. */
export function openGroup(group: FigureGroup): OpenGroup {
  const reach = new Float64Array(group.high.length)
  const fill = (from: number, to: number): number => {
    if (from >= to) return Number.NEGATIVE_INFINITY
    const middle = (from + to) >> 1
    const within = Math.max(fill(from, middle), fill(middle + 1, to), group.high[middle] ?? Number.NEGATIVE_INFINITY)
    reach[middle] = within
    return within
  }
  fill(0, reach.length)
  return { ...group, reach }
}

/** Calls `take` with each entry that answers and how near it is, up to 1000. */
export function findFigures(
  group: OpenGroup,
  asked: AskedSize,
  take: (entry: number, closeness: number) => void,
): void {
  const visit = (from: number, to: number): void => {
    const middle = (from + to) >> 1
    if (from >= to || (group.reach[middle] ?? 0) < asked.low - margin(asked.low)) return
    visit(from, middle)
    if ((group.low[middle] ?? 0) > asked.high + margin(asked.high)) return
    if (answers(group, middle, asked)) take(group.entry[middle] ?? 0, closenessOf(group, middle, asked))
    visit(middle + 1, to)
  }
  visit(0, group.reach.length)
}

const margin = (end: number): number => (Number.isFinite(end) ? Math.abs(end) * slack : 0)

function answers(group: OpenGroup, at: number, asked: AskedSize): boolean {
  const pitch = group.pitch[at] ?? 0
  if (asked.pitch !== 0 && pitch !== 0 && asked.pitch !== pitch) return false
  const [low = 0, high = 0, from = 0, to = 0] = [group.low[at], group.high[at], group.from[at], group.to[at]]
  if (asked.test === 'equal') return stretchesOverlap({ low, high }, asked)
  const [below, above] = [margin(asked.low), margin(asked.high)]
  if (asked.isStrict) return to > asked.low + below && from < asked.high - above
  return to >= asked.low - below && from <= asked.high + above
}

/** How near the middles are, as a share of what was asked for. */
function closenessOf({ from, to }: OpenGroup, at: number, { middle }: AskedSize): number {
  if (middle === null) return best
  const away = Math.abs(((from[at] ?? 0) + (to[at] ?? 0)) / 2 - middle)
  if (away <= margin(middle)) return best
  const share = middle === 0 ? 1 : Math.min(1, away / (Math.abs(middle) * farthest))
  return Math.max(1, Math.round((best - 1) * (1 - share)))
}
