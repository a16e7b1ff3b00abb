import type { Input } from '../input.ts'
import { statedLeaf } from '../leaf.ts'
import { dipTable } from './dip-table.ts'

/** How deep a tank is inside, by its shape; nothing where that is not whole in the record. */
export function fullDepth(symbol: string): Input<number> {
  const meaning = 'depth of the full tank, by its shape'
  return {
    symbol,
    meaning,
    dimension: 'length',
    reads: ['volume/outside'],
    isOptional: true,
    read: ({ record, subject }) => {
      const brim = dipTable(record, subject.id, Number.POSITIVE_INFINITY).at(-1)
      if (brim === undefined) return { type: 'none' }
      return { type: 'figure', term: statedLeaf('constant', { symbol, meaning, value: brim.heightMm, unit: 'mm' }) }
    },
  }
}
