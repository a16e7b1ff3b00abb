import type { Check, Example } from '../checker/check.ts'
import type { Bound, Bounds, Limit } from '../checker/limit.ts'

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
      { heading: 'Worked examples', lines: check.examples.map(exampleLine) },
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
  if ('value' in bound) return bound.unit === '1' ? String(bound.value) : `${bound.value} ${bound.unit}`
  if ('share' in bound) return `${Number((bound.share * 100).toPrecision(6))} % of ${bound.of}`
  return bound.formula.map(({ line }) => line).join('; ')
}

function exampleLine({ given, aspect, expect, value, source }: Example): string {
  const stated = Object.entries(given)
    .map(([path, text]) => `${path} ${text}`)
    .join(', ')
  return `${stated} → ${aspect === undefined ? '' : `${aspect} `}${expect}${value === undefined ? '' : ` (${value})`}   ${source}`
}
