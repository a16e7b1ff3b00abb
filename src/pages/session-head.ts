import type { Part, PartEvent, Session } from '../record/record.ts'
import { figureKey } from './atlas.ts'
import type { TableRow } from './blocks.ts'
import type { Cell } from './cells.ts'
import { figureRows, writtenCell } from './figure-rows.ts'
import { look, plain, wordsCell } from './inline.ts'
import { fixState, jobState } from './job-state.ts'
import type { PrintedNote } from './note-rows.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageRow } from './page-row.ts'
import { type PageScope, saidWords, sourceWords } from './page-scope.ts'
import { stateCell } from './part-states.ts'
import { column, heading, row, table } from './tables.ts'

/** What stood in the front matter of a note, every figure of it with its anchor: none is without a place to lead to. */
export function sessionHead(scope: PageScope, session: Session, printed: PrintedNote): PageRow[] {
  const inBody = new Set(printed.rows.flatMap(({ figures }) => figures))
  const left = session.figures.filter(({ id }) => !inBody.has(id))
  const parts = partEvents(scope, session.id)
  const money = moneyTable(scope, session.id, parts)
  const named = left.filter(({ role }) => role !== 'price')
  const prices = new Set(moneyFigures(scope, session.id, parts))
  const stray = left.filter(({ id, role }) => role === 'price' && !prices.has(id))
  const body: PartOfPage[] = [
    ...money,
    ...figureRows(scope, session.id, [...named, ...stray]),
    ...testTable(scope, session.id),
    ...openWork(scope, session),
  ]
  return body.length === 0
    ? []
    : [{ wide: true, parts: [heading('At the head of the note', 'head'), ...body], rail: [] }]
}

function partEvents(scope: PageScope, session: string): { part: Part; event: PartEvent }[] {
  return scope.record.parts.flatMap(part =>
    [...part.events, ...part.mentions].filter(event => event.session === session).map(event => ({ part, event })),
  )
}

function moneyFigures(scope: PageScope, session: string, parts: readonly { event: PartEvent }[]): string[] {
  const spent = scope.record.ledger.lines
    .filter(line => line.session === session && line.of !== 'part')
    .map(line => line.figure)
  return [...parts.map(({ event }) => event.cost?.figure ?? null), ...spent].filter(id => id !== null)
}

function priceCell(scope: PageScope, session: string | null, id: string | null): Cell {
  const written = id === null ? undefined : scope.atlas.figures.get(figureKey(session, id))
  return written === undefined ? wordsCell('') : writtenCell(scope, session, written)
}

function moneyTable(
  scope: PageScope,
  session: string,
  parts: readonly { part: Part; event: PartEvent }[],
): PartOfPage[] {
  const spent = scope.record.ledger.lines.filter(line => line.session === session && line.of === 'spend')
  const rows = [
    ...parts.map(({ part, event }) => eventRow(scope, part, event)),
    ...spent.map(line =>
      row([wordsCell(line.what), wordsCell('bought'), wordsCell(''), priceCell(scope, session, line.figure)]),
    ),
  ]
  if (rows.length === 0) return []
  return [
    table({
      caption: 'Parts and money of this session',
      isCaptionShown: true,
      columns: [column('Part'), column('What happened'), column('Why', 'wide'), column('Cost', 'num')],
      rows,
    }),
  ]
}

function eventRow(scope: PageScope, part: Part, event: PartEvent): TableRow {
  const fits = { yes: ', fits', no: ', does not fit', 'with-work': ', fits with work' }
  const from = event.from === null ? [] : [plain('from '), ...sourceWords(scope, event.from.value)]
  const quantity = event.qty === '1' ? '' : `${event.qty} × `
  return row([
    wordsCell([plain(quantity), scope.thing({ kind: 'part', id: part.id })], from),
    stateCell(event.action, event.fits === null ? '' : fits[event.fits]),
    wordsCell(event.why === null ? '' : [look('said', event.why.value.text)]),
    priceCell(scope, event.session, event.cost?.figure ?? null),
  ])
}

function testTable(scope: PageScope, session: string): PartOfPage[] {
  const tests = scope.record.tests.filter(test => test.session === session)
  if (tests.length === 0) return []
  const shapes = { pass: 'pass', fail: 'fail', partial: 'marginal' } as const
  const rows = tests.map(test =>
    row([
      wordsCell([look('said', test.words.text)]),
      { kind: 'marks', marks: [{ verdict: shapes[test.result], text: test.result, href: null }], otherwise: '' },
      wordsCell(test.note === null ? '' : [look('said', test.note.text)]),
    ]),
  )
  return [
    table({
      caption: 'Tried and tested',
      isCaptionShown: true,
      columns: [column('Test'), column('Result'), column('Note')],
      rows,
    }),
  ]
}

/** Temporary fixes made here and jobs that only the head of the note closed. */
function openWork(scope: PageScope, session: Session): PartOfPage[] {
  const { atlas, record } = scope
  const fixes = record.temporary.filter(fix => fix.session === session.id)
  const closed = record.jobs.filter(job => job.closed?.session === session.id && job.session !== session.id)
  const jobs = [
    ...fixes.map(fix => ({
      id: `f-${fix.id}`,
      shape: fix.open ? ('fix' as const) : ('fix-gone' as const),
      words: saidWords(fix.words),
      state: [plain(fixState(atlas, fix))],
      balloon: null,
    })),
    ...closed.map(job => ({
      id: null,
      shape: 'done' as const,
      words: saidWords(job.words),
      state: [plain(jobState(atlas, job, session.id))],
      balloon: null,
    })),
  ]
  return jobs.length === 0 ? [] : [heading('Left and done', 'left', 3), { kind: 'jobs', jobs }]
}
