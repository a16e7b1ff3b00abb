import type { Check, Example } from '../checker/check.ts'
import type { Bound, Bounds, Limit } from '../checker/limit.ts'
import { figureInOthers } from '../pages/other-units.ts'
import { provenanceOf } from '../pages/provenance.ts'
import { findUnit, unitOf } from '../quantities/units.ts'

export interface Explanation {
  /** What sort of name it is. */
  readonly what: string
  readonly says: string
  readonly sections: readonly { readonly heading: string; readonly lines: readonly string[] }[]
}

/** A check in words: its formula, what it wants, whose limit, caution, worked examples. */
export function explainCheck(check: Check): Explanation {
  const formulas = Object.entries(check.aspects ?? { '': { formula: check.formula ?? [], limit: check.limit } })
  const lines = formulas.flatMap(([aspect, { formula }]) =>
    formula.map(({ line, unit, says }) => `${aspect === '' ? '' : `${aspect}: `}${line}   (${unit}) ${says}`),
  )
  return {
    what: 'a check',
    says: check.question,
    sections: [
      { heading: 'Asked of', lines: [check.subject.meaning] },
      { heading: 'Formula', lines: lines.length === 0 ? ['it counts what does not hold'] : lines },
      { heading: 'Source', lines: [`${check.source.title}, ${check.source.section}`] },
      {
        heading: 'It needs',
        lines: Object.values(check.inputs).map(
          ({ meaning, reads }) => `${meaning}${reads.length === 0 ? '' : `: ${reads.join(', ')}`}`,
        ),
      },
      { heading: 'Limit', lines: formulas.flatMap(([aspect, { limit }]) => limitLines(aspect, limit)) },
      ...(check.caution === null ? [] : [{ heading: 'Caution', lines: [check.caution] }]),
      { heading: 'Worked examples', lines: check.examples.map(example => exampleLine(check, example)) },
    ],
  }
}

function limitLines(aspect: string, limit: Limit | null): string[] {
  const start = aspect === '' ? '' : `${aspect}: `
  if (limit === null) return [`${start}none; it is a working`]
  const groups = Object.entries(limit.groups ?? {}).map(
    ([group, bounds]) => `${start}${group}: ${bounds === null ? 'no row of the rule was seen' : boundsText(bounds)}`,
  )
  const own = boundsText(limit)
  return [
    ...groups,
    ...(own === '' ? [] : [`${start}${groups.length > 0 ? 'else ' : ''}${own}`]),
    `${start}set by ${limit.who}: ${limit.source}`,
  ]
}

function boundsText({ min, max }: Bounds): string {
  return [min === undefined ? '' : `at least ${boundText(min)}`, max === undefined ? '' : `at most ${boundText(max)}`]
    .filter(part => part !== '')
    .join(', ')
}

function boundText(bound: Bound): string {
  if ('value' in bound) {
    const other = figureInOthers(bound, null)
    const written = bound.unit === '1' ? String(bound.value) : `${bound.value} ${unitOf(bound.unit).symbol}`
    return other === null ? written : `${written} (${other})`
  }
  if ('share' in bound) return `${Number((bound.share * 100).toPrecision(6))} % of ${bound.of}`
  return bound.formula.map(({ line }) => line).join('; ')
}

function exampleLine(check: Check, { given, aspect, expect, value, source }: Example): string {
  const stated = Object.entries(given)
    .map(([path, text]) => `${path} ${text}`)
    .join(', ')
  const formula = aspect === undefined ? check.formula : check.aspects?.[aspect]?.formula
  const came = value === undefined ? '' : ` (${inBoth(value, formula?.at(-1)?.unit ?? '1')})`
  return `${stated} → ${aspect === undefined ? '' : `${aspect} `}${expect}${came}   ${source}`
}

/** `57.6 kg, 127 lb`: a figure in the check's own unit, and in the other system where there is one. */
function inBoth(value: number, unit: string): string {
  const symbol = findUnit(unit)?.symbol ?? ''
  const other = findUnit(unit) === null ? null : figureInOthers({ value, unit }, null)
  return [`${value} ${symbol}`.trim(), ...(other === null ? [] : [other])].join(', ')
}

/** Every check with where its formula and its limits are from, and what of it is from memory or without a source. */
export function explainChecks(checks: readonly Check[]): Explanation {
  const sections = checks.map(check => {
    const { formula, limits, unseen } = provenanceOf(check)
    const limitLine = ({ aspects, who, source }: (typeof limits)[number]): string =>
      `limit${aspects.length === 0 ? '' : ` (${aspects.join(', ')})`}: ${who}: ${source}`
    return {
      heading: check.id,
      lines: [
        `formula: ${formula}`,
        ...(limits.length === 0 ? ['limit: none; it is a working'] : limits.map(limitLine)),
        ...unseen.map(clause => `not looked up: ${clause}`),
      ],
    }
  })
  return { what: 'every check', says: 'Where each has its formula and its limit from, as its file says it.', sections }
}
