import type { Reading, ReadOptions } from '../quantities/quantity.ts'
import { readQuantities } from '../quantities/read-quantities.ts'
import { type AskedSize, askedSize } from './asked-size.ts'
import type { SearchIndex } from './search-index.ts'
import { wordsIn } from './words-in.ts'

/** A quantity that was asked for; what can be read in more than one way is asked in each. */
interface AskedQuantity {
  readonly text: string
  readonly sizes: readonly AskedSize[]
}

export interface Query {
  readonly quantities: readonly AskedQuantity[]
  readonly words: readonly string[]
}

/** How a build reads figures, and what *about* is worth, as a share. */
type Asking = Pick<SearchIndex, 'approximate' | 'reading'>

/** Read where the build's own reading has its doubts: a search asks for all that may be meant. */
const otherReadings = ({ decimal }: ReadOptions): readonly Partial<ReadOptions>[] => [
  { gallon: 'imperial' },
  { gallon: 'us' },
  { mil: 'mm' },
  { mil: 'thou' },
  { decimal: decimal === 'point' ? 'comma' : 'point' },
]

const fillers = new Set(
  'a above an and are at below by for from how i in is it its me my of on or our over so than that the then there this to under was we were what when where which with'.split(
    ' ',
  ),
)

/** Takes the quantities out of what was asked; the rest are words. */
export function readQuery(asked: string, { approximate, reading }: Asking): Query {
  const found = readingsOf(asked, reading)
  const quantities = [...found]
    .sort(([a], [b]) => a - b)
    .flatMap(([, readings]) => quantityOf(asked, readings, approximate))
  let rest = asked
  for (const { quantity, start, end } of [...found.values()].flat())
    if (quantity !== null) rest = rest.slice(0, start) + ' '.repeat(end - start) + rest.slice(end)
  return { quantities, words: usefulWords(rest, quantities.length > 0) }
}

/** Readings by where they begin. */
function readingsOf(asked: string, own: ReadOptions): Map<number, Reading[]> {
  const { readings, doubts } = readQuantities(asked, own)
  const found = new Map(readings.map(reading => [reading.start, [reading]]))
  if (doubts.length === 0) return found
  for (const other of otherReadings(own))
    for (const reading of readQuantities(asked, { ...own, ...other }).readings) {
      const isDoubted = doubts.some(({ start, end }) => start < reading.end && reading.start < end)
      const same = found.get(reading.start) ?? []
      const isKnown = same.some(({ quantity }) => quantity.unit === reading.quantity.unit)
      if (isDoubted && !isKnown) found.set(reading.start, [...same, reading])
    }
  return found
}

function quantityOf(asked: string, readings: readonly Reading[], approximate: number): AskedQuantity[] {
  const [first] = readings
  if (first === undefined) return []
  const before = /(?:^|\s)(over|above|under|below)\s+$/i.exec(asked.slice(0, first.start))?.[1]?.toLowerCase()
  const bound = before === undefined ? null : before === 'over' || before === 'above' ? 'min' : 'max'
  const sizes = readings.flatMap(({ quantity }) => askedSize(quantity, { approximate, bound }) ?? [])
  const text = `${before === undefined ? '' : `${before} `}${asked.slice(first.start, Math.max(...readings.map(({ end }) => end)))}`
  return sizes.length === 0 ? [] : [{ text, sizes }]
}

/** Words that tell hits apart; small words only where nothing else was asked. */
function usefulWords(rest: string, hasQuantity: boolean): string[] {
  const all = [...new Set(wordsIn(rest).map(({ word }) => word))]
  const useful = all.filter(word => !fillers.has(word) && !/^\p{M}*$/u.test(word))
  return useful.length === 0 && !hasQuantity ? all : useful
}
