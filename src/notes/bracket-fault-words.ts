import type { Fault } from './find-fences.ts'
import { shown, type Trouble, wordsAt } from './trouble.ts'
import { lineAt } from './yaml-lines.ts'

/** What went wrong within quotes, braces or brackets: they are shown from where they open, to the end of that line. */
export function bracketFaultWords(trouble: Trouble, yaml: string): Fault {
  const open = trouble.around?.start ?? trouble.start
  const written = yaml.slice(open, lineAt(yaml, open).end).trimEnd()
  if (/end with a [}\]]|closing/.test(trouble.message)) return unclosed(open, written)
  const word = wordsAt(yaml, trouble)
  const expected = /^[}\]]/.test(word)
    ? 'one closing bracket for each opening one'
    : 'commas between what stands in it: quote a text that holds `: `, brackets, braces or a comma'
  const message = `Unexpected \`${shown(word)}\` in \`${shown(written)}\`, expected ${expected}.`
  return { start: trouble.start, end: trouble.start + word.length, message, mend: null }
}

function unclosed(start: number, written: string): Fault {
  const closer = { '{': '}', '[': ']' }[written[0] ?? ''] ?? written[0]
  const message = `Unexpected end of \`${shown(written)}\`, expected a closing \`${closer}\`.`
  return { start, end: start + written.length, message, mend: written + (closer === '}' ? ' }' : closer) }
}
