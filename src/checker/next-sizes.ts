import { plainReading, type Quantity } from '../quantities/quantity.ts'
import { readOneQuantity } from '../quantities/read-one-quantity.ts'
import { latest } from '../record/lookups.ts'
import type { Thing } from '../record/record.ts'

// Ratings in amperes: blade fuses by ISO 8820-3, bolted strip fuses by ISO 8820-5, as makers list them.
const bladeFuses = [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40]
const stripFuses = [30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 250, 300, 400, 500]

/** The ratings that a maker lists for a fuse like the one fitted: blade, or bolted strip. */
export function fusesLike(circuit: Thing, fuse: Quantity): string[] {
  const type = latest(circuit, 'fuse.type')?.value
  const isStrip = type?.type === 'words' ? !/blade/i.test(type.words.text) : (fuse.si ?? 0) > 40
  return fuse.unit === 'A' ? (isStrip ? stripFuses : bladeFuses).map(amperes => `${amperes} A`) : []
}

const sizesRead = new Map<string, Quantity | null>()

/** Each size of a table is read once. */
function sizeOf(text: string): Quantity | null {
  const size = sizesRead.get(text) ?? readOneQuantity(text, plainReading)
  sizesRead.set(text, size)
  return size
}

/** One size less, the one fitted, and two more, by what they measure. */
export function nextTo(fitted: Quantity, sizes: readonly string[]): Quantity[] {
  const read = sizes.flatMap(text => sizeOf(text) ?? [])
  const bySize = [...read].sort((one, other) => (one.si ?? 0) - (other.si ?? 0))
  const own = fitted.si
  if (own === null) return []
  const less = bySize.filter(({ si }) => si !== null && si < own * (1 - 1e-9))
  const more = bySize.filter(({ si }) => si !== null && si > own * (1 + 1e-9))
  return [...less.slice(-1), fitted, ...more.slice(0, 2)]
}
