import type { Span } from './note-source.ts'

/** The line of a text that holds an offset, without its line end. */
export function lineAt(text: string, at: number): Span {
  const start = text.lastIndexOf('\n', at - 1) + 1
  const end = text.indexOf('\n', start)
  const whole = end === -1 ? text.length : end
  return { start, end: text[whole - 1] === '\r' ? whole - 1 : whole }
}

export function indentOf(text: string, line: Span): number {
  return /^[ \t]*/.exec(text.slice(line.start, line.end))?.[0].length ?? 0
}

/** Blanks a line and what follows it at `indent` columns and more; every other offset stays what it was. */
export function withoutEntry(text: string, first: Span, indent: number): string {
  let end = first.end
  while (end < text.length) {
    const line = lineAt(text, text.indexOf('\n', end) + 1)
    const words = text.slice(line.start, line.end).trim()
    const belongs = words === '' || indentOf(text, line) >= indent || /^(?:[}\]]+,?|: .*)$/.test(words)
    if (!belongs || line.end <= end) break
    end = line.end
  }
  return text.slice(0, first.start) + text.slice(first.start, end).replace(/[^\r\n]/g, ' ') + text.slice(end)
}

/** `  name: see: this` → the span of `see: this`; the whole line where it has no key. */
export function valueSpan(text: string, line: Span): Span {
  const written = text.slice(line.start, line.end)
  const lead = /^[ \t]*(?:- +)*(?:(?:"[^"]*"|'[^']*'|[^\s:#"'][^:]*?)[ \t]*:[ \t]+)?/.exec(written)?.[0] ?? ''
  return { start: line.start + lead.length, end: line.start + written.trimEnd().length }
}
