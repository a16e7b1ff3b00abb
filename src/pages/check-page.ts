import type { Check, Example } from '../checker/check.ts'
import type { Limit } from '../checker/limit.ts'
import type { Verdict, Working } from '../checker/verdict.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { axleMasses } from './axle-parts.ts'
import { aloud } from './equation.ts'
import { figure, look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { pageScope, spaced } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { setterWords, verdictTable } from './subject-checks.ts'
import { column, heading, row, table, words } from './tables.ts'

/** What a check asks, how it works the answer out, by whose limit, and the published examples that it is tested against. */
export function makeCheckPage(atlas: Atlas, check: Check): Page {
  const scope = pageScope(atlas, pageAddress('checks', check.id))
  const answers = atlas.verdicts.filter(verdict => verdict.check === check.id)
  return simplePage(scope, {
    title: check.title,
    longTitle: `${check.title}, the check`,
    section: 'checks',
    gutter: [
      { term: 'Check', words: [look('path', check.id)] },
      { term: 'Asked of', words: [plain(check.subject.meaning)] },
    ],
    rows: [
      textRow(words('lede', check.question)),
      answers.length === 0
        ? wideRow()
        : wideRow(heading('Its answers here', 'answers'), verdictTable(scope, answers, 'Answers', true)),
      wideRow(...(check.id === 'axle-loads' && answers.length > 0 ? axleMasses(scope) : [])),
      textRow(...formulas(answers)),
      textRow(...inputs(check)),
      textRow(
        heading('Where it is from', 'source'),
        words('plain', [plain(`${check.source.title}, ${check.source.section}.`)]),
        ...limits(check),
      ),
      textRow(...(check.caution === null ? [] : [heading('Caution', 'caution'), words('caution', check.caution)])),
      wideRow(...examples(check)),
    ],
  })
}

/** The formula of each aspect, as symbols: every answer shows the same. */
function formulas(answers: readonly Verdict[]): PartOfPage[] {
  const seen = new Map<string, Working['formula']>()
  for (const { aspect, working } of answers) if (working.formula.length > 0) seen.set(aspect ?? '', working.formula)
  if (seen.size === 0) return []
  const parts = [...seen].flatMap(([aspect, lines]): PartOfPage[] => [
    ...(seen.size > 1 ? [heading(spaced(aspect), `formula-${aspect}`, 3)] : []),
    { kind: 'formula', lines: lines.map(line => ({ ...line, mathml: aloud(line) })) },
  ])
  return [heading('Formula', 'formula'), ...parts]
}

function inputs(check: Check): PartOfPage[] {
  const rows = Object.values(check.inputs).map(input =>
    row([
      wordsCell(input.meaning),
      wordsCell(input.dimension ?? 'words'),
      wordsCell(input.reads.flatMap((path, index) => [...(index > 0 ? [plain(', ')] : []), look('path', path)])),
    ]),
  )
  if (rows.length === 0) return []
  return [
    heading('What it needs to know', 'inputs'),
    table({ caption: 'Its inputs', columns: [column('What'), column('Dimension'), column('Read from', 'wide')], rows }),
  ]
}

function limits(check: Check): PartOfPage[] {
  const all = [
    ...(check.limit === null ? [] : [{ aspect: null, limit: check.limit }]),
    ...Object.entries(check.aspects ?? {}).flatMap(([aspect, { limit }]) =>
      limit === null ? [] : [{ aspect, limit }],
    ),
  ]
  if (all.length === 0) return [heading('Its limit', 'limit'), words('plain', 'None: it is a working, and passes.')]
  return [
    heading('Its limit', 'limit'),
    {
      kind: 'list',
      entries: all.map(({ aspect, limit }) => [
        ...(aspect === null ? [] : [look('strong', `${spaced(aspect)}: `)]),
        ...limitWords(limit),
      ]),
    },
  ]
}

function limitWords(limit: Limit) {
  return [
    plain(`${setterWords(limit.who)}: ${limit.source}`),
    ...(limit.instead === undefined
      ? []
      : [plain(`. Where the maker gives a figure, that goes first: ${limit.instead.limit.source}`)]),
  ]
}

function examples(check: Check): PartOfPage[] {
  if (check.examples.length === 0) return []
  return [
    heading('Worked examples', 'examples'),
    words('note', 'The check is tested against each of these, every time that the tool itself is built.'),
    table({
      caption: 'Worked examples',
      columns: [column('Given', 'wide'), column('Verdict'), column('Value', 'num'), column('Where it is from', 'wide')],
      rows: check.examples.map(exampleRow),
    }),
  ]
}

function exampleRow(example: Example) {
  const given = Object.entries(example.given).flatMap(([path, value], index) => [
    ...(index > 0 ? [plain('; ')] : []),
    look('path', path),
    plain(' '),
    ...figure(value),
  ])
  return row([
    wordsCell(
      given.length === 0 ? 'nothing' : given,
      example.aspect === undefined ? [] : [plain(spaced(example.aspect))],
    ),
    { kind: 'marks', marks: [{ verdict: example.expect, text: example.expect, href: null }], otherwise: '' },
    wordsCell(example.value === undefined ? '' : String(example.value)),
    wordsCell(example.source),
  ])
}
