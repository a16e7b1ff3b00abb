import type { WorkedStep } from '../checker/verdict.ts'
import type { ReadOptions } from '../quantities/quantity.ts'
import { equation } from './equation.ts'
import { figureInOthers } from './other-units.ts'

interface StepLine {
  readonly mathml: string
  /** The same to read aloud, and for who sees no mathematics. */
  readonly text: string
  readonly says: string
}

/** One line of a working: its symbol, the values put in, the result, and what it is, in the other units too. */
export function stepLine(step: WorkedStep, gallon: ReadOptions['gallon']): StepLine {
  const { symbol, values, result, says } = step
  const other = figureInOthers(step, gallon)
  const text = [symbol.text, ...(values.text === result.text ? [] : [values.text]), result.text].join(' = ')
  return {
    mathml: equation([symbol.mathml, values.mathml, result.mathml], text),
    text,
    says: other === null ? says : `${says} (${other})`,
  }
}
