import type { Span } from './note-source.ts'
import { quoteYaml } from './quote-yaml.ts'
import type { Comment } from './read-marks.ts'

interface HashComment extends Span {
  /** As YAML took it for a comment. */
  readonly text: string
  /** The value in quotes, with the words behind the `#`. */
  readonly mend: string
}

/** Comments behind a value that begin with `#` and a letter or digit: more likely a number of a part than a remark. */
export function hashComments(yaml: string, comments: readonly Comment[]): HashComment[] {
  return comments.flatMap(comment => {
    const text = yaml.slice(comment.start, comment.end)
    const before = yaml.slice(yaml.lastIndexOf('\n', comment.start) + 1, comment.start)
    if (!/^#[\p{L}\p{N}]/u.test(text) || before.trim() === '') return []
    const words = comment.inFlow ? (/^[^,}\]]*/.exec(text)?.[0].trimEnd() ?? text) : text.trimEnd()
    return [
      {
        start: comment.start,
        end: comment.start + words.length,
        text: words,
        mend: quoteYaml(unquoted(valueBefore(before, comment.inFlow)) + words),
      },
    ]
  })
}

/** `  number: T-60 ` → `T-60 `, with the blanks before the `#`. */
function valueBefore(line: string, inFlow: boolean): string {
  const block = line.replace(/^[ \t]*(?:- +)*/, '').replace(/^(?:"[^"]*"|'[^']*'|[^:]*?)[ \t]*:(?:[ \t]+|$)/, '')
  return inFlow ? (/(?:[{[,]|:[ \t])[ \t]*((?:(?![{[,]|:[ \t]).)*)$/.exec(line)?.[1] ?? block) : block
}

function unquoted(value: string): string {
  return value.replace(/^"([^"]*)"([ \t]*)$/, '$1$2').replace(/^'([^']*)'([ \t]*)$/, '$1$2')
}
