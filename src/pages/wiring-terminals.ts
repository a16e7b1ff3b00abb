import { terminalMeanings, terminalNumbersIn, terminalSource } from '../wiring/terminal-numbers.ts'
import type { Inline } from './cells.ts'
import { listed, look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, heading, row, table } from './tables.ts'
import { halvesOf, wiringOf } from './wiring-of.ts'

/** The numbers that stand on terminals and in these notes, with what each is for. */
export function terminalsPart(scope: PageScope): PartOfPage[] {
  const found = new Map<string, Map<string, Inline[]>>()
  for (const { number, text, where } of wordsOfWiring(scope)) {
    const places = found.get(number) ?? new Map<string, Inline[]>()
    found.set(number, places.set(text, where))
  }
  if (found.size === 0) return []
  const order = [...found].sort(
    ([one], [other]) => Number.parseInt(one, 10) - Number.parseInt(other, 10) || (one < other ? -1 : 1),
  )
  return [
    heading('Terminal numbers', 'terminals'),
    table({
      caption: 'Terminal numbers in these notes',
      columns: [column('Number', 'narrow'), column('What it is for'), column('Where', 'wide')],
      rows: order.map(([number, places]) =>
        row([
          wordsCell([look('strong', shownNumber(number))]),
          wordsCell(terminalMeanings[number] ?? ''),
          wordsCell(listed([...places.values()])),
        ]),
      ),
      note: `${terminalSource}. Whether a part follows it, the part alone tells: measure before you trust a number.`,
      isCaptionShown: true,
    }),
  ]
}

/** `58L` as it is stamped; a letter of relays and motors stays small. */
export const shownNumber = (number: string): string =>
  number.replace(/^([lr])$|(?<=^58)[lr]$|(?<=^54)g$/, letter => letter.toUpperCase())

interface Mention {
  readonly number: string
  /** The same place is told once. */
  readonly text: string
  readonly where: Inline[]
}

function wordsOfWiring(scope: PageScope): Mention[] {
  const { circuits } = wiringOf(scope)
  const ofCircuits = circuits.flatMap(({ id, feeds, route, feed }) =>
    mentions([feeds, feed.from, ...route], [scope.thing({ kind: 'circuit', id })], `circuit ${id}`),
  )
  const ofPins = halvesOf(scope).flatMap(half =>
    half.pins.flatMap(pin =>
      mentions(
        [pin.to, pin.carries],
        [scope.thing({ kind: 'connector', id: half.id }), plain(`, way ${pin.pin}`)],
        pin.number,
      ),
    ),
  )
  return [...ofCircuits, ...ofPins]
}

const mentions = (words: readonly (string | null)[], where: Inline[], text: string): Mention[] =>
  [...new Set(words.flatMap(one => terminalNumbersIn(one ?? '')))].map(number => ({ number, text, where }))
