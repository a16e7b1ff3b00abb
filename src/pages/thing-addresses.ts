import type { Verdict } from '../checker/verdict.ts'
import type { Subject } from '../facts/fact.ts'
import { anchorName, pageAddress } from './addresses.ts'

/** Where a thing has its page, or its place on one. */
export function subjectAddress({ kind, id }: Subject): string {
  switch (kind) {
    case 'part':
    case 'volume':
      return pageAddress('parts', id)
    case 'circuit':
      return pageAddress('circuits', id)
    case 'connector':
      return pageAddress('connectors', id)
    case 'system':
      return pageAddress('systems', id)
    case 'loom':
      return `${pageAddress('wiring')}#${anchorName('l', id)}`
    case 'earth-point':
      return `${pageAddress('wiring')}#${anchorName('e', id)}`
    case 'donor':
      return `${pageAddress('parts')}#${anchorName('d', id)}`
    case 'vehicle':
      return `${pageAddress('measurements')}#${anchorName('t', 'vehicle')}`
    case 'build':
      return pageAddress('build')
  }
}

/** The page of one answer: `checks/voltage-drop/fuel-pump/index.html`; a slash in a subject is written as a comma. */
export function verdictAddress({ check, subject, aspect }: Pick<Verdict, 'check' | 'subject' | 'aspect'>): string {
  // A comma of the subject's own is doubled, so that two subjects never share a page.
  const folder = subject.replaceAll(',', ',,').replaceAll('/', ',')
  return pageAddress('checks', check, folder, ...(aspect === null ? [] : [aspect]))
}

/** A note's own page: `build/index.html` for build.md. */
export function noteAddress(session: string | null): string {
  return session === null ? pageAddress('build') : pageAddress('sessions', session)
}

/** The very words in which a figure was written, or its note where it has no anchor. */
export function wordsAddress(at: { readonly session: string | null; readonly figure: string | null }): string {
  return at.figure === null ? noteAddress(at.session) : `${noteAddress(at.session)}#${at.figure}`
}
