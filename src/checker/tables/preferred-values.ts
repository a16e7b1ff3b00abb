/** IEC 60063: the values in which resistors are sold, of one decade, as a public page prints them. */
export const preferredValues = {
  E12: [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82],
  E24: [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91],
} as const

/** The values of a series next to one, in the same unit: below and above, neither the value itself. */
export function nearestPreferred(
  series: keyof typeof preferredValues,
  value: number,
): { below: number; above: number } {
  const decade = 10 ** Math.floor(Math.log10(value) - 1)
  const row = preferredValues[series]
  // Powers of ten are not exact in binary, so what is within a billionth counts as the value itself.
  const scaled = [(row.at(-1) ?? 1) / 10, ...row, row[0] * 10, row[1] * 10].map(step => rounded(step * decade))
  return {
    below: scaled.findLast(step => step < value * (1 - 1e-9)) ?? Number.NaN,
    above: scaled.find(step => step > value * (1 + 1e-9)) ?? Number.NaN,
  }
}

const rounded = (ohms: number): number => Number(ohms.toPrecision(3))
