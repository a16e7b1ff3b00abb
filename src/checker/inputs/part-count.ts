import type { Input } from '../input.ts'
import { statedLeaf } from '../leaf.ts'

/** How many of a part were fitted last: its `qty`. */
export function partCount(symbol: string): Input<number> {
  return {
    symbol,
    meaning: 'how many, as last fitted',
    dimension: 'ratio',
    reads: ['part/qty'],
    read: scope => {
      const part = scope.record.parts.find(({ id }) => id === scope.subject.id)
      const last = part?.events.at(-1)
      if (part === undefined || last === undefined) {
        scope.notebook.need(`${scope.subject.id}/qty`, 'how many there are is not written')
        return null
      }
      const leaf = statedLeaf('record', {
        symbol,
        meaning: 'how many, as last fitted',
        value: Number(part.qty),
        unit: '1',
      })
      return {
        type: 'figure',
        term: { ...leaf, id: `${part.id}/qty`, path: `${part.id}/qty`, place: last.place, session: last.session },
      }
    },
  }
}
