import { styleText } from 'node:util'
import type { Finding, Severity } from '../findings/finding.ts'

const colours = { error: 'red', warning: 'yellow', note: 'cyan' } as const satisfies Record<Severity, string>

/** Findings as lines for a terminal: place, severity, rule, sentence, mend, related places. */
export function reportFindings(findings: readonly Finding[], colour: boolean): string {
  return findings.map(found => reportOne(found, colour)).join('\n')
}

function reportOne(found: Finding, colour: boolean): string {
  const paint = (style: Parameters<typeof styleText>[0], text: string): string =>
    colour ? styleText(style, text, { validateStream: false }) : text
  const place = paint('bold', `${found.file}:${found.line}:${found.column}`)
  const lines = [`${place} ${paint(colours[found.severity], found.severity)} ${found.rule}`, `  ${found.message}`]
  if (found.mend !== null) lines.push(...mendLines(found.mend))
  for (const related of found.related)
    lines.push(`  see ${related.file}:${related.line}:${related.column} ${related.message}`)
  return lines.join('\n')
}

/** A mend is a sentence, or what to write in place of what was written. */
function mendLines(mend: string): string[] {
  const isSentence = /^(write|or|set) /.test(mend)
  return mend.split('\n').map((line, at) => `  ${isSentence ? '' : at === 0 ? 'write: ' : '       '}${line}`)
}

/** True where a stream is a terminal that shows colour and nobody asked for none. */
export function showsColour(stream: { isTTY?: boolean }): boolean {
  return stream.isTTY === true && (process.env.NO_COLOR ?? '') === ''
}
