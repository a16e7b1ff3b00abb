import { minorDigits } from '../quantities/currencies.ts'
import type { AmountRead } from './amount-read.ts'
import { quoted } from './quoted.ts'
import { report, type Sheet } from './sheet.ts'

interface AmountAsked {
  readonly path: string
  /** As it stands in the note. */
  readonly written: string
}

/** A price below nothing is refused: what came back has an action of its own. One that may mean thousands is told, and read as written. */
export function judgeAmount(sheet: Sheet, read: AmountRead, { path, written }: AmountAsked): AmountRead | null {
  const { amount, currency } = read.amount
  const about = [path]
  if (amount.startsWith('-') && /[1-9]/.test(amount)) {
    const message = `Unexpected ${quoted(written)} for \`${path}\`, expected what was paid, nothing or more; what came back is the cost of a part that was \`returned\` or \`sold\``
    report(sheet, 'not-a-quantity', { place: read.place, message, about })
    return null
  }
  const digits = minorDigits(currency) ?? usualDigits
  if (digits < 3 && mayBeThousands.test(written) && Number(amount) < 1000) {
    const message = `Unexpected three decimals in ${quoted(written)} for \`${path}\`, expected ${digits === 0 ? 'none' : 'two'} in ${currency}; a price of ${amount} was read, and no thousands`
    const [whole, decimals] = written.split(/[.,](?=\d{3}\D*$)/)
    report(sheet, 'two-readings', {
      place: read.place,
      message,
      mend: `${whole}${decimals}, if it is thousands`,
      about,
    })
  }
  return read
}

const usualDigits = 2 // of most currencies (ISO 4217), taken for one that the table has not
const mayBeThousands = /^\D*[1-9]\d{0,2}[.,]\d{3}\D*$/ // `£1.005`; with a thousands mark, 1,005 was read
