import type { AsBuiltRecord, Part, PartState, Thing } from '../record.ts'
import { addAmounts } from './add-amounts.ts'

export interface DonorAccount {
  readonly donor: Thing
  /** On the vehicle now. */
  readonly gave: readonly Part[]
  /** Neither fitted nor gone: it waits beside the vehicle. */
  readonly toCome: readonly Part[]
  /** Taken off it, rejected, sold, returned or scrapped. */
  readonly gone: readonly Part[]
  /** In the build's currency; null where no price is written. */
  readonly cost: string | null
  /** Paid for parts of it that have a price of their own. */
  readonly pricedParts: string
  /** From selling or returning its parts. */
  readonly cameBack: string
  /** What was paid for the donor and for its parts, less what came back. */
  readonly net: string
}

const goneStates: readonly PartState[] = ['removed', 'rejected', 'returned', 'sold', 'scrapped']

/** What each donor gave and what it came to, in the order of build.md. */
export function donorAccounts(record: AsBuiltRecord): DonorAccount[] {
  return record.donors.map(donor => accountOf(record, donor))
}

function accountOf(record: AsBuiltRecord, donor: Thing): DonorAccount {
  const { lines, currency } = record.ledger
  const own = record.parts.filter(part => part.donor === donor.id)
  const ids = new Set(own.map(({ id }) => id))
  const bought = lines.filter(({ of, thing }) => of === 'donor' && thing?.id === donor.id)
  const ofParts = lines.filter(({ thing }) => thing?.kind === 'part' && ids.has(thing.id))
  const amounts = (some: typeof lines): string[] => some.map(({ amount }) => amount)
  const back = amounts(ofParts.filter(({ of }) => of === 'returned'))
  const isGone = ({ state, onVehicle }: Part): boolean => !onVehicle && goneStates.includes(state)
  return {
    donor,
    gave: own.filter(({ onVehicle }) => onVehicle),
    toCome: own.filter(part => !part.onVehicle && !isGone(part)),
    gone: own.filter(isGone),
    cost: bought.length === 0 ? null : addAmounts(amounts(bought), currency),
    pricedParts: addAmounts(amounts(ofParts.filter(({ of }) => of !== 'returned')), currency),
    cameBack: addAmounts(back, currency).replace(/^-/, ''),
    net: addAmounts(amounts([...bought, ...ofParts]), currency),
  }
}
