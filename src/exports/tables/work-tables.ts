import type { Verdict } from '../../checker/verdict.ts'
import type { WeighedPoint } from '../../checker/weigh-inspection.ts'
import type { Publication } from '../../editions/publication.ts'
import { type StandingTime, standingTime } from '../../record/asked/standing-time.ts'
import type { Job, Temporary, Test } from '../../record/record.ts'
import { type ExportTable, exportTable, type Field, field } from './export-table.ts'
import { placeFields, sessionFields } from './place-fields.ts'

/** Jobs, temporary fixes and tests. */
export function workTables({ record }: Publication): ExportTable[] {
  return [
    exportTable('jobs', record.jobs, [
      field('id', 'text', ({ id }) => id),
      field('job', 'text', ({ text }) => text),
      ...openFields<Job>(job => job),
      ...timeFields<Job>(job => standingTime(record, job)),
      ...placeFields<Job>(({ place }) => place),
    ]),
    exportTable('temporary-fixes', record.temporary, [
      field('id', 'text', ({ id }) => id),
      field('fix', 'text', ({ what }) => what),
      field('part', 'text', ({ part }) => part),
      field('until', 'text', ({ until }) => until?.text ?? null),
      ...openFields<Temporary>(fix => fix),
      ...timeFields<Temporary>(fix => standingTime(record, fix)),
      ...placeFields<Temporary>(({ place }) => place),
    ]),
    exportTable('tests', record.tests, [
      field('test', 'text', ({ what }) => what),
      field('result', 'text', ({ result }) => result),
      field('note', 'text', ({ note }) => note?.text ?? null),
      ...sessionFields<Test>(record, ({ session }) => session),
      ...placeFields<Test>(({ place }) => place),
    ]),
  ]
}

/** The answers of all checks, and the points of an inspection. */
export function answerTables({ verdicts, inspection }: Publication): ExportTable[] {
  return [
    exportTable('checks', verdicts, [
      field('check', 'text', ({ check }) => check),
      field('subject', 'text', ({ subject }) => subject),
      field('aspect', 'text', ({ aspect }) => aspect),
      field('verdict', 'text', ({ verdict }) => verdict),
      field('value', 'number', ({ result }) => result?.value ?? null),
      field('uncertainty', 'number', ({ result }) => result?.uncertainty ?? null),
      field('worst', 'number', ({ result }) => result?.worst ?? null),
      field('unit', 'text', ({ result, limit }) => result?.unit ?? limit?.unit ?? null),
      field('at least', 'number', ({ limit }) => limit?.min ?? null),
      field('at most', 'number', ({ limit }) => limit?.max ?? null),
      field('limit from', 'text', ({ limit }) => limit?.from ?? null),
      field('whose limit', 'text', ({ limit }) => limit?.who ?? null),
      field('source', 'text', ({ limit }) => limit?.source ?? null),
      field('assumed', 'text', ({ assumed }) => listed(assumed)),
      field('missing', 'text', ({ missing }) => listed(missing)),
      field('offenders', 'text', ({ offenders }: Verdict) => listed(offenders ?? [])),
    ]),
    exportTable('inspection', inspection, [
      field('id', 'text', ({ id }) => id),
      field('point', 'text', ({ ask }) => ask.text),
      field('before', 'text', ({ before }) => before),
      field('open', 'flag', ({ open }) => open),
      field('evidence', 'text', ({ evidence }: WeighedPoint) =>
        listed(evidence.map(({ ref, ok }) => `${ref} (${ok ? 'held' : 'open'})`)),
      ),
    ]),
  ]
}

const listed = (words: readonly string[]): string | null => (words.length === 0 ? null : words.join('; '))

function openFields<R>(of: (row: R) => Pick<Job, 'open' | 'before'>): Field<R>[] {
  return [field('open', 'flag', row => of(row).open), field('before', 'text', row => of(row).before)]
}

function timeFields<R>(of: (row: R) => StandingTime): Field<R>[] {
  return [
    field('opened in', 'text', row => of(row).opened?.id ?? null),
    field('opened', 'date', row => of(row).opened?.date || null),
    field('closed in', 'text', row => of(row).closed?.id ?? null),
    field('closed', 'date', row => of(row).closed?.date || null),
    field('days', 'number', row => of(row).days),
    field('sessions', 'number', row => of(row).sessions),
    field('hours worked meanwhile', 'number', row => of(row).hours),
  ]
}
