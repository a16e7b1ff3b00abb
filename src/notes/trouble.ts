import type { YAMLError } from 'yaml'
import type { Span } from './note-source.ts'

/** A place where reading failed, as the YAML reader gives it, or a mark that is refused. */
export interface Trouble extends Span {
  readonly code: YAMLError['code'] | 'REFUSED'
  readonly message: string
  /** The outermost braces, brackets or quotes that it stands in or closes. */
  readonly around: Span | null
}

/** Mappings and lists within each other; the format's own need six. */
export const deepestLevel = 32
export const tooDeep = `Unexpected nesting, expected at most ${deepestLevel} levels.`

/** What stands where reading failed, up to the end of its line. */
export function wordsAt(yaml: string, { start, end }: Span): string {
  const [first = ''] = yaml
    .slice(start, Math.max(end, start + 1))
    .trim()
    .split('\n')
  return first.trim()
}

/** A text as a message shows it: not over 60 characters. */
export function shown(text: string): string {
  return text.length > 60 ? `${text.slice(0, 59).trimEnd()}…` : text
}
