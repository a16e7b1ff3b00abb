import type { Verdict } from '../checker/verdict.ts'
import type { TableRow } from './blocks.ts'
import type { Inline } from './cells.ts'
import { figure, look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { limitInOthers, resultInOthers } from './result-in-others.ts'
import { column, heading, row, table } from './tables.ts'

const setters = {
  law: 'set by law',
  standard: 'set by a standard',
  maker: 'set by its maker',
  builder: 'set by the builder',
  practice: 'good practice',
} as const

/** Who set a limit, in words. */
export function setterWords(who: keyof typeof setters): string {
  return setters[who]
}

/** What was asked about these subjects, with result, limit and verdict. A subject's parts, such as `aux-fuses/3`, count. */
export function subjectChecks(scope: PageScope, subjects: readonly string[]): PartOfPage[] {
  const asked = scope.atlas.verdicts.filter(({ subject }) =>
    subjects.some(id => subject === id || subject.startsWith(`${id}/`)),
  )
  return asked.length === 0 ? [] : [heading('What was asked of it', 'checks'), verdictTable(scope, asked, 'Checks')]
}

/** Answers in a table: the question, what came out, against what, and the verdict. */
export function verdictTable(
  scope: PageScope,
  verdicts: readonly Verdict[],
  caption: string,
  bySubject = false,
): PartOfPage {
  return table({
    caption,
    columns: [column(bySubject ? 'Of' : 'Check'), column('Verdict'), column('How it stands', 'wide'), column('Limit')],
    rows: verdicts.map(verdict => verdictRow(scope, verdict, bySubject)),
    canFilter: verdicts.length > 12,
  })
}

const inOthers = (text: string | null, before = ''): Inline[] => (text === null ? [] : figure(`${before}${text}`))

function verdictRow(scope: PageScope, verdict: Verdict, bySubject: boolean): TableRow {
  const { title, subject } = verdict.working
  const name = bySubject ? subject.name : title
  const aspect = verdict.aspect === null ? [] : [plain(`, ${verdict.aspect.replaceAll('-', ' ')}`)]
  const sub = !bySubject && verdict.subject.includes('/') ? [look('path', verdict.subject)] : []
  const limit = verdict.limit
  const { gallon } = scope.record.build.reading
  return row([
    wordsCell([plain(name, scope.mark(verdict).href), ...aspect], sub),
    { kind: 'marks', marks: [{ verdict: verdict.verdict, text: verdict.verdict, href: null }], otherwise: '' },
    wordsCell(figure(verdict.working.says), inOthers(resultInOthers(verdict, gallon))),
    wordsCell(
      limit === null ? '' : figure(limit.from),
      limit === null ? [] : [plain(setterWords(limit.who)), ...inOthers(limitInOthers(verdict, gallon), '; ')],
    ),
  ])
}
