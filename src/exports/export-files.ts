import type { Publication } from '../editions/publication.ts'
import { tableCsv } from './csv.ts'
import { spreadsheetOds } from './ods.ts'
import type { PublishedFile } from './publish-folder.ts'
import { recordJson } from './record-json.ts'
import { recordSchema } from './schema/record-schema.ts'
import { csvPath } from './tables/export-table.ts'
import { recordTables } from './tables/record-tables.ts'
import { workbookXlsx } from './xlsx.ts'

/** Everything that is published beside the pages: the record with its schema, each table as CSV, all of them as XLSX and ODS. */
export async function exportFiles(
  publication: Publication,
  tables = recordTables(publication),
): Promise<PublishedFile[]> {
  return [
    { path: 'record.json', content: recordJson(publication) },
    { path: 'record.schema.json', content: `${JSON.stringify(recordSchema, null, 2)}\n` },
    ...tables.map(table => ({ path: csvPath(table), content: tableCsv(table) })),
    { path: 'tables/record.xlsx', content: await workbookXlsx(tables) },
    {
      path: 'tables/record.ods',
      content: spreadsheetOds(tables, publication.record.ledger?.currency ?? publication.record.build.currency),
    },
  ]
}
