import type { Check } from '../checker/check.ts'
import type { CircuitChoice } from '../checker/circuit-choices.ts'
import type { CircuitVoltages } from '../checker/circuit-voltages.ts'
import type { DipMark } from '../checker/derived/dip-table.ts'
import type { NextMeasurement } from '../checker/measure-next.ts'
import type { Verdict } from '../checker/verdict.ts'
import type { WeighedPoint } from '../checker/weigh-inspection.ts'
import type { PublishableRecord } from '../editions/publishable.ts'
import type { Figure } from '../facts/stated-note.ts'
import type { Finding } from '../findings/finding.ts'
import type { Session } from '../record/record.ts'
import type { PlacedWiring } from '../wiring/place-wiring.ts'
import type { FigureUse } from './figure-uses.ts'
import type { PublishedPhoto, ShownPhoto } from './shown-photos.ts'

/** A table that is published as a file. */
export interface PublishedTable {
  /** Within the record: `tables/parts.csv`. */
  readonly path: string
  readonly rows: number
  readonly columns: readonly string[]
}

/** The record as it stood after a session, to compare with. */
export interface Before {
  /** Null: before the first. */
  readonly session: string | null
  readonly record: PublishableRecord
  readonly verdicts: readonly Verdict[]
}

/** What the pages show besides the record itself. */
export interface SiteExtras {
  readonly findings: readonly Finding[]
  readonly inspection: readonly WeighedPoint[]
  readonly checks: readonly Check[]
  readonly measureNext: readonly NextMeasurement[]
  readonly photos: readonly PublishedPhoto[]
  readonly tables?: readonly PublishedTable[]
  readonly before?: Before | null
  /** Where the drawings of the wiring stand; without it they are drawn line by line. */
  readonly wiring?: PlacedWiring
  /** By circuit: what its checks would say of other sizes. */
  readonly choices?: ReadonlyMap<string, readonly CircuitChoice[]>
  /** By circuit: what is lost along its way with the load on; null where a figure is missing. */
  readonly voltages?: ReadonlyMap<string, CircuitVoltages | null>
  /** By tank: what it holds by the height of the level, as marks of a dip stick. */
  readonly dips?: ReadonlyMap<string, readonly DipMark[]>
  /** Said in the title block, such as the date of publishing; null: nothing. */
  readonly date: string | null
  /** SHA-256 of record.json, in hexadecimal: who has a page on paper can tell whether a file is the one it was printed from. */
  readonly sum?: string
  /** Noughts in the form of the manifest's sum, which is put in their place on the overview when it is known. */
  readonly manifestSum?: string
  /** The record is published as one document too. */
  readonly paper?: boolean
  /** While serving, a page may ask its server whether it has changed. */
  readonly serve: boolean
  /** Scripts of other parts, by their address within the record. */
  readonly scripts: readonly string[]
  /** The address at which the record will be published, with a slash at its end. */
  readonly base?: string | null
}

/** The record with what every page needs to find in it. */
export interface Atlas {
  readonly record: PublishableRecord
  readonly verdicts: readonly Verdict[]
  readonly extras: SiteExtras
  readonly withheld: ReadonlySet<string>
  readonly sessions: ReadonlyMap<string, Session>
  /** By `session#q-4`, `#q-4` for build.md: the figure, and what used it. */
  readonly figures: ReadonlyMap<string, Figure>
  readonly uses: ReadonlyMap<string, readonly FigureUse[]>
  /** Every picture that a note shows, in the order of the notes. */
  readonly shown: readonly ShownPhoto[]
  /** By the same key: the sentence in which it stands; filled while sessions are made. */
  readonly sentences: Map<string, string>
}

/** The key of a figure within the whole record. */
export function figureKey(session: string | null, figure: string): string {
  return `${session ?? ''}#${figure}`
}
