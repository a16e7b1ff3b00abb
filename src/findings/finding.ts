import type { Place } from './place.ts'

export type Severity = 'error' | 'warning' | 'note'

/** Every mistake a note can hold, with its severity. The one list of rules. */
export const severityOf = {
  'front-matter': 'error',
  'repeated-key': 'error',
  'flow-comma': 'error',
  'hash-comment': 'warning',
  directive: 'error',
  'pin-table': 'note',
  'repeated-note': 'error',
  'unreadable-note': 'error',
  'unknown-key': 'warning',
  'unknown-action': 'error',
  'unknown-kind': 'note',
  'no-title': 'error',
  'no-date': 'error',
  'bad-date': 'error',
  'future-date': 'warning',
  'not-a-quantity': 'error',
  'unknown-value': 'error',
  'limit-without-why': 'warning',
  'no-alternative': 'warning',
  'marked-place': 'warning',
  'unreadable-picture': 'warning',
  'odd-picture': 'note',
  'private-evidence': 'warning',
  dimension: 'error',
  'ambiguous-unit': 'warning',
  'ambiguous-colour': 'warning',
  'two-readings': 'note',
  'unit-missing': 'note',
  'decimal-mark': 'warning',
  'unit-slip': 'warning',
  agreement: 'warning',
  'unknown-target': 'error',
  'near-name': 'warning',
  'rejected-without-why': 'note',
  'no-rate': 'error',
  'no-closing': 'note',
  unlikely: 'warning',
  'nothing-said': 'note',
  'withheld-name': 'error',
} as const satisfies Record<string, Severity>

export type Rule = keyof typeof severityOf

/** A mistake in a note: what was read, what was expected, how to mend it. Never thrown, always collected. */
export interface Finding extends Place {
  readonly rule: Rule
  readonly severity: Severity
  /** One sentence that quotes what was written and says what was expected. */
  readonly message: string
  /** What to write instead, where it is known. */
  readonly mend: string | null
  /** Paths of the things it is about, such as `fuel-tank/length`. */
  readonly about: readonly string[]
  readonly related: readonly RelatedPlace[]
}

interface RelatedPlace extends Place {
  readonly message: string
}

export interface FindingText {
  readonly message: string
  readonly mend?: string | null
  readonly about?: readonly string[]
  readonly related?: readonly RelatedPlace[]
}

/** Makes a finding; its severity follows from its rule. */
export function finding(rule: Rule, place: Place, text: FindingText): Finding {
  const { file, line, column, endLine, endColumn } = place
  return {
    rule,
    severity: severityOf[rule],
    file,
    line,
    column,
    endLine,
    endColumn,
    message: text.message,
    mend: text.mend ?? null,
    about: text.about ?? [],
    related: text.related ?? [],
  }
}
