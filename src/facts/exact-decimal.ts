/** An exact rational, `59/8` or `184`, as a decimal; null where it has no end, as 1/3 has. */
export function exactDecimal(rational: string): string | null {
  const match = /^(-?)(\d+)(?:\/(\d+))?$/.exec(rational)
  if (match === null) return null
  const [, sign = '', over = '0', under = '1'] = match
  const places = placesOf(BigInt(under))
  if (places === null) return null
  const digits = ((BigInt(over) * 10n ** BigInt(places)) / BigInt(under)).toString().padStart(places + 1, '0')
  const whole = digits.slice(0, digits.length - places)
  return `${sign}${whole}${places === 0 ? '' : `.${digits.slice(-places)}`}`
}

/** The digits behind the point that a division by this number needs; null where it has a factor besides 2 and 5. */
function placesOf(under: bigint): number | null {
  if (under === 0n) return null
  let [twos, fives, rest] = [0, 0, under]
  for (; rest % 2n === 0n; rest /= 2n) twos += 1
  for (; rest % 5n === 0n; rest /= 5n) fives += 1
  return rest === 1n ? Math.max(twos, fives) : null
}

/** At least two digits behind the point, as money is written. */
export function asMoney(decimal: string): string {
  const [whole = '0', rest = ''] = decimal.split('.')
  return `${whole}.${rest.padEnd(2, '0')}`
}

/** A plain positive number as an exact decimal, `2` or `2.5`; null for anything else. */
export function positiveDecimal(text: string, decimal: 'point' | 'comma'): string | null {
  const point = decimal === 'comma' ? text.trim().replace(',', '.') : text.trim()
  return /^\d+(?:\.\d+)?$/.test(point) && /[1-9]/.test(point) ? point : null
}
