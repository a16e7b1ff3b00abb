/** What a category of filament lamp takes at its rated voltage, in watts; two filaments give two. */
export interface LampCategory {
  readonly category: string
  readonly at12V: readonly number[]
  readonly at24V: readonly number[] | null
  /** The greatest that a sheet lets it take at its test voltage of 13.5 V, where that was read. */
  readonly most: readonly number[] | null
  /** False: from memory, the sheet was not read. */
  readonly isRead: boolean
}

const row = (category: string, at12V: readonly number[], more: Partial<LampCategory> = {}): LampCategory => ({
  category,
  at12V,
  at24V: null,
  most: null,
  isRead: false,
  ...more,
})

/** UN Regulation 37: PY21/5W by its sheet, H1 and H3 by an encyclopaedia's list, the rest from memory. */
export const lampCategories: readonly LampCategory[] = [
  row('PY21/5W', [21, 5], { most: [26.5, 6.6], isRead: true }),
  row('H1', [55], { at24V: [70], isRead: true }),
  row('H3', [55], { at24V: [70], isRead: true }),
  row('P21/5W', [21, 5]),
  row('P21W', [21]),
  row('PY21W', [21]),
  row('H21W', [21]),
  row('R10W', [10]),
  row('R5W', [5]),
  row('W5W', [5]),
  row('C5W', [5]),
  row('T4W', [4]),
  row('H4', [60, 55]),
  row('H7', [55]),
]

/** The categories that words of a note name, `two P21W bulbs`, each once. */
export function categoriesIn(words: string): LampCategory[] {
  const said = words.toUpperCase()
  return lampCategories.filter(({ category }) =>
    new RegExp(`(?<![A-Z0-9/])${category.replace('/', '\\/')}(?![A-Z0-9/])`).test(said),
  )
}

/** `UN R37 rates H3 at 55 W at 12 V`, and how sure that is. */
export function sayCategory({ category, at12V, at24V, most, isRead }: LampCategory, nominal: number): string {
  const is24 = nominal > 18
  const watts = is24 ? at24V : at12V
  if (watts === null) return `UN R37 has ${category}; what it takes at 24 V is not held here.`
  const sum = watts.map(each => `${each} W`).join(' and ')
  const amperes = watts.map(each => `${(each / (is24 ? 24 : 12)).toFixed(2)} A`).join(' and ')
  const hot = most === null || is24 ? '' : `, at most ${most.map(each => `${each} W`).join(' and ')} at 13.5 V`
  return `UN R37 rates ${category} at ${sum}, ${amperes} at ${is24 ? 24 : 12} V${hot}${isRead ? '' : ' (from memory)'}.`
}
