import type { AskedLine } from '../record/asked/split-ledger.ts'
import type { Part } from '../record/record.ts'
import type { Inline } from './cells.ts'
import { listed, plain } from './inline.ts'
import { massOf, massText } from './masses.ts'
import { inMoney } from './money-cells.ts'
import { type PageScope, standing } from './page-scope.ts'
import { wordsAddress } from './thing-addresses.ts'

const longestName = 30 // characters of a name beside its figure; its page has the whole

/** The largest of some amounts, each leading to the words that state it, and how many others there are. */
export function largestAmounts(scope: PageScope, lines: readonly AskedLine[], most = 2): Inline[] {
  const sorted = [...lines].sort(
    (one, other) => Math.abs(Number(other.line.amount)) - Math.abs(Number(one.line.amount)),
  )
  const named = sorted.slice(0, most).map(({ line }) => {
    const name = shortened(line.words?.text ?? line.what)
    return [plain(`${inMoney(scope, line.amount)} ${name}`, scope.to(wordsAddress(line)))]
  })
  return withRest(named, lines.length - most)
}

/** The heaviest of some parts, leading to the words that weigh it. */
export function heaviest(scope: PageScope, parts: readonly Part[]): Inline[] {
  const [most] = parts
    .flatMap(part => {
      const kg = massOf(part)
      return kg === null ? [] : [{ part, kg }]
    })
    .sort((one, other) => other.kg - one.kg)
  const held = most === undefined ? null : standing(most.part.properties, 'mass')
  if (most === undefined || held === null) return []
  return [plain(`${massText(scope, most.kg)} ${shortened(most.part.name)}`, scope.to(wordsAddress(held)))]
}

/** The dearest of some parts, leading to the words that price it. */
export function dearest(scope: PageScope, parts: readonly Part[]): Inline[] {
  const [most] = parts
    .filter(({ value, cost }) => value !== null && cost !== null)
    .sort((one, other) => Number(other.value) - Number(one.value))
  if (most?.value == null || most.cost === null) return []
  return [plain(`${inMoney(scope, most.value)} ${shortened(most.name)}`, scope.to(wordsAddress(most.cost)))]
}

/** Some by name, then how many more there are. */
export function withRest(named: readonly (readonly Inline[])[], rest: number): Inline[] {
  return listed(rest > 0 ? [...named, [plain(`${rest} more`)]] : named)
}

/** A name up to its first comma, cut where it is still long. */
function shortened(name: string): string {
  const [first = ''] = name.split(',')
  return first.length <= longestName ? first : `${first.slice(0, longestName - 1).trimEnd()}…`
}
