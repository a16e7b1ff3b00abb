import type { Verdict } from '../checker/verdict.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { axleDrawing } from './axle-parts.ts'
import type { RailNote } from './blocks.ts'
import { aloud } from './equation.ts'
import { figure, look, plain } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { checkWords, type PageScope, pageScope, spaced } from './page-scope.ts'
import { drawResult } from './result-drawing.ts'
import { limitInOthers, resultInOthers } from './result-in-others.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page, Term } from './site-data.ts'
import { stepLine } from './step-line.ts'
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
      { ...textRow(...answer(scope, verdict)), rail: othersOf(scope, verdict) },
      wideRow(...(verdict.check === 'axle-loads' ? axleDrawing(scope) : [])),
      textRow(...formulaParts(verdict)),
      ...valueRows(scope, verdict),
      textRow(...stepParts(scope, verdict)),
      ...besideRows(scope, verdict),
      textRow(...offenderParts(verdict)),
      wideRow(...spreadParts(verdict)),
      textRow(...limitParts(verdict)),
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

function answer(scope: PageScope, verdict: Verdict): PartOfPage[] {
  const { working } = verdict
  return [
    words('lede', working.question),
    { kind: 'verdict', mark: { verdict: verdict.verdict, text: verdict.verdict, href: null } },
    words('lede', figure(working.says)),
    ...otherUnits(scope, verdict),
    ...drawResult(verdict),
    ...verdict.assumed.map(sentence => words('note', [look('strong', 'Assumed: '), plain(sentence)])),
    ...working.notes.map(note => words('note', note)),
  ]
}

/** The same for who measures in the other system. */
function otherUnits({ record }: PageScope, verdict: Verdict): PartOfPage[] {
  const { gallon } = record.build.reading
  const [result, limit] = [resultInOthers(verdict, gallon), limitInOthers(verdict, gallon)]
  if (result === null) return []
  return [
    words('note', [plain('In other units: '), ...figure([result, ...(limit === null ? [] : [limit])].join('; '))]),
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
  const used = usedLines(working)
  if (used.length === 0) return []
  return [
    heading('Formula', 'formula'),
    { kind: 'formula', lines: used.map(line => ({ ...line, mathml: aloud(line) })) },
  ]
}

/** The lines that this working goes by, in its symbols; the check's own where it goes by none, so that what is missing can be followed. */
function usedLines({ formula, steps, values }: Verdict['working']): Verdict['working']['formula'] {
  const used = steps.map(({ symbol, formula: line, says }) => ({
    mathml: `${symbol.mathml.replace('</math>', '')}<mo>=</mo>${line.mathml.replace(/^<math[^>]*>/, '')}`,
    text: `${symbol.text} = ${line.text}`,
    says,
  }))
  if (used.length > 0) return [...new Map(used.map(line => [line.text, line])).values()]
  const isOwn = (text: string): boolean => values.some(({ symbol }) => text.endsWith(` = ${symbol?.text}`))
  const own = formula.filter(({ text }) => isOwn(text))
  return values.length > 0 && own.length > 0 ? own : formula
}

function stepParts(scope: PageScope, { working }: Verdict): PartOfPage[] {
  if (working.steps.length === 0) return []
  return [
    heading('Working', 'working'),
    { kind: 'formula', lines: working.steps.map(step => stepLine(step, scope.record.build.reading.gallon)) },
    words(
      'note',
      'Each unit goes in as it is printed, an angle that is multiplied as radians. A figure on the way has six digits, so that a pocket calculator ends at the same result.',
    ),
  ]
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
