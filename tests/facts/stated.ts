import type { Fact, PropertyFact } from '../../src/facts/fact.ts'
import { readSettings } from '../../src/facts/read-settings.ts'
import { stateNote } from '../../src/facts/state-note.ts'
import type { StateOptions } from '../../src/facts/state-options.ts'
import type { StatedNote } from '../../src/facts/stated-note.ts'
import type { Finding } from '../../src/findings/finding.ts'
import type { Place } from '../../src/findings/place.ts'
import { readNote } from '../../src/notes/read-note.ts'

export const sessionFile = 'content/sessions/2026-03-07-tank.md'

/** Reads and states the text of a note. */
export function stated(text: string, file = sessionFile, options: StateOptions = readSettings(null)): StatedNote {
  return stateNote(readNote({ file, bytes: new TextEncoder().encode(text) }, options), options)
}

/** A session note with these lines of front matter under a title and a date. */
export const session = (lines: string, body = ''): string =>
  `---\ntitle: Tank\ndate: 2026-03-07\n${lines}\n---\n${body}`

/** States front matter of a session note; its first line is line 4 of the file. */
export const statedFront = (lines: string, options?: StateOptions): StatedNote =>
  stated(session(lines), sessionFile, options)

/** Findings as `4:9-4:17 rule message → mend`. */
export const told = ({ findings }: { findings: readonly Finding[] }): string[] =>
  findings.map(found => `${span(found)} ${found.rule} ${found.message}${found.mend === null ? '' : ` → ${found.mend}`}`)

export const span = ({ line, column, endLine, endColumn }: Place): string =>
  line === endLine ? `${line}:${column}-${endColumn}` : `${line}:${column}-${endLine}:${endColumn}`

export function factsOf<T extends Fact['type']>({ facts }: StatedNote, type: T): Extract<Fact, { type: T }>[] {
  return facts.filter((fact): fact is Extract<Fact, { type: T }> => fact.type === type)
}

/** Properties as `circuit:fuel-pump load = 7 A`, in the order of the text. */
export const properties = (note: StatedNote): string[] =>
  factsOf(note, 'property').map(({ subject, key, value }) => `${subject.kind}:${subject.id} ${key} = ${written(value)}`)

function written(value: PropertyFact['value']): string {
  switch (value.type) {
    case 'quantity':
      return `${value.quantity.text} (${value.quantity.dimension})`
    case 'words':
      return value.words.text
    case 'list':
      return `[${value.entries.map(({ words }) => words.text).join(', ')}]`
    case 'shapes':
      return value.shapes.map(({ text }) => text).join(' & ')
    case 'nothing':
      return 'nothing'
  }
}

/** Figures as `q-1 860 mm (measurement fuel-tank/length)`. */
export const figures = ({ figures: list }: StatedNote): string[] =>
  list.map(({ id, quantity, role, path }) => `${id} ${quantity.text} (${role}${path === null ? '' : ` ${path}`})`)

/** References as `donor corvane (near-only)`. */
export const references = (note: StatedNote): string[] =>
  factsOf(note, 'reference').map(({ to, name, strictness }) => `${to} ${name} (${strictness})`)

/** What stands at a place of a text. */
export function slice(text: string, { line, column, endLine, endColumn }: Place): string {
  const lines = text.split('\n')
  if (line === endLine) return (lines[line - 1] ?? '').slice(column - 1, endColumn - 1)
  const inner = lines.slice(line, endLine - 1)
  return [(lines[line - 1] ?? '').slice(column - 1), ...inner, (lines[endLine - 1] ?? '').slice(0, endColumn - 1)].join(
    '\n',
  )
}
