import type { Fact, Subject } from '../facts/fact.ts'
import type { BuildHead, StatedNote } from '../facts/stated-note.ts'
import type { Finding } from '../findings/finding.ts'
import { checkDates } from './check-dates.ts'
import { checkHours } from './check-hours.ts'
import { checkReferences } from './check-references.ts'
import { type DeclaredNames, findNames } from './declared-names.ts'
import { findChanges } from './find-changes.ts'
import { findNearNames } from './find-near-names.ts'
import { findNearParts } from './find-near-parts.ts'
import { findUnlikely } from './find-unlikely.ts'
import { foldEvents, type PartCourse } from './fold-events.ts'
import { type FoldedJobs, foldJobs } from './fold-jobs.ts'
import { foldLedger } from './fold-ledger.ts'
import { type FoldedProperties, foldProperties } from './fold-properties.ts'
import { foldRules } from './fold-rules.ts'
import { listMeasurements } from './list-measurements.ts'
import { type ListedPart, listParts } from './list-parts.ts'
import { listThings } from './list-things.ts'
import { listSessions, orderSessions, type SessionNote } from './order-sessions.ts'
import { makePurse, type Purse } from './purse.ts'
import type { AsBuiltRecord } from './record.ts'
import { pathText, resolveName, splitPath } from './resolve-name.ts'
import { tidyFindings } from './tidy-findings.ts'

export interface Notes {
  readonly build: StatedNote
  readonly sessions: readonly StatedNote[]
  readonly inspection: StatedNote | null
}

export interface Surroundings {
  /** Pictures under `content/`, relative to the build folder. */
  readonly photos: readonly string[]
  /** ISO 8601; null where the run gives no date. */
  readonly today: string | null
  /** Identifiers of all checks. */
  readonly checks: readonly string[]
}

export interface Folded {
  readonly record: AsBuiltRecord
  /** What only all notes together show to be wrong; what a note's own reading found is not repeated. */
  readonly findings: Finding[]
}

/** Folds what all notes state, in the order of their dates, into the as-built record. */
export function foldFacts(notes: Notes, surroundings: Surroundings): Folded {
  const sessions = orderSessions(notes.sessions)
  const inOrder = [notes.build, ...sessions, ...(notes.inspection === null ? [] : [notes.inspection])]
  const pieces = fold({ notes, sessions, facts: inOrder.flatMap(note => note.facts) })
  const { properties, jobs, purse, facts, names, courses } = pieces
  const record = compose(pieces)
  const findings = [
    ...properties.findings,
    ...jobs.findings,
    ...purse.findings,
    ...checkDates(sessions, surroundings.today),
    ...checkHours(sessions),
    ...findUnlikely(courses),
    ...checkReferences(facts, { record, names, ...surroundings }),
    ...findNearNames(properties.placed, names),
    ...findNearParts(facts),
  ]
  return { record, findings: tidyFindings(findings, inOrder) }
}

interface Ordered {
  readonly notes: Notes
  readonly sessions: readonly SessionNote[]
  readonly facts: readonly Fact[]
}

interface Pieces extends Ordered {
  readonly head: BuildHead
  readonly names: DeclaredNames
  readonly properties: FoldedProperties
  readonly jobs: FoldedJobs
  readonly courses: ReadonlyMap<string, PartCourse>
  readonly paid: readonly ListedPart[]
  readonly purse: Purse
}

function fold(ordered: Ordered): Pieces {
  const { notes, facts } = ordered
  const head = headOf(notes.build)
  const names = findNames(facts)
  const changes = findChanges(facts)
  const properties = foldProperties(facts, { names, ...changes, approximateShare: head.approximateShare })
  const purse = makePurse(head)
  const courses = foldEvents(facts)
  const paid = listParts({ courses, names, store: properties.store, purse })
  return { ...ordered, head, names, properties, jobs: foldJobs(facts), courses, paid, purse }
}

function compose({ notes, head, sessions, facts, names, properties, jobs, paid, purse }: Pieces): AsBuiltRecord {
  const { store, placed } = properties
  const pathOf = figurePaths(properties)
  const parts = paid.map(({ part }) => part)
  const things = listThings(names, store, { parts, fence: head.fence })
  const figures = notes.build.figures.map(figure => ({ ...figure, path: pathOf(null, figure.id) ?? figure.path }))
  const ledgerGround = {
    purse,
    parts: paid.map(({ part, priced }) => ({ ...priced, onVehicle: part.onVehicle })),
    systems: things.systems.map(({ id }) => id),
    sessions: [null, ...sessions.map(({ session }) => session.id)],
  }
  return {
    build: { ...head, body: notes.build.body, figures },
    sessions: listSessions(sessions, { pathOf, by: head.by }),
    parts,
    ...things,
    measurements: listMeasurements(placed, store),
    jobs: jobs.jobs,
    temporary: jobs.temporary,
    ...foldLedger(facts, ledgerGround),
    ...foldRules(facts, path => subjectOf(path, names)),
  }
}

function headOf(build: StatedNote): BuildHead {
  if (build.build === null)
    throw new Error('Unexpected note without the head of build.md, expected `stateNote` to give one')
  return build.build
}

/** What a requirement is about; null where nothing bears the name yet. */
function subjectOf(path: string, names: DeclaredNames): Subject | null {
  const written = splitPath(path)
  if (written === null) return null
  const bears = ({ kind, id }: Subject): boolean => kind === 'vehicle' || names.of(kind).has(id)
  if (!written.bare) return bears(written.subject) ? written.subject : null
  const meant = resolveName(written.subject.id, bears)
  return meant.length === 1 ? (meant[0] ?? null) : null
}

/** The path of each figure that a fact names, now that bare paths are resolved. */
function figurePaths({ placed }: FoldedProperties): (session: string | null, figure: string) => string | null {
  const keyOf = (session: string | null, figure: string): string => `${session ?? ''}#${figure}`
  const paths = new Map(
    placed.flatMap(({ fact, subject }) =>
      fact.figure === null ? [] : [[keyOf(fact.session, fact.figure), pathText(subject, fact.key)]],
    ),
  )
  return (session, figure) => paths.get(keyOf(session, figure)) ?? null
}
