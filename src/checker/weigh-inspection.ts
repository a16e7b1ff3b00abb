import type { Words } from '../facts/fact.ts'
import type { Place } from '../findings/place.ts'
import { sameWords } from '../record/open-items.ts'
import type { AsBuiltRecord, InspectionPoint } from '../record/record.ts'
import type { Verdict } from './verdict.ts'

export interface WeighedEvidence {
  /** As written: `part:master-cylinder`. */
  readonly ref: string
  readonly scheme: string
  readonly name: string
  readonly ok: boolean
  /** Why it does not hold yet: `2 of 14 fail`; null where it holds. */
  readonly lacks: string | null
  readonly place: Place
}

/** A point that an inspector will ask about, held against the record. It is open until all its evidence holds. */
export interface WeighedPoint {
  readonly id: string
  readonly ask: Words
  readonly before: string | null
  readonly open: boolean
  readonly evidence: readonly WeighedEvidence[]
  readonly place: Place
}

/** Holds each inspection point's evidence against the record and the verdicts. A point without evidence is open. */
export function weighInspection(
  record: AsBuiltRecord,
  verdicts: readonly Verdict[],
  photos: readonly string[],
): WeighedPoint[] {
  return record.inspection.points.map(point => {
    const evidence = point.evidence.map(entry => weigh(entry, { record, verdicts, photos }))
    return {
      id: point.id,
      ask: point.ask,
      before: point.before,
      open: evidence.length === 0 || evidence.some(({ ok }) => !ok),
      evidence,
      place: point.place,
    }
  })
}

interface Ground {
  readonly record: AsBuiltRecord
  readonly verdicts: readonly Verdict[]
  readonly photos: readonly string[]
}

function weigh(entry: InspectionPoint['evidence'][number], ground: Ground): WeighedEvidence {
  const colon = entry.ref.indexOf(':')
  const [scheme, name] = [entry.ref.slice(0, Math.max(colon, 0)), entry.ref.slice(colon + 1)]
  const lacks = (lacking[scheme] ?? (() => 'is of no kind that can be looked up'))(name, ground)
  return { ref: entry.ref, scheme, name, ok: lacks === null, lacks, place: entry.place }
}

/** By kind of evidence: what is still wanting, or null. */
const lacking: Readonly<Record<string, (name: string, ground: Ground) => string | null>> = {
  part: (name, { record }) => {
    const part = record.parts.find(({ id }) => id === name)
    if (part === undefined) return 'is not in the record'
    return part.onVehicle ? null : `is not on the vehicle: ${part.state}`
  },
  circuit: (name, { record }) => (record.circuits.some(({ id }) => id === name) ? null : 'is not in the record'),
  connector: (name, { record }) => (record.connectors.some(({ id }) => id === name) ? null : 'is not in the record'),
  loom: (name, { record }) => (record.looms.some(({ id }) => id === name) ? null : 'is not in the record'),
  'earth-point': (name, { record }) =>
    record.earthPoints.some(({ id }) => id === name) ? null : 'is not in the record',
  measurement: (name, { record }) =>
    record.measurements.some(({ path }) => path === name) ? null : 'was not measured',
  session: (name, { record }) =>
    record.sessions.some(({ id, date }) => id === name || date === name) ? null : 'is not in the record',
  photo: (name, { photos }) =>
    photos.some(file => file === `content/${name}` || file.endsWith(`/photos/${name}`)) ? null : 'is not there',
  job: (name, { record }) => {
    const job = record.jobs.find(({ id, text }) => id === name || text === name)
    if (job === undefined) return 'is not in the record'
    return job.open ? 'is still open' : null
  },
  test: (name, { record }) => {
    const last = record.tests.filter(({ what }) => sameWords(what, name)).at(-1)
    if (last === undefined) return 'was not tried'
    return last.result === 'pass' ? null : `came out as ${last.result}`
  },
  check: (name, { verdicts }) => {
    const [check, ...subject] = name.split('/')
    const asked = verdicts.filter(
      verdict => verdict.check === check && (subject.length === 0 || verdict.subject === subject.join('/')),
    )
    if (asked.length === 0) return 'was not asked of anything'
    const open = asked.filter(({ verdict }) => verdict !== 'pass' && verdict !== 'waived')
    if (open.length === 0) return null
    const worst = ['fail', 'missing', 'marginal'].find(word => open.some(({ verdict }) => verdict === word))
    return asked.length === 1 ? `is ${worst}` : `${open.length} of ${asked.length} do not pass, the worst: ${worst}`
  },
}
