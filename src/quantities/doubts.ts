import { ambiguousUnits } from './ambiguous-units.ts'
import type { ReadingDoubt, ReadOptions } from './quantity.ts'

interface Span {
  readonly start: number
  readonly end: number
}

/** A spelling that may be more than one unit. */
export function unitDoubt(source: string, { start, end }: Span, key: string): ReadingDoubt {
  const text = source.slice(start, end)
  const unit = ambiguousUnits.find(one => one.key === key)
  const message = `Unexpected \`${text}\`, expected a unit that is clear: this may be ${unit?.question ?? 'more than one unit'}; nothing was read`
  return { rule: 'ambiguous-unit', text, start, end, message, mend: unit?.mend ?? null }
}

/** Figures with the decimal mark that the build does not use. */
export function markDoubt(source: string, { start, end }: Span, decimal: ReadOptions['decimal']): ReadingDoubt {
  const text = source.slice(start, end)
  const [expected, other] = decimal === 'point' ? ['.', ','] : [',', '.']
  const message = `Unexpected \`${text}\`, expected \`${expected}\` as the decimal mark, since build.md says \`decimal: ${decimal}\`; nothing was read`
  return { rule: 'decimal-mark', text, start, end, message, mend: `write \`${text.replace(other, expected)}\`` }
}

/** `Cut 2 350 mm lengths`: one figure with its thousands set apart, or a count and a figure. */
export function twoReadingsDoubt(source: string, { start, end }: Span): ReadingDoubt {
  const text = source.slice(start, end)
  const [count = '', ...others] = text.split(' ')
  const rest = others.join(' ')
  const one = `${count}${rest.includes('/') ? '-' : ''}${rest}`
  const message = `Unexpected \`${text}\`, expected one figure: this was read as \`${one}\`, and may be ${count} of \`${rest}\``
  return { rule: 'two-readings', text, start, end, message, mend: `write \`${count} × ${rest}\` or \`${one}\`` }
}

/** A size told in eighths or sixteenths without a unit. */
export function missingUnitDoubt(source: string, { start, end }: Span): ReadingDoubt {
  const text = source.slice(start, end)
  const message = `Unexpected \`${text}\` without a unit, expected one such as inches; nothing was read`
  return { rule: 'unit-missing', text, start, end, message, mend: `write \`${text} inches\` if inches are meant` }
}
