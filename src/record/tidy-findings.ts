import type { StatedNote } from '../facts/stated-note.ts'
import type { Finding } from '../findings/finding.ts'
import { comparePlaces } from '../findings/place.ts'
import { compareText } from './order-sessions.ts'

/** One mistake gives one finding: what a note was already told of, or told twice, is left out. In the order of the places. */
export function tidyFindings(findings: readonly Finding[], notes: readonly StatedNote[]): Finding[] {
  const told = new Set(notes.flatMap(note => note.findings.map(keyOf)))
  const fresh = findings.filter(found => {
    const isTold = told.has(keyOf(found))
    told.add(keyOf(found))
    return !isTold
  })
  return fresh.sort((one, other) => comparePlaces(one, other) || compareText(one.rule, other.rule))
}

const keyOf = ({ rule, file, line, column }: Finding): string => `${rule} ${file}:${line}:${column}`
