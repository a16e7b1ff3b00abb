import type { Check } from '../../src/checker/check.ts'
import { type FormulaLine, workFormula } from '../../src/checker/formula.ts'
import { statedLeaf } from '../../src/checker/leaf.ts'
import { type Leaf, workOut } from '../../src/checker/term.ts'
import { fromSi } from '../../src/checker/unit.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from '../checks/answer-to.ts'

/** A published figure and its unit; several make a set; `absent` is what may be left out. */
export type Figure = readonly [value: number, unit: string]
export type Figures = Readonly<Record<string, Figure | readonly Figure[] | 'absent'>>

const leafOf = (symbol: string, [value, unit]: Figure): Leaf =>
  statedLeaf('constant', { symbol, meaning: symbol, value, unit })
const isSet = (figure: Figure | readonly Figure[]): figure is readonly Figure[] => Array.isArray(figure[0])

/** The project's own lines with published figures put in; the last line, in the unit named. */
export function put(lines: readonly FormulaLine[] | undefined, unit: string, figures: Figures): number {
  if (lines === undefined) throw new Error('Unexpected check without lines, expected a formula')
  const terms = Object.fromEntries(
    Object.entries(figures).map(([symbol, figure]) => {
      if (figure === 'absent') return [symbol, figure] as const
      if (!isSet(figure)) return [symbol, leafOf(symbol, figure)] as const
      return [symbol, figure.map((one, at) => leafOf(`${symbol}_${at}`, one))] as const
    }),
  )
  return fromSi(workOut(workFormula(lines, terms)), unit)
}

/** What a check answers of a made record, in the check's own unit. */
export function resultOf(check: Check, given: Given, aspect?: string): number {
  return answerTo(check, { given, ...(aspect === undefined ? {} : { aspect }) }).result?.value ?? Number.NaN
}

/** The upper end of the limit of a check's answer. */
export function mostOf(check: Check, given: Given, aspect?: string): number {
  return answerTo(check, { given, ...(aspect === undefined ? {} : { aspect }) }).limit?.max ?? Number.NaN
}

/** How far a value is from a published one, as a share of it. */
export const shareOff = (value: number, published: number): number => Math.abs(value / published - 1)
export const off = (value: number, published: number): number => Math.abs(value - published)
