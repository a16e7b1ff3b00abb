import type { Fault } from './find-fences.ts'
import type { Span } from './note-source.ts'
import { quoteYaml } from './quote-yaml.ts'
import { shown, type Trouble, wordsAt } from './trouble.ts'
import { lineAt, valueSpan } from './yaml-lines.ts'

/** A value that reads as itself once it is in quotes. */
export function quotableWords({ start }: Trouble, yaml: string, unexpected: string): Fault {
  const value = valueSpan(yaml, lineAt(yaml, start))
  const message = `Unexpected ${unexpected} \`${shown(yaml.slice(value.start, value.end))}\`, expected a value in quotes.`
  return { ...value, message, mend: quoted(yaml, value) }
}

/** `"3" pipe"` and `{ area: 2.5 mm² } red`: something behind what is already whole. */
export function trailingWords(trouble: Trouble, yaml: string): Fault {
  const word = wordsAt(yaml, trouble)
  const value = valueSpan(yaml, lineAt(yaml, trouble.start))
  if (!/[{[]/.test(yaml[value.start] ?? '')) return quotableWords(trouble, yaml, `\`${shown(word)}\` in`)
  const message = `Unexpected \`${shown(word)}\` behind the closing bracket, expected the end of the line.`
  return { start: trouble.start, end: trouble.start + word.length, message, mend: null }
}

/** A line without `: `, or one that stands deeper than the value above it. */
export function keyWords(trouble: Trouble, yaml: string): Fault {
  const first = lineAt(yaml, trouble.start)
  const last = lineAt(yaml, trouble.end)
  const isBelowValue = last.start > first.start && /:(?:[ \t]|$)/.test(yaml.slice(first.start, first.end))
  if (isBelowValue) return columnWords({ ...trouble, start: last.start }, yaml)
  const written = yaml.slice(trouble.start, Math.min(trouble.end, first.end)).trimEnd()
  const mend = /^[\w-]+:\S/.test(written) ? written.replace(':', ': ') : null
  const message = `Unexpected \`${shown(written)}\`, expected a key, a colon and a space.`
  return { start: trouble.start, end: trouble.start + written.length, message, mend }
}

/** A line that begins in a column where no key of its mapping does. */
export function columnWords({ start }: Trouble, yaml: string): Fault {
  const line = lineAt(yaml, start)
  const written = yaml.slice(line.start, line.end)
  const words = written.trim()
  const from = line.start + written.length - written.trimStart().length
  const message = `Unexpected column of \`${shown(words)}\`, expected it in line with the keys that it belongs to.`
  return { start: from, end: from + words.length, message, mend: null }
}

/** In quotes as one text; what was in quotes before is taken out of them first. */
export function quoted(yaml: string, { start, end }: Span): string {
  return quoteYaml(yaml.slice(start, end).replace(/^(["'])(.*)\1$/, '$2'))
}
