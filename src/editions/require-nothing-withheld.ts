import { isWords } from './map-strings.ts'
import type { NameFinder } from './name-finder.ts'
import type { Withheld } from './withheld.ts'

/** Something withheld was about to be published: a fault of the program, and nothing is. The message quotes no word of it. */
export class WithheldLeft extends Error {}

interface Guard {
  readonly withheld: Withheld
  readonly find: NameFinder
}

/** The last look at what is to be published: every string and every amount in it, whatever field it is in. Throws where anything is left. */
export function requireNothingWithheld(published: unknown, guard: Guard, path = 'record'): void {
  if (typeof published === 'string') requireText(published, guard, path)
  else if (Array.isArray(published))
    for (const [at, entry] of published.entries()) requireNothingWithheld(entry, guard, `${path}/${at}`)
  else if (typeof published === 'object' && published !== null) requireObject(published, guard, path)
}

function requireObject(value: object, guard: Guard, path: string): void {
  const isMoney = 'dimension' in value && value.dimension === 'money'
  if (isMoney && guard.withheld.kinds.has('cost')) throw left(path, guard)
  if (isWords(value) && value.marks.length > 0) throw left(path, guard)
  for (const [key, inner] of Object.entries(value))
    if (!ownKeys.has(key)) requireNothingWithheld(inner, guard, `${path}/${key}`)
}

/** Keys under which only words of the program stand, or names of files that were looked at already. */
const ownKeys = new Set([
  'type',
  'dimension',
  'unit',
  'role',
  'kind',
  'action',
  'state',
  'result',
  'currency',
  'exact',
  'form',
  'scheme',
  'lacks',
  'rule',
  'severity',
  'edition',
  'withhold',
])

function requireText(text: string, guard: Guard, path: string): void {
  if (guard.find(text).length > 0) throw left(path, guard)
}

function left(path: string, { withheld }: Guard): WithheldLeft {
  return new WithheldLeft(
    `Unexpected withheld words at \`${path}\` of the edition \`${withheld.edition}\`, expected none: nothing was published.`,
  )
}
