import type { Finding } from '../findings/finding.ts'
import type { Taken } from './taken.ts'
import type { Withheld } from './withheld.ts'

interface FindingsGround {
  readonly withheld: Withheld
  /** What is wrong by all notes together, found again in what the edition may see. */
  readonly again: readonly Finding[]
  /** What single notes were found wrong in. */
  readonly stated: readonly Finding[]
  readonly taken: readonly Taken[]
  /** What a rule means, in the program's own words. */
  readonly meaningOf: (rule: Finding['rule']) => string
}

/**
 * The findings of an edition. What only all notes together show is told as it is found again; what a single note was found
 * wrong in quotes the note as written, so only the rule and the line are told. Nothing is told of lines with something withheld.
 */
export function tellFindings(whole: readonly Finding[], ground: FindingsGround): Finding[] {
  const again = new Map(ground.again.map(found => [keyOf(found), found]))
  const stated = new Set(ground.stated.map(keyOf))
  return whole.flatMap(found => {
    if (isAboutHidden(found, ground)) return []
    const seen = again.get(keyOf(found))
    if (seen !== undefined) return [seen]
    return stated.has(keyOf(found)) ? [bare(found, ground.meaningOf)] : []
  })
}

const keyOf = ({ rule, file, line, column }: Finding): string => `${rule} ${file}:${line}:${column}`

const aboutCost = /(?:^|[/.:])(?:cost|price|rates|spend|receipt)\b/
const aboutSource = /^donor:|(?:^|[/.])from\b/

function isAboutHidden({ rule, about, file, line, endLine }: Finding, { withheld, taken }: FindingsGround): boolean {
  if (taken.some(({ place }) => place.file === file && place.line <= endLine && line <= place.endLine)) return true
  if (withheld.kinds.has('cost') && (rule === 'no-rate' || about.some(path => aboutCost.test(path)))) return true
  return withheld.kinds.has('source') && about.some(path => aboutSource.test(path))
}

function bare(found: Finding, meaningOf: FindingsGround['meaningOf']): Finding {
  return { ...found, message: meaningOf(found.rule), mend: null, about: [], related: [] }
}
