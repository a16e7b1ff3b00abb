import type { Check } from './check.ts'
import { type FormulaLine, parseLine, symbolsNeeded, workIfWhole } from './formula.ts'
import { Notebook } from './notebook.ts'
import { propagateTerm } from './propagate.ts'
import { Reading } from './reading.ts'
import { withNotebook } from './scope.ts'
import type { Term } from './term.ts'

/** Lines that stand beside the answer, each where all that it needs is there. What they lack is not missing. */
export function workBeside(check: Check, reading: Reading): Term[] {
  const { notebook } = reading.scope
  if (check.beside === undefined || notebook.missing.length > 0) return []
  const lines = check.beside
  return lines.flatMap((_, at) => {
    const attempt = new Notebook()
    const aside = new Reading(check, withNotebook(reading.scope, attempt))
    const term = workIfWhole(linesUpTo(lines, at), symbol => aside.term(symbol))
    if (term === null) return []
    notebook.takeOver(withoutMissing(attempt))
    return [term]
  })
}

/** A line and those before it that it stands on. */
function linesUpTo(lines: readonly FormulaLine[], at: number): FormulaLine[] {
  const [last, ...before] = lines.slice(0, at + 1).reverse()
  if (last === undefined) return []
  const kept = [last]
  const needed = new Set(symbolsNeeded(kept))
  for (const line of before) {
    if (!needed.has(parseLine(line).symbol)) continue
    kept.unshift(line)
    for (const name of symbolsNeeded([line])) needed.add(name)
  }
  return kept
}

function withoutMissing(attempt: Notebook): Notebook {
  attempt.missing.length = 0
  return attempt
}

/** A sentence about values that the answer does not turn on, where all of them are there. */
export function remarkBeside(check: Check, reading: Reading): void {
  const { notebook } = reading.scope
  if (check.remark === undefined || notebook.missing.length > 0) return
  const attempt = new Notebook()
  const aside = new Reading(check, withNotebook(reading.scope, attempt))
  const values: Record<string, { value: number; uncertainty: number }> = {}
  for (const symbol of check.remark.of) {
    const term = aside.term(symbol)
    if (term === null || term === 'absent' || !('type' in term)) return
    values[symbol] = propagateTerm(term)
  }
  const sentence = check.remark.say(values)
  if (sentence === null) return
  notebook.takeOver(attempt)
  notebook.note(sentence)
}
