import type { FactValue } from '../../facts/fact.ts'
import type { Held, Thing } from '../../record/record.ts'

/** What stands of a property; null where nothing was said or it was taken back. */
export function standingOf(properties: Thing['properties'], key: string): Held<FactValue> | null {
  const held = properties[key]?.at(-1)
  return held === undefined || held.value.type === 'nothing' ? null : held
}

/** The same as one line of text, as written. */
export function standingText(properties: Thing['properties'], key: string): string | null {
  const held = standingOf(properties, key)
  return held === null ? null : textOf(held.value, '; ')
}

/** A value as written, the entries of a list with something between them; null where it was taken back. */
export function textOf(value: FactValue, between: string): string | null {
  switch (value.type) {
    case 'quantity':
      return value.quantity.text
    case 'words':
      return value.words.text
    case 'list':
      return value.entries.map(({ words }) => words.text).join(between)
    case 'shapes':
      return value.shapes.map(({ text }) => text).join(between)
    case 'nothing':
      return null
  }
}
