const signs: Readonly<Record<string, string>> = { GBP: '£', EUR: '€', USD: '$' } // ISO 4217 codes; others are written out

/** An amount as a reader says it: `£1,282.35`, `−£30.00`, `85.00 SEK`. */
export function money(amount: string, currency: string): string {
  const [whole = '0', coins] = amount.replace(/^-/, '').split('.')
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',')
  const digits = coins === undefined ? grouped : `${grouped}.${coins}`
  const sign = amount.startsWith('-') ? '−' : ''
  const mark = signs[currency]
  return mark === undefined ? `${sign}${digits} ${currency}` : `${sign}${mark}${digits}`
}
