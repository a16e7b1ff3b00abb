import type { Verdict } from '../checker/verdict.ts'
import type { WeighedPoint } from '../checker/weigh-inspection.ts'
import type { Finding } from '../findings/finding.ts'
import type { Notes } from '../record/fold-facts.ts'
import type { AsBuiltRecord } from '../record/record.ts'
import { blankColumns } from './blank-columns.ts'
import type { StatedBuild } from './edition-notes.ts'
import { nameFinder } from './name-finder.ts'
import type { Publication } from './publication.ts'
import type { PublishableRecord } from './publishable.ts'
import { type RedactedNotes, redactNotes } from './redact-notes.ts'
import { requireNothingWithheld, WithheldLeft } from './require-nothing-withheld.ts'
import { shownPhotos } from './shown-photos.ts'
import { tellFindings } from './tell-findings.ts'
import { tellInspection } from './tell-inspection.ts'
import { tellVerdicts } from './tell-verdicts.ts'
import { wholeNotes } from './whole-notes.ts'
import { type Withheld, withheldBy } from './withheld.ts'

/** What notes come to: folded, checked, weighed. */
export interface Folding {
  readonly record: AsBuiltRecord
  readonly verdicts: readonly Verdict[]
  readonly inspection: readonly WeighedPoint[]
  readonly findings: readonly Finding[]
}

/** A build read, folded and checked, and the notes that it comes from. */
interface WholeBuild extends Folding {
  readonly stated: StatedBuild
  readonly photos: readonly string[]
}

interface Redaction {
  readonly edition: string
  /** Folds and checks notes again, as the whole build's were. */
  readonly fold: (notes: Notes) => Folding
  readonly meaningOf: (rule: Finding['rule']) => string
}

/**
 * What an edition may see of a build. Withheld words are taken out of the notes, and everything else is folded and checked
 * anew from what is left, so that nothing can be worked out from what is not there. The only place that makes a publication.
 */
export function redact(whole: WholeBuild, redaction: Redaction): Publication {
  const withheld = withheldBy(whole.stated.editions, redaction.edition)
  if (withheld === null)
    throw new Error(`Unexpected edition \`${redaction.edition}\`, expected one that build.md names`)
  return withheld.isWhole ? publishWhole(whole, withheld) : publishPart(whole, redaction, withheld)
}

function publishWhole(whole: WholeBuild, withheld: Withheld): Publication {
  const { verdicts, inspection, findings } = whole
  const photos = shownPhotos(whole.stated.notes, whole.photos)
  return publishable(
    { record: whole.record, verdicts, inspection, findings, photos, wholeNotes: filesOf(whole) },
    withheld,
  )
}

function publishPart(whole: WholeBuild, { fold, meaningOf }: Redaction, withheld: Withheld): Publication {
  const redacted = redactNotes(whole.stated, withheld)
  refuseNames(redacted, withheld)
  const seen = fold(redacted.notes)
  const told = {
    record: seen.record,
    inspection: tellInspection(whole.inspection, seen.inspection),
    verdicts: tellVerdicts(whole.verdicts, seen.verdicts),
    again: seen.findings,
    photos: shownPhotos(redacted.notes, whole.photos),
  }
  requireNothingWithheld(withoutOwnWords(told), { withheld, find: nameFinder(redacted.words) })
  const findings = tellFindings(whole.findings, {
    withheld,
    again: seen.findings,
    stated: statedFindings(whole),
    taken: redacted.taken,
    meaningOf,
  })
  const { record, verdicts, inspection } = blankColumns(told)
  const rest = { findings: blankColumns(findings), photos: told.photos, wholeNotes: wholeNotes(whole.stated, redacted) }
  return publishable({ record, verdicts, inspection, ...rest }, withheld)
}

/** The brand: given here and nowhere else. */
function publishable(seen: Folding & Pick<Publication, 'photos' | 'wholeNotes'>, { edition }: Withheld): Publication {
  const record = { ...seen.record, edition } as PublishableRecord
  return { ...seen, record } as Publication
}

/** `--force` publishes a record with mistakes in it, never one with a withheld word in it. */
function refuseNames({ hits }: RedactedNotes, { edition }: Withheld): void {
  if (hits.length === 0) return
  const many = hits.length === 1 ? 'A withheld word stands' : `Withheld words stand in ${hits.length} places`
  throw new WithheldLeft(
    `${many} unmarked where the edition \`${edition}\` would publish them: \`oddleg check --edition ${edition}\` says where. Nothing was published.`,
  )
}

interface Told extends Omit<Folding, 'findings'> {
  readonly again: readonly Finding[]
  readonly photos: readonly string[]
}

/** Of a working only what comes from the record: its sentences are the check's own. */
function withoutOwnWords({ verdicts, again, ...told }: Told): unknown {
  const own = verdicts.map(({ subject, missing, inputs, offenders, working }) => ({
    subject,
    missing,
    inputs,
    offenders,
    about: working.subject,
    values: working.values.map(({ path, quantity }) => ({ path, quantity })),
    why: working.override?.why,
  }))
  return { ...told, verdicts: own, again: again.map(({ about }) => about) }
}

function statedFindings({ stated: { notes } }: WholeBuild): Finding[] {
  return [notes.build, ...notes.sessions, ...(notes.inspection === null ? [] : [notes.inspection])].flatMap(
    note => note.findings,
  )
}

function filesOf({ record, stated: { notes } }: WholeBuild): string[] {
  const inspection = notes.inspection === null ? [] : ['content/inspection.yaml']
  return [record.build.file, ...record.sessions.map(({ file }) => file), ...inspection]
}
