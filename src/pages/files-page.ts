import { pageAddress } from './addresses.ts'
import type { Atlas, PublishedTable } from './atlas.ts'
import { plain, wordsCell } from './inline.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { column, heading, row, table, words } from './tables.ts'

/** The record's figures to take away: what each file holds. */
export function makeFilesPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('files'))
  return simplePage(scope, {
    title: 'Files to take away',
    section: 'files',
    rows: [
      textRow(
        words(
          'lede',
          'The whole record as files for a spreadsheet or a program. They hold what these pages hold, less what this edition withholds.',
        ),
      ),
      wideRow(heading('Whole', 'whole'), wholeTable(scope)),
      wideRow(heading('Table by table', 'tables'), tablesTable(scope, atlas.extras.tables ?? [])),
    ],
  })
}

const whole: readonly (readonly [string, string])[] = [
  ['tables/record.xlsx', 'all tables as one workbook (Office Open XML), a sheet for each'],
  ['tables/record.ods', 'the same as an OpenDocument spreadsheet'],
  ['record.json', 'the as-built record as one JSON document'],
  ['record.schema.json', 'what record.json holds, as a JSON Schema (2020-12)'],
]

const paper = ['record.pdf', 'all of it to print or to hand on: one document with contents and page numbers'] as const

function wholeTable(scope: PageScope) {
  const files = scope.atlas.extras.paper === true ? [paper, ...whole] : whole
  return table({
    caption: 'Whole files',
    columns: [column('File'), column('What it holds', 'wide')],
    rows: files.map(([path, holds]) => row([wordsCell([scope.link(path, path)]), wordsCell(holds)])),
  })
}

function tablesTable(scope: PageScope, tables: readonly PublishedTable[]) {
  return table({
    caption: 'Tables as CSV',
    columns: [column('File'), column('Rows', 'num'), column('Columns', 'wide')],
    rows: tables.map(({ path, rows, columns }) =>
      row([wordsCell([scope.link(path, path)]), wordsCell(String(rows)), wordsCell([plain(columns.join(', '))])]),
    ),
    note: 'CSV by RFC 4180 in UTF-8 with a byte order mark. Words that a spreadsheet would take for a formula have an apostrophe in front.',
  })
}
