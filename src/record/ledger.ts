import type { Amount, Subject, Words } from '../facts/fact.ts'
import type { Place } from '../findings/place.ts'
import type { Held } from './held.ts'

export interface Spend {
  readonly what: Words
  readonly system: string | null
  /** From whom, where the note says it. */
  readonly from: Words | null
  readonly session: string | null
  readonly place: Place
  /** In the build's currency, rounded to its smallest coin. */
  readonly amount: string
  readonly written: Held<Amount> | null
}

/** One line of the ledger, in the build's currency; `amount` is signed: what came back is negative. */
export interface LedgerLine {
  readonly what: string
  /** The same with its private marks, where it was said in words. */
  readonly words: Words | null
  readonly of: 'donor' | 'part' | 'spend' | 'returned'
  readonly thing: Subject | null
  readonly session: string | null
  readonly system: string | null
  readonly amount: string
  readonly written: Amount
  readonly qty: string
  readonly place: Place
  readonly figure: string | null
}

export interface Ledger {
  readonly currency: string
  readonly donors: string
  readonly parts: string
  readonly spend: string
  readonly returned: string
  readonly total: string
  readonly bySystem: Readonly<Record<string, string>>
  readonly bySession: Readonly<Record<string, string>>
  readonly onVehicle: string
  readonly lines: readonly LedgerLine[]
}
