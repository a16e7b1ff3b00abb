import type { Finding } from '../findings/finding.ts'
import { ruleTexts } from '../findings/rule-texts.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { TableRow } from './blocks.ts'
import { look, plain, wordsCell } from './inline.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { column, heading, row, table, words } from './tables.ts'
import { noteAddress } from './thing-addresses.ts'

const severities = { error: 'Mistakes', warning: 'Warnings', note: 'Notes' } as const

/** What is wrong with the notes themselves, place by place. */
export function makeFindingsPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('findings'))
  const { findings } = atlas.extras
  return simplePage(scope, {
    title: 'Findings',
    section: 'findings',
    gutter: Object.entries(severities).map(([severity, term]) => ({
      term,
      words: [plain(String(findings.filter(one => one.severity === severity).length))],
    })),
    rows: [
      textRow(
        words(
          'lede',
          'What is wrong with the notes, not with the vehicle: where it stands, what was read, and what to write instead.',
        ),
      ),
      ...Object.entries(severities).map(([severity, title]) => {
        const of = findings.filter(one => one.severity === severity)
        return of.length === 0 ? wideRow() : wideRow(heading(title, severity), findingTable(scope, of, title))
      }),
    ],
  })
}

function findingTable(scope: PageScope, findings: readonly Finding[], caption: string) {
  return table({
    caption,
    columns: [column('Where'), column('What was read', 'wide'), column('Write instead'), column('Rule')],
    rows: findings.map(finding => findingRow(scope, finding)),
  })
}

function findingRow(scope: PageScope, finding: Finding): TableRow {
  const session = scope.record.sessions.find(({ file }) => file === finding.file)
  const known = session !== undefined || finding.file === scope.record.build.file
  const place = `${finding.file}:${finding.line}:${finding.column}`
  return row([
    wordsCell([look('path', place, known ? scope.to(noteAddress(session?.id ?? null)) : null)]),
    wordsCell(
      finding.message,
      finding.related.map(related => plain(`${related.message} (${related.file}:${related.line}) `)),
    ),
    wordsCell(finding.mend === null ? '' : [look('path', finding.mend)]),
    wordsCell([look('path', finding.rule)], [plain(ruleTexts[finding.rule].means)]),
  ])
}
