import type { Words } from '../facts/fact.ts'

/** What becomes of the words and of the plain strings in a piece of the record; places stay as they are. */
interface Mapping {
  readonly words: (words: Words) => Words
  /** `path`: the keys that lead to it, `replaces.id`. */
  readonly text: (text: string, path: string) => string
}

/** Any piece of the record made anew, every string in it mapped: a field that is added later cannot be forgotten. */
export function mapStrings<T>(value: T, mapping: Mapping): T {
  return mapAny(value, '', mapping) as T
}

function mapAny(value: unknown, path: string, mapping: Mapping): unknown {
  if (typeof value === 'string') return mapping.text(value, path)
  if (Array.isArray(value)) return value.map(entry => mapAny(entry, path, mapping))
  if (typeof value !== 'object' || value === null || isPlace(value)) return value
  if (isWords(value)) return mapping.words(value)
  return Object.fromEntries(
    Object.entries(value).map(([name, inner]) => [
      name,
      mapAny(inner, path === '' ? name : `${path}.${name}`, mapping),
    ]),
  )
}

export function isWords(value: object): value is Words {
  return 'marks' in value && 'text' in value && typeof value.text === 'string' && Array.isArray(value.marks)
}

export function isPlace(
  value: object,
): value is { file: string; line: number; column: number; endLine: number; endColumn: number } {
  return 'file' in value && 'endLine' in value && 'endColumn' in value && !('rule' in value) && !('ref' in value)
}
