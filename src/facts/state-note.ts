import type { Finding } from '../findings/finding.ts'
import { comparePlaces } from '../findings/place.ts'
import type { Note } from '../notes/note.ts'
import type { Fact } from './fact.ts'
import { kindsStated } from './kinds-stated.ts'
import { numberFigures } from './number-figures.ts'
import { lastGroup } from './own-groups.ts'
import { readBuildHead } from './read-build-head.ts'
import { readSessionHead } from './read-head.ts'
import type { Sheet } from './sheet.ts'
import { stateBody } from './state-body.ts'
import { stateBuild } from './state-build.ts'
import { stateInspection } from './state-inspection.ts'
import type { StateOptions } from './state-options.ts'
import { stateSession } from './state-session.ts'
import type { StatedNote } from './stated-note.ts'

/** All that one note states: facts and figures with their places, its body with the figures named, and what is wrong with it. */
export function stateNote(note: Note, options: StateOptions): StatedNote {
  const body = structuredClone(note.body)
  const sheet = emptySheet(note, options)
  const session = note.kind === 'session' ? readSessionHead(sheet, note) : null
  const build = note.kind === 'build' ? readBuildHead(sheet, note) : null
  stateFront(sheet, note)
  stateBody(sheet, body, kindsStated(note.front))
  const { facts, figures } = numberFigures({ ...sheet, body })
  return { session, build, facts: inOrder(facts), figures, body, findings: allFindings(note.findings, sheet.findings) }
}

function emptySheet({ kind, id, file, body, findings }: Note, options: StateOptions): Sheet {
  const session = kind === 'session' ? id : null
  const groups = { last: lastGroup(body) }
  return { file, session, options, facts: [], figures: [], findings: [], groups, reported: findings }
}

function stateFront(sheet: Sheet, { kind, front }: Note): void {
  if (front === null) return
  if (kind === 'session') stateSession(sheet, front)
  else if (kind === 'build') stateBuild(sheet, front)
  else stateInspection(sheet, front)
}

const inOrder = (facts: readonly Fact[]): Fact[] =>
  facts.toSorted((a, b) => a.place.line - b.place.line || a.place.column - b.place.column)

/** What reading found and what stating found, in the order of the file; one that was told at the same place by the same rule is told once. */
function allFindings(read: readonly Finding[], stated: readonly Finding[]): Finding[] {
  const told = new Set(read.map(keyOf))
  return [...read, ...stated.filter(found => !told.has(keyOf(found)))].toSorted(comparePlaces)
}

const keyOf = ({ rule, line, column }: Finding): string => `${rule} ${line}:${column}`
