import type { Place } from '../findings/place.ts'
import type { Amount } from './fact.ts'

/** An amount as a note writes it. */
export interface AmountRead {
  readonly amount: Amount
  readonly place: Place
  /** Null for a currency that is known by its code alone, such as `184 THB`. */
  readonly figure: string | null
}
