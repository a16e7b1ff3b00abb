import { isChecked } from '../look-up.ts'
import { partSubject, type SubjectSource } from '../subjects.ts'

/** Each part that is fitted, modified, made or trial-fitted, of whatever kind. */
export function anyParts(meaning: string): SubjectSource {
  return {
    kind: 'part',
    meaning,
    find: ({ parts }) => parts.map(part => ({ subject: partSubject(part), isCurrent: isChecked(part) })),
  }
}
