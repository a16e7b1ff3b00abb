import type { NextMeasurement } from '../checker/measure-next.ts'
import type { Verdict } from '../checker/verdict.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { Table, TableRow } from './blocks.ts'
import type { Inline, Mark } from './cells.ts'
import { listed, look, plain, wordsCell } from './inline.ts'
import type { PageRow } from './page-row.ts'
import { type PageScope, pageScope, spaced } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { column, table, row as tableRow, words } from './tables.ts'

/** A sheet to take to the vehicle: what to measure, why, and room to write it down; what only a book tells stands apart. */
export function makeMeasureNextPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('measure-next'))
  const { measureNext } = atlas.extras
  const lede =
    measureNext.length === 0
      ? 'Nothing is missing for the questions that were asked.'
      : 'In this order the fewest figures answer the most questions. Print it, take it to the vehicle, write the figures into the next note.'
  const toMeasure = measureNext.filter(next => !isLookUp(next))
  const toLookUp = measureNext.filter(isLookUp)
  return simplePage(scope, {
    title: 'Measure next',
    section: 'measure-next',
    look: 'one-page',
    gutter: [
      { term: 'To measure', words: [plain(String(toMeasure.length))] },
      ...(toLookUp.length === 0 ? [] : [{ term: 'To look up', words: [plain(String(toLookUp.length))] }]),
    ],
    rows: [textRow(words('lede', lede)), list(scope, toMeasure, toLookUp)],
  })
}

/** A limit is not measured: it stands in the rule. */
const isLookUp = ({ path }: NextMeasurement): boolean => path.startsWith('limit/')

function list(scope: PageScope, toMeasure: readonly NextMeasurement[], toLookUp: readonly NextMeasurement[]): PageRow {
  if (toMeasure.length + toLookUp.length === 0) return wideRow()
  const groups = [
    groupOf(scope, { id: 'measure', title: 'To measure', from: 1 }, toMeasure),
    groupOf(scope, { id: 'look-up', title: 'To look up in the rule', from: toMeasure.length + 1 }, toLookUp),
  ]
  return wideRow(
    table({
      caption: 'What to measure next, and what to look up',
      columns: [
        column('No.', 'narrow'),
        column('What', 'wide'),
        column('Why', 'wide'),
        column('Settles', 'wide'),
        column('Figure', 'figure'),
      ],
      groups,
    }),
    { kind: 'signature' },
  )
}

function groupOf(
  scope: PageScope,
  { id, title, from }: { id: string; title: string; from: number },
  nexts: readonly NextMeasurement[],
): Table['groups'][number] {
  return { id, heading: [plain(title)], rows: nexts.map((next, index) => nextRow(scope, next, from + index)) }
}

function nextRow(scope: PageScope, next: NextMeasurement, number: number): TableRow {
  const waiting = scope.atlas.verdicts.filter(({ working }) =>
    working.measureNext.some(({ path }) => path === next.path),
  )
  const keys = isLookUp(next) ? keysOf(next.path, waiting) : []
  return tableRow([
    wordsCell(String(number)),
    wordsCell([look('path', next.path)]),
    wordsCell(keys.length === 0 ? withKeys(next.why) : [plain(`${ruleOf(next.why)}: set `), ...shortened(keys)]),
    { kind: 'marks', marks: settled(scope, waiting, keys.length === 0), otherwise: '' },
    { kind: 'tick' },
  ])
}

/** One mark for each subject that a check asks of; where several of its aspects wait, it names them and leads to the first. */
function settled(scope: PageScope, waiting: readonly Verdict[], nameAspects: boolean): Mark[] {
  const key = ({ check, subject }: Verdict): string => `${check} ${subject}`
  const firsts = new Map(waiting.map(verdict => [key(verdict), verdict] as const).reverse())
  return [...firsts.values()].reverse().map(first => {
    const verdicts = waiting.filter(verdict => key(verdict) === key(first))
    const name = `${first.working.title.toLowerCase()}, ${first.working.subject.name}`
    const aspects = verdicts.flatMap(({ aspect }) => (aspect === null || !nameAspects ? [] : [spaced(aspect)]))
    return scope.mark(first, aspects.length === 0 ? name : `${name}: ${aspects.join(', ')}`)
  })
}

/** The keys of build.md that set a row of a rule, one for each size that is asked of it. */
function keysOf(path: string, waiting: readonly Verdict[]): string[] {
  const whys = waiting.flatMap(({ working }) => working.measureNext.filter(next => next.path === path))
  return [...new Set(whys.flatMap(({ why }) => why.split('`').filter((_, index) => index % 2 === 1)))].sort()
}

/** The rule by name: what stands before the first comma. */
const ruleOf = (why: string): string => why.split(',')[0] ?? why

/** The first key whole, of the others only what follows their common beginning. */
function shortened(keys: readonly string[]): Inline[] {
  const [first = '', ...others] = keys
  const common = first.split('-').findIndex((piece, at) => others.some(key => key.split('-')[at] !== piece))
  const rest = others.map(key => look('path', `…${key.split('-').slice(common).join('-')}`))
  return listed([look('path', first), ...rest].map(key => [key]))
}

/** Words in which a path stands between backticks. */
function withKeys(text: string): Inline[] {
  return text.split('`').flatMap((run, index) => (run === '' ? [] : [index % 2 === 1 ? look('path', run) : plain(run)]))
}
