import type { PrivateKind } from '../../plugins/private/node.ts'
import { type Finding, type FindingText, finding, type Rule } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import type { Fact } from './fact.ts'
import type { StateOptions } from './state-options.ts'
import type { Figure } from './stated-note.ts'

/** A note as it is being read: what it states so far. Figures bear passing names until all are counted. */
export interface Sheet {
  readonly file: string
  /** Null: build.md or inspection.yaml. */
  readonly session: string | null
  readonly options: StateOptions
  readonly facts: Fact[]
  readonly figures: Figure[]
  readonly findings: Finding[]
  /** The number given last to lengths that belong together. */
  readonly groups: { last: number }
  /** What reading the note found wrong, before anything was stated. */
  readonly reported: readonly Finding[]
}

type WithoutSession<F> = F extends Fact ? Omit<F, 'session'> : never

/** States a fact of this note. */
export function addFact(sheet: Sheet, fact: WithoutSession<Fact>): void {
  sheet.facts.push({ ...fact, session: sheet.session } as Fact)
}

/** Enters a figure and gives it a passing name, `@7`, that holds until all figures of the note are counted. */
export function addFigure(sheet: Sheet, figure: Omit<Figure, 'id'>): string {
  const id = `@${sheet.figures.length + 1}`
  sheet.figures.push({ id, ...figure })
  return id
}

/** Says in which kinds of private mark a figure stands. */
export function markFigure(sheet: Sheet, id: string, privacy: readonly PrivateKind[]): void {
  const at = sheet.figures.findLastIndex(figure => figure.id === id)
  const figure = sheet.figures[at]
  if (figure !== undefined && privacy.length > 0) sheet.figures[at] = { ...figure, privacy }
}

/** Reports a mistake of this note. */
export function report(sheet: Sheet, rule: Rule, mistake: FindingText & { readonly place: Place }): void {
  sheet.findings.push(finding(rule, mistake.place, mistake))
}
