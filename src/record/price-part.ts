import type { Amount, MentionFact, Words } from '../facts/fact.ts'
import { type PartCourse, pricedActions } from './fold-events.ts'
import type { Held } from './held.ts'
import type { LedgerLine } from './ledger.ts'
import type { Purse } from './purse.ts'
import type { PartEvent, PartState } from './record.ts'

/** What a part cost: its lines, its price as written last, and what one fitting of it is worth. */
export interface PricedPart {
  readonly lines: readonly (Omit<LedgerLine, 'amount'> & { readonly coins: bigint })[]
  readonly cost: Held<Amount> | null
  readonly value: bigint | null
}

interface PartLabel {
  readonly system: string | null
  readonly name: string
  /** `name:` with its private marks; null where the identifier stands for it. */
  readonly named: Words | null
}

interface Purchase {
  readonly price: Held<Amount> | null
  /** What the price came to, in coins. */
  readonly paid: bigint
  /** Costs of modifying it, each of one. */
  readonly added: readonly Held<Amount>[]
}

type Said = PartCourse['said'][number]
type Lines = PricedPart['lines'][number][]

const nothingBought: Purchase = { price: null, paid: 0n, added: [] }

/**
 * One price is shared by all that leads to a fitting, and a later one replaces it: the later session's line is the difference.
 * Modifying adds. What was sold or returned comes back. A part that has left and is bought again is another purchase.
 */
export function pricePart(course: PartCourse, label: PartLabel, purse: Purse): PricedPart {
  const lines: Lines = []
  let bought = nothingBought
  for (const said of course.said) {
    const { system, name, named } = label
    const base = { what: name, words: named, thing: { kind: 'part', id: course.id }, system } as const
    const book = (coins: bigint | null, amount: Held<Amount>, of: 'part' | 'returned'): void => {
      if (coins !== null)
        lines.push({
          ...base,
          of,
          session: said.event.session,
          coins,
          written: amount.value,
          qty: said.event.qty,
          place: amount.place,
          figure: amount.figure,
        })
    }
    bought = account(isBoughtAgain(said) ? nothingBought : bought, said, { purse, book })
  }
  return { lines, cost: bought.price, value: worth(bought, course.fittedQty ?? course.qty, purse) }
}

interface Book {
  readonly purse: Purse
  readonly book: (coins: bigint | null, amount: Held<Amount>, of: 'part' | 'returned') => void
}

function account(bought: Purchase, { fact, event }: Said, { purse, book }: Book): Purchase {
  const { cost } = event
  if (fact.action === null || pricedActions.includes(fact.action.word))
    return reprice(bought, { fact, event }, { purse, book })
  if (cost === null) return bought
  const coins = purse.count({ amount: cost.value, qty: event.qty, place: cost.place })
  const comesBack = event.action === 'sold' || event.action === 'returned'
  book(comesBack && coins !== null ? -coins : coins, cost, comesBack ? 'returned' : 'part')
  return event.action === 'modified' ? { ...bought, added: [...bought.added, cost] } : bought
}

/** A new price, or a new quantity named without an action, replaces what the price came to. */
function reprice(
  bought: Purchase,
  { fact, event }: { fact: MentionFact; event: PartEvent },
  { purse, book }: Book,
): Purchase {
  const isRecount = fact.action === null && fact.qty !== null
  const price = event.cost ?? (isRecount ? bought.price : null)
  if (price === null) return bought
  const paid = purse.count({ amount: price.value, qty: event.qty, place: price.place })
  if (paid === null) return { ...bought, price }
  // A quantity put right is told where the quantity stands: the price stands in an earlier note.
  const told = event.cost === null && fact.qty !== null ? { ...price, place: fact.qty.place, figure: null } : price
  if (paid !== bought.paid || bought.price === null) book(paid - bought.paid, told, 'part')
  return { ...bought, price, paid }
}

const gone: readonly PartState[] = ['sold', 'returned', 'scrapped']

function isBoughtAgain({ fact, before }: Said): boolean {
  const word = fact.action?.word
  if (fact.cost === null || before === null || word === undefined || !pricedActions.includes(word)) return false
  return (
    gone.includes(before) || (before === 'rejected' && (word === 'ordered' || word === 'received' || word === 'made'))
  )
}

function worth({ price, added }: Purchase, qty: string, purse: Purse): bigint | null {
  const counted = [...(price === null ? [] : [price]), ...added].flatMap(
    ({ value, place }) => purse.count({ amount: value, qty, place }) ?? [],
  )
  return counted.length === 0 ? null : counted.reduce((sum, coins) => sum + coins, 0n)
}
