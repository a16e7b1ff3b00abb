import type { Publication } from '../../editions/publication.ts'
import type { Session } from '../../record/record.ts'
import { noteUrl } from '../addresses.ts'
import { costTables, donorsTable } from './cost-tables.ts'
import { type ExportTable, exportTable, field } from './export-table.ts'
import { measurementsTable, quantitiesTable } from './figure-tables.ts'
import { partHistoryTable, partsTable } from './part-tables.ts'
import { wiringTables } from './wiring-tables.ts'
import { answerTables, workTables } from './work-tables.ts'

/** Every table of an edition, those without a row too, so that a reader of them finds what was looked for. */
export function recordTables(publication: Publication): ExportTable[] {
  const { record } = publication
  return [
    sessionsTable(record.sessions),
    partsTable(record),
    partHistoryTable(record),
    donorsTable(record),
    ...costTables(record),
    measurementsTable(record),
    quantitiesTable(record),
    ...wiringTables(record),
    ...workTables(publication),
    ...answerTables(publication),
  ]
}

function sessionsTable(sessions: readonly Session[]): ExportTable {
  return exportTable('sessions', sessions, [
    field('number', 'number', ({ number }) => number),
    field('id', 'text', ({ id }) => id),
    field('date', 'date', ({ date }) => date || null),
    field('title', 'text', ({ title }) => title.text),
    field('by', 'text', ({ by }) => by?.text ?? null),
    field('hours', 'number', ({ hours }) => (hours === null ? null : Number(hours))),
    field('file', 'text', ({ file }) => file),
    field('page', 'text', ({ id }) => noteUrl(id)),
  ])
}
