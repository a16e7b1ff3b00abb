import type { Verdict } from '../checker/verdict.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { axleDrawing } from './axle-parts.ts'
import type { RailNote } from './blocks.ts'
import { equation } from './equation.ts'
import { figure, look, plain } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { checkWords, type PageScope, pageScope, spaced } from './page-scope.ts'
import { drawResult } from './result-drawing.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page, Term } from './site-data.ts'
import { subjectLink } from './subject-link.ts'
import { heading, words } from './tables.ts'
import { verdictAddress } from './thing-addresses.ts'
import { limitParts, spreadParts, tableParts } from './working-limits.ts'
import { besideRows, valueRows } from './working-values.ts'

/** One answer with its whole working: verdict, drawing, values with their sentences, steps, spread, limit, caution. */
export function makeWorkingPage(atlas: Atlas, verdict: Verdict): Page {
  const scope = pageScope(atlas, verdictAddress(verdict))
  const { working } = verdict
  const name = `${working.title}, ${working.subject.name}`
  return simplePage(scope, {
    title: verdict.aspect === null ? name : `${name}: ${spaced(verdict.aspect)}`,
    section: 'checks',
    gutter: gutterOf(scope, verdict),
    rows: [
      { ...textRow(...answer(verdict)), rail: othersOf(scope, verdict) },
      wideRow(...(verdict.check === 'axle-loads' ? axleDrawing(scope) : [])),
      textRow(...formulaParts(verdict)),
      ...valueRows(scope, verdict),
      textRow(...stepParts(verdict)),
      ...besideRows(verdict),
      textRow(...offenderParts(verdict)),
      wideRow(...spreadParts(verdict)),
      textRow(...limitParts(scope, verdict)),
      textRow(...tableParts(verdict)),
      textRow(...needParts(scope, verdict)),
      textRow(...(working.caution === null ? [] : [heading('Caution', 'caution'), words('caution', working.caution)])),
    ],
  })
}

function gutterOf(scope: PageScope, verdict: Verdict): Term[] {
  return [
    { term: 'Check', words: [scope.link(verdict.check, pageAddress('checks', verdict.check))] },
    { term: 'Subject', words: [subjectLink(scope, verdict)] },
    ...(verdict.aspect === null ? [] : [{ term: 'Aspect', words: [plain(spaced(verdict.aspect))] }]),
  ]
}

function answer(verdict: Verdict): PartOfPage[] {
  const { working } = verdict
  return [
    words('lede', working.question),
    { kind: 'verdict', mark: { verdict: verdict.verdict, text: verdict.verdict, href: null } },
    words('lede', figure(working.says)),
    ...drawResult(verdict),
    ...verdict.assumed.map(sentence => words('note', [look('strong', 'Assumed: '), plain(sentence)])),
    ...working.notes.map(note => words('note', note)),
  ]
}

/** In the margin: what else was asked of the same subject. */
function othersOf(scope: PageScope, verdict: Verdict): RailNote[] {
  const others = scope.atlas.verdicts.filter(other => other !== verdict && other.subject === verdict.subject)
  if (others.length === 0) return []
  return [
    {
      figure: 0,
      of: [plain('Also asked of it')],
      words: [],
      marks: others.map(other => scope.mark(other, checkWords(other))),
    },
  ]
}

function formulaParts({ working }: Verdict): PartOfPage[] {
  if (working.formula.length === 0) return []
  return [
    heading('Formula', 'formula'),
    { kind: 'formula', lines: working.formula.map(line => ({ ...line, says: '' })) },
  ]
}

function stepParts({ working }: Verdict): PartOfPage[] {
  if (working.steps.length === 0) return []
  const lines = working.steps.map(step => ({
    mathml: equation([step.symbol.mathml, step.values.mathml, step.result.mathml]),
    text: `${step.symbol.text} = ${step.values.text} = ${step.result.text}`,
    says: step.says,
  }))
  return [heading('Working', 'working'), { kind: 'formula', lines }]
}

function offenderParts({ working }: Verdict): PartOfPage[] {
  if (working.offenders.length === 0) return []
  return [
    heading('What counts against it', 'offenders'),
    { kind: 'list', entries: working.offenders.map(({ path, why }) => [look('path', path), plain(` ${why}`)]) },
  ]
}

function needParts(scope: PageScope, { working }: Verdict): PartOfPage[] {
  const needs = [
    ...working.needs,
    ...working.measureNext.filter(next => !working.needs.some(need => need.path === next.path)),
  ]
  if (needs.length === 0) return []
  return [
    heading('What to measure', 'next'),
    { kind: 'list', entries: needs.map(({ path, why }) => [look('path', path), plain(`: ${why}`)]) },
    words('note', [
      plain('All of them on one sheet: '),
      scope.link('measure next', pageAddress('measure-next')),
      plain('.'),
    ]),
  ]
}
