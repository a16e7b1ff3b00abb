import { identifierOf } from '../facts/identifier.ts'
import type { Sentence } from './sentences.ts'

export interface ProposedJob {
  readonly words: string
  readonly before: 'road' | 'inspection' | null
}

const wanted =
  /\b(?:needs? to|need(?:s)? to be|must|have to|has to|got to|gotta|remember to|don['’]t forget to|still to|to ?do:|next time)\s*:?\s+(?!have\b|be\b)(.+)$/is

/** What a sentence says must still be done, in its own words. */
export function proposeJob({ text }: Sentence): ProposedJob | null {
  if (/^[-*+] \[[ xX]\]/.test(text)) return null // a task item already
  const found = wanted.exec(text)?.[1]
  if (found === undefined) return null
  const words = found.replace(/\s+/g, ' ').replace(/[.!?\s]+$/, '')
  return identifierOf(words) === '' ? null : { words, before: holdsUp(words) }
}

function holdsUp(words: string): ProposedJob['before'] {
  if (/\bbefore\b.*\broad\b/i.test(words)) return 'road'
  return /\bbefore\b.*\b(?:inspection|test)\b/i.test(words) ? 'inspection' : null
}
