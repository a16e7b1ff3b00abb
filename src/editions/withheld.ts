import type { PrivateKind } from '../../plugins/private/node.ts'
import type { Edition } from '../record/record.ts'
import type { Span } from './span.ts'

/** What the reader sees in place of anything taken out, whatever its length. */
export const neutralMark = '[withheld]'

/** What one edition must not see. */
export interface Withheld {
  readonly edition: string
  readonly kinds: ReadonlySet<PrivateKind>
  /** The builder's own edition, in which nothing at all is taken out. */
  readonly isWhole: boolean
  /** Names of donors in a text, where sources are withheld. */
  readonly donorNames: (text: string) => readonly Span[]
}

const kindNames: readonly string[] = ['cost', 'source', 'people', 'place', 'identity'] satisfies PrivateKind[]
const isKind = (word: string): word is PrivateKind => kindNames.includes(word)

/** What an edition withholds; null where build.md names no such edition. `full` is always there. */
export function withheldBy(editions: readonly Edition[], name: string): Withheld | null {
  const named = editions.filter(edition => edition.name === name)
  if (named.length === 0 && name !== 'full') return null
  const kinds = new Set(named.flatMap(({ withhold }) => withhold).filter(isKind))
  return { edition: name, kinds, isWhole: name === 'full' && kinds.size === 0, donorNames: () => [] }
}

/** Whether something marked with these kinds is taken out; marks that did not parse are, by every edition but the whole one. */
export function isHidden(withheld: Withheld, marks: readonly (PrivateKind | 'broken')[]): boolean {
  if (withheld.isWhole || marks.length === 0) return false
  return (
    marks.some(as => as === 'broken' || withheld.kinds.has(as)) ||
    kindNames.every(kind => marks.some(as => as === kind))
  )
}
