import type { Found, FoundMember, Inputs } from './input.ts'
import { workOut } from './term.ts'

/** What `compute` is given: SI numbers, words, lists of words, members with their fields; null for what may be absent and is. */
export type Plain = number | string | null | readonly number[] | readonly string[] | readonly PlainMember[]

interface PlainMember {
  readonly path: string
  readonly name: string
  readonly [field: string]: Plain
}

export function plainOf(inputs: Inputs, found: Readonly<Record<string, Found>>): Record<string, Plain> {
  return Object.fromEntries(Object.keys(inputs).map(name => [name, plainFound(found[name])]))
}

function plainFound(found: Found | undefined): Plain {
  switch (found?.type) {
    case 'figure':
      return workOut(found.term)
    case 'figures':
      return found.terms.map(term => workOut(term))
    case 'words':
    case 'list':
      return found.words
    case 'members':
      return found.members.map(plainMember)
    default:
      return null
  }
}

function plainMember({ path, name, fields }: FoundMember): PlainMember {
  return {
    ...Object.fromEntries(Object.entries(fields).map(([field, found]) => [field, plainFound(found)])),
    path,
    name,
  }
}
