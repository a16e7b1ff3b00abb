import type { Words } from '../facts/fact.ts'
import { moneySpans } from './money-spans.ts'
import type { Span } from './span.ts'
import { isHidden, neutralMark, type Withheld } from './withheld.ts'

/** Colons and a name that may be meant as a private mark, left standing in plain text: nobody knows how far it was to reach. */
const strayMark = /:[a-z]*(?:priv|pirv|rivat|prvi)[a-z]*\s*[[{]|:::\s*[a-z]*priv/i

/** Words as an edition may see them, with no mark left in them. */
export function coverWords({ text, marks }: Words, withheld: Withheld): Words {
  if (withheld.isWhole) return { text, marks }
  const hidden = marks.filter(mark => isHidden(withheld, kindsAt(marks, mark)))
  return { text: cover(text, hidden, withheld), marks: [] }
}

/** A text that bears no marks of its own, such as a picture's alternative text; `also` is taken out because of words around it. */
export function coverText(text: string, withheld: Withheld, also: readonly Span[] = []): string {
  return withheld.isWhole ? text : cover(text, also, withheld)
}

/** What goes from a text without being marked: amounts, names of donors. */
export function hiddenSpans(text: string, withheld: Withheld): Span[] {
  return [...(withheld.kinds.has('cost') ? moneySpans(text) : []), ...withheld.donorNames(text)]
}

/** Whether a text holds what may be meant as a private mark, where none is read. */
export const isStray = (text: string): boolean => strayMark.test(text)

function kindsAt(marks: Words['marks'], { start, end, as }: Words['marks'][number]): Words['marks'][number]['as'][] {
  return [as, ...marks.filter(other => other.start === start && other.end === end).map(other => other.as)]
}

function cover(text: string, hidden: readonly Span[], withheld: Withheld): string {
  if (isStray(text)) return neutralMark
  let covered = ''
  let at = 0
  for (const { start, end } of joined([...hidden, ...hiddenSpans(text, withheld)])) {
    covered += text.slice(at, start) + neutralMark
    at = end
  }
  return covered + text.slice(at)
}

/** Spans in order; those that overlap or touch become one, so that their number tells nothing. */
function joined(spans: readonly Span[]): Span[] {
  const merged: { start: number; end: number }[] = []
  for (const { start, end } of spans.toSorted((a, b) => a.start - b.start)) {
    const last = merged.at(-1)
    if (last !== undefined && start <= last.end) last.end = Math.max(last.end, end)
    else if (end > start) merged.push({ start, end })
  }
  return merged
}
