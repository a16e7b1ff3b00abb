import { bracketFaultWords } from './bracket-fault-words.ts'
import type { Fault } from './find-fences.ts'
import { columnWords, keyWords, quotableWords, quoted, trailingWords } from './line-fault-words.ts'
import type { Span } from './note-source.ts'
import { shown, type Trouble, tooDeep, wordsAt } from './trouble.ts'
import { lineAt, valueSpan } from './yaml-lines.ts'

/** What the YAML reader found, or what is refused, in words for the builder. */
export function faultWords(trouble: Trouble, yaml: string): Fault {
  if (trouble.around !== null && !sameInside.includes(trouble.code)) return bracketFaultWords(trouble, yaml)
  const words = wordsOf[trouble.code as keyof typeof wordsOf] ?? otherWords
  return words(trouble, yaml)
}

const sameInside: readonly string[] = ['BAD_DQ_ESCAPE', 'NON_STRING_KEY', 'REFUSED'] // In brackets and quotes as outside.

const wordsOf = {
  REFUSED: refusalWords,
  BLOCK_AS_IMPLICIT_KEY: (trouble: Trouble, yaml: string) => quotableWords(trouble, yaml, 'second `: ` in'),
  BAD_SCALAR_START: (trouble: Trouble, yaml: string) =>
    quotableWords(trouble, yaml, `\`${yaml[trouble.start]}\` at the start of`),
  UNEXPECTED_TOKEN: trailingWords,
  MULTILINE_IMPLICIT_KEY: keyWords,
  MISSING_CHAR: keyWords,
  BAD_INDENT: columnWords,
  TAB_AS_INDENT: tabWords,
  BAD_DQ_ESCAPE: escapeWords,
  MULTIPLE_DOCS: ({ start }: Trouble, yaml: string) =>
    lineWords(lineAt(yaml, start), yaml, 'a key, or `---` alone to close front matter'),
  NON_STRING_KEY: ({ start }: Trouble, yaml: string) =>
    lineWords({ start, end: lineAt(yaml, start).end }, yaml, 'a key that is a word'),
  RESOURCE_EXHAUSTION: ({ start, end }: Trouble) => ({ start, end, message: tooDeep, mend: null }),
}

/** An alias, anchor, tag or directive: refused, since it means something else than it says. */
function refusalWords({ start, end, message: what, around }: Trouble, yaml: string): Fault {
  const mark = yaml.slice(start, end)
  const value = valueSpan(yaml, lineAt(yaml, start))
  const isLead = around === null && value.start === start
  const isText = isLead && !/^(?:\S+\s+[{[]|[&!]\S*$|%)/.test(yaml.slice(start, value.end))
  const instead = mark.startsWith('%')
    ? 'keys with values'
    : `the value itself: quote a text that begins with \`${mark[0]}\``
  const message = `Unexpected \`${shown(mark)}\`, which YAML takes for ${what}, expected ${instead}.`
  return { start, end, message, mend: isText ? quoted(yaml, value) : null }
}

function tabWords({ start }: Trouble, yaml: string): Fault {
  const blanks = /^[ \t]*/.exec(yaml.slice(start))?.[0] ?? ''
  const message = 'Unexpected tab before a key, expected spaces: YAML nests by spaces only.'
  return { start, end: start + blanks.length, message, mend: blanks.replaceAll('\t', '  ') }
}

function escapeWords({ start }: Trouble, yaml: string): Fault {
  const written = yaml.slice(start, start + 2)
  const message = `Unexpected \`${written}\` in double quotes, expected an escape that YAML knows: write \`\\${written}\`, or use single quotes.`
  return { start, end: start + 2, message, mend: `\\${written}` }
}

function lineWords(span: Span, yaml: string, expected: string): Fault {
  const written = yaml.slice(span.start, span.end).trimEnd()
  const message = `Unexpected \`${shown(written)}\` in front matter, expected ${expected}.`
  return { start: span.start, end: span.start + written.length, message, mend: null }
}

function otherWords(trouble: Trouble, yaml: string): Fault {
  const { start, end } = trouble
  const message = `Unexpected \`${shown(wordsAt(yaml, trouble))}\` in front matter, expected YAML (${trouble.message}).`
  return { start, end, message, mend: null }
}
