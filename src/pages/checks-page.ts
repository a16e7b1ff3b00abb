import type { Verdict } from '../checker/verdict.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { Mark } from './cells.ts'
import { figure, look, plain, wordsCell } from './inline.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { provenanceParts } from './provenance-table.ts'
import { resultInOthers } from './result-in-others.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { column, heading, row, table, words } from './tables.ts'

/** Verdicts from what needs a hand to what is done. */
export const verdictOrder = ['fail', 'marginal', 'missing', 'waived', 'pass'] as const

/** All that was asked of the record: what did not pass first, then every question with how its answers came out. */
export function makeChecksPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('checks'))
  const { verdicts } = atlas
  const open = verdictOrder.slice(0, 4).flatMap(verdict => verdicts.filter(one => one.verdict === verdict))
  return simplePage(scope, {
    title: 'Checks',
    section: 'checks',
    gutter: verdictOrder.map(verdict => ({
      term: capital(verdict),
      words: [plain(String(verdicts.filter(one => one.verdict === verdict).length))],
    })),
    rows: [
      textRow(
        words(
          'lede',
          'Every question that was asked of the record, with its working. Nothing passes for want of a figure.',
        ),
        { kind: 'key', of: 'verdicts' },
        words(
          'note',
          'A check informs and approves nothing. Where its limit comes from a rule, local codes and licensed practice decide.',
        ),
      ),
      open.length === 0 ? wideRow() : wideRow(heading('Not passed', 'open'), notPassed(scope, open)),
      wideRow(heading('Every question', 'all'), questions(scope)),
      wideRow(...provenanceParts(scope)),
    ],
  })
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`
}

function notPassed(scope: PageScope, open: readonly Verdict[]) {
  return table({
    caption: 'Answers that are not pass',
    columns: [column('Check'), column('Verdict'), column('How it stands', 'wide')],
    rows: open.map(verdict =>
      row([
        wordsCell([
          plain(`${verdict.working.title}, ${verdict.working.subject.name}`, scope.mark(verdict).href),
          ...(verdict.aspect === null ? [] : [plain(`, ${verdict.aspect}`)]),
        ]),
        { kind: 'marks', marks: [{ verdict: verdict.verdict, text: verdict.verdict, href: null }], otherwise: '' },
        wordsCell(
          figure(verdict.working.says),
          figure(resultInOthers(verdict, scope.record.build.reading.gallon) ?? ''),
        ),
      ]),
    ),
  })
}

function questions(scope: PageScope) {
  const asked = [...new Set(scope.atlas.verdicts.map(({ check }) => check))]
  return table({
    caption: 'Questions and how their answers came out',
    columns: [column('Check'), column('Question', 'wide'), column('Answers')],
    rows: asked.map(check => {
      const answers = scope.atlas.verdicts.filter(verdict => verdict.check === check)
      const [first] = answers
      return row([
        wordsCell([scope.link(first?.working.title ?? check, pageAddress('checks', check))], [look('path', check)]),
        wordsCell(first?.working.question ?? ''),
        { kind: 'marks', marks: tally(answers), otherwise: '' },
      ])
    }),
  })
}

/** `3 pass`, `1 fail`. */
export function tally(answers: readonly Verdict[]): Mark[] {
  return verdictOrder.flatMap((verdict): Mark[] => {
    const count = answers.filter(one => one.verdict === verdict).length
    return count === 0 ? [] : [{ verdict, text: `${count} ${verdict}`, href: null }]
  })
}
