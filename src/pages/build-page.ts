import { pageAddress } from './addresses.ts'
import { type Atlas, figureKey } from './atlas.ts'
import { figureRows } from './figure-rows.ts'
import { look, plain, wordsCell } from './inline.ts'
import { printNote } from './note-rows.ts'
import { noteContext } from './note-scope.ts'
import { longDate } from './page-dates.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, pageScope, saidWords } from './page-scope.ts'
import { noteRows } from './session-page.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { subjectLink } from './subject-link.ts'
import { column, heading, row, table, words } from './tables.ts'

/** The build note: what the builder says the vehicle is, and every setting of it, so that each has a place to lead to. */
export function makeBuildPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('build'))
  const { build } = atlas.record
  const printed = printNote(build.body, noteContext(scope, { session: null, file: build.file }))
  for (const [figure, sentence] of printed.sentences) atlas.sentences.set(figureKey(null, figure), sentence)
  const inBody = new Set(printed.rows.flatMap(({ figures }) => figures))
  return simplePage(scope, {
    title: build.title.text,
    longTitle: 'Build note',
    section: 'build',
    gutter: [
      ...(build.started === null ? [] : [{ term: 'Begun', words: [plain(longDate(build.started))] }]),
      ...build.identity.map(({ key, words: said }) => ({ term: key.replaceAll('-', ' '), words: saidWords(said) })),
    ],
    rows: [
      ...(build.summary === null ? [] : [textRow(words('lede', saidWords(build.summary)))]),
      ...noteRows(scope, null, printed),
      wideRow(
        ...withHeading(
          'Settings',
          'settings',
          figureRows(
            scope,
            null,
            build.figures.filter(({ id }) => !inBody.has(id)),
          ),
        ),
      ),
      wideRow(...required(scope)),
      wideRow(...limits(scope)),
    ],
  })
}

function withHeading(title: string, id: string, parts: PartOfPage[]): PartOfPage[] {
  return parts.length === 0 ? [] : [heading(title, id), ...parts]
}

function required(scope: PageScope): PartOfPage[] {
  const { requirements } = scope.record
  if (requirements.length === 0) return []
  const rows = requirements.map(requirement => {
    const verdict = scope.atlas.verdicts.find(
      ({ check, subject }) => check === 'requirement' && subject === requirement.path,
    )
    const name =
      verdict === undefined
        ? look('path', requirement.path)
        : { ...subjectLink(scope, verdict), look: 'path' as const, text: requirement.path }
    return row([
      wordsCell([name]),
      wordsCell(requirement.value.text),
      {
        kind: 'marks',
        marks: verdict === undefined ? [] : [scope.mark(verdict, verdict.verdict)],
        otherwise: 'not asked',
      },
      wordsCell(`line ${requirement.place.line}`),
    ])
  })
  return [
    heading('What the build requires', 'requirements'),
    table({
      caption: 'Requirements',
      columns: [column('What', 'wide'), column('Required'), column('Stands'), column('Written')],
      rows,
    }),
  ]
}

function limits(scope: PageScope): PartOfPage[] {
  if (scope.record.limits.length === 0) return []
  const rows = scope.record.limits.map(limit =>
    row([
      wordsCell([
        scope.link(limit.check, pageAddress('checks', limit.check)),
        plain(limit.of === null ? '' : ` ${limit.of}`),
      ]),
      wordsCell(
        [limit.min === null ? '' : `at least ${limit.min.text}`, limit.max === null ? '' : `at most ${limit.max.text}`]
          .filter(Boolean)
          .join(', '),
      ),
      wordsCell(limit.why === null ? '' : [look('said', limit.why)]),
    ]),
  )
  return [
    heading('Limits that the builder set', 'limits'),
    table({
      caption: 'Limits that the builder set',
      columns: [column('Check'), column('Limit'), column('Why', 'wide')],
      rows,
    }),
  ]
}
