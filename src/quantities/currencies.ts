/** Digits of the smallest coin behind the decimal mark (ISO 4217, minor units), for the currencies a workshop is likely to pay in. */
const minorUnits: Readonly<Record<string, number>> = {
  AED: 2, ARS: 2, AUD: 2, BGN: 2, BHD: 3, BRL: 2, CAD: 2, CHF: 2, CLP: 0, CNY: 2, COP: 2, CZK: 2, DKK: 2, EGP: 2, EUR: 2,
  GBP: 2, GEL: 2, HKD: 2, HUF: 2, IDR: 2, ILS: 2, INR: 2, IQD: 3, ISK: 0, JOD: 3, JPY: 0, KES: 2, KRW: 0, KWD: 3, LYD: 3,
  MAD: 2, MXN: 2, MYR: 2, NOK: 2, NZD: 2, OMR: 3, PEN: 2, PHP: 2, PLN: 2, PYG: 0, QAR: 2, RON: 2, RSD: 2, SAR: 2, SEK: 2,
  SGD: 2, THB: 2, TND: 3, TRY: 2, TWD: 2, UAH: 2, UGX: 0, USD: 2, UYU: 2, VND: 0, XAF: 0, XOF: 0, ZAR: 2,
} // biome-ignore format: a table reads better in rows

const signs: Readonly<Record<string, string>> = { '£': 'GBP', '€': 'EUR', $: 'USD' }

/** Spellings behind an amount; codes that are also words of a workshop, such as CAD, are left to `readMoney`. */
const moneyNames: Readonly<Record<string, string>> = {
  GBP: 'GBP', EUR: 'EUR', USD: 'USD', AUD: 'AUD', NZD: 'NZD', CHF: 'CHF', SEK: 'SEK', NOK: 'NOK', DKK: 'DKK', JPY: 'JPY',
  PLN: 'PLN', CZK: 'CZK', ZAR: 'ZAR', INR: 'INR', quid: 'GBP', euro: 'EUR', euros: 'EUR', dollar: 'USD', dollars: 'USD',
  'US dollars': 'USD', 'pounds sterling': 'GBP', 'pound sterling': 'GBP', '€': 'EUR', '£': 'GBP',
} // biome-ignore format: a table reads better in rows

/** Spellings of the hundredth part of a pound. */
export const namesOfPence: readonly string[] = ['p', 'pence']

/** Digits of a currency's smallest coin, null for a currency that the table has not. */
export const minorDigits = (currency: string): number | null => minorUnits[currency] ?? null

/** The currency of a sign; `$` counts as the dollar of the United States. */
export const currencyOfSign = (sign: string): string | null => signs[sign] ?? null

/** The sign of a currency, or its code where it has none. */
export const signOfCurrency = (currency: string): string | null =>
  Object.keys(signs).find(sign => signs[sign] === currency) ?? null

/** Names of money that may follow an amount in prose, with their currency. */
export const namesOfMoney: readonly (readonly [string, string])[] = Object.entries(moneyNames)
