import type { Quantity } from '../quantities/quantity.ts'
import { type FigureStretch, figureStretch } from './figure-stretch.ts'
import type { FigureGroup } from './search-index.ts'

/** Figures by what they can be equal to, each group in the order of its least size. By the number of the entry; null is no figure. */
export function figureGroups(figures: readonly (Quantity | null)[]): FigureGroup[] {
  const groups = new Map<string, { stretch: FigureStretch; entry: number }[]>()
  for (const [entry, figure] of figures.entries()) {
    const stretch = figure === null ? null : figureStretch(figure)
    if (stretch === null) continue
    const group = groups.get(stretch.group) ?? []
    groups.set(stretch.group, group)
    group.push({ stretch, entry })
  }
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, members]) => groupOf(name, members))
}

function groupOf(name: string, members: { stretch: FigureStretch; entry: number }[]): FigureGroup {
  members.sort((a, b) => a.stretch.low - b.stretch.low || a.entry - b.entry)
  const column = (size: 'low' | 'high' | 'from' | 'to' | 'pitch') => members.map(({ stretch }) => stretch[size])
  return {
    name,
    low: column('low'),
    high: column('high'),
    from: column('from'),
    to: column('to'),
    entry: members.map(({ entry }) => entry),
    pitch: name === 'thread' ? column('pitch') : [],
  }
}
