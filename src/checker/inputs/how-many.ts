import type { Input } from '../input.ts'
import { ifGiven } from './choose.ts'
import { partCount } from './part-count.ts'
import { value } from './value.ts'

/** How many of a part there are: its `count`, else its `qty` as last fitted. */
export function howMany(kind: string, symbol: string): Input<number> {
  const spec = { symbol, meaning: 'how many there are', dimension: 'ratio' } as const
  const written = value({ of: `${kind}/count`, ...spec, unit: '1', exact: true })
  return ifGiven({ ...spec, of: `${kind}/count` }, written, partCount(symbol))
}
