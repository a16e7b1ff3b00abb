import type { Check } from './check.ts'
import { type FormulaLine, parseLine, symbolsNeeded } from './formula.ts'
import type { Limit } from './limit.ts'
import { type NamePrinter, type Printed, printExpression, printSymbol } from './mathml.ts'
import { inMath } from './show-figure.ts'
import type { Shown } from './verdict.ts'

const symbolsOnly: NamePrinter = { mode: 'symbols', name: printSymbol, size: () => null }

/** A formula as its check states it, line by line: `r_t = r_20 × (1 + α × (t − 20 °C))`. */
function showFormula(lines: readonly FormulaLine[]): (Shown & { says: string })[] {
  return lines.map(line => {
    const { symbol, expression } = parseLine(line)
    return { ...inMath(equation(printSymbol(symbol), printExpression(expression, symbolsOnly))), says: line.says }
  })
}

/** The formula of a check or of one of its aspects, with the lines by which its inputs and its limit may be worked; each once. */
export function showFormulas(check: Check, aspect: string | null): (Shown & { says: string })[] {
  const own = (aspect === null ? check.formula : check.aspects?.[aspect]?.formula) ?? []
  const ends = limitLines(aspect === null ? check.limit : (check.aspects?.[aspect]?.limit ?? null))
  const needed = [own, ends].flatMap(symbolsNeeded)
  const inputs = Object.values(check.inputs).filter(({ symbol }) => symbol !== null && needed.includes(symbol))
  const all = [...inputs.flatMap(({ formula }) => formula ?? []), ...ends, ...own]
  const shown = new Map(showFormula(all).map(line => [line.text, line]))
  return [...shown.values()]
}

function limitLines(limit: Limit | null): readonly FormulaLine[] {
  const bounds = limit === null ? [] : [limit, ...Object.values(limit.groups ?? {})]
  return bounds
    .flatMap(one => [one?.min, one?.max])
    .flatMap(end => (end !== undefined && 'formula' in end ? end.formula : []))
}

const equation = (left: Printed, right: Printed): Printed => ({
  mathml: `${left.mathml}<mo>=</mo>${right.mathml}`,
  text: `${left.text} = ${right.text}`,
})
