import type { Check } from '../checker/check.ts'
import type { Limit, Setter } from '../checker/limit.ts'

/** Where a check has its formula and its limits from, as its file says it, and what of that nobody looked up. */
export interface Provenance {
  readonly formula: string
  /** One for each limit that differs; none for a working. */
  readonly limits: readonly { readonly aspects: readonly string[]; readonly who: Setter; readonly source: string }[]
  /** The clauses that say they are from memory, or have no source. */
  readonly unseen: readonly string[]
}

/** Reads the sources of a check off its file. */
export function provenanceOf(check: Check): Provenance {
  const formula = `${check.source.title}, ${check.source.section}`
  const limits = distinctLimits(check)
  const texts = [formula, ...limits.map(({ source }) => source), ...(check.notes ?? [])]
  return { formula, limits, unseen: [...new Set(texts.flatMap(unseenIn))] }
}

function distinctLimits(check: Check): Provenance['limits'] {
  const own: readonly (readonly [string | null, Limit | null])[] = [
    [null, check.limit],
    ...Object.entries(check.aspects ?? {}).map(([aspect, { limit }]) => [aspect, limit] as const),
  ]
  const all = own.flatMap(([aspect, limit]) =>
    [limit, limit?.instead?.limit ?? null].flatMap(one => (one === null ? [] : [{ aspect, limit: one }])),
  )
  const bySource = new Map<string, { aspects: string[]; who: Setter; source: string }>()
  for (const { aspect, limit } of all) {
    const known = bySource.get(limit.source) ?? { aspects: [], who: limit.who, source: limit.source }
    if (aspect !== null) known.aspects.push(aspect)
    bySource.set(limit.source, known)
  }
  return [...bySource.values()]
}

/** The clauses between stops and semicolons that say so: `k of copper, from memory`; one that begins with *both* takes what it speaks of along. */
function unseenIn(text: string): string[] {
  const clauses = text.split(/(?<=[.;])\s+|;\s*/).map(clause => clause.replace(/[.;]$/, '').trim())
  return clauses.flatMap((clause, at) => {
    if (!/from memory|no source|not seen/.test(clause)) return []
    const before = /^both\b/.test(clause) ? clauses[at - 1] : undefined
    return [before === undefined ? clause : `${before}; ${clause}`]
  })
}
