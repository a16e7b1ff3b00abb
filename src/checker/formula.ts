import { type Expression, namesIn, parseExpression, withoutNames } from './expression.ts'
import type { Step, Term } from './term.ts'

/** One line of a formula, `r_t = r_20 * (1 + alpha * (t - 20 degC))`, the unit it is shown in, and what it is in words. */
export interface FormulaLine {
  readonly line: string
  /** `as written`: that of the first value in it. */
  readonly unit: string
  readonly says: string
}

interface ParsedLine {
  readonly symbol: string
  readonly expression: Expression
  readonly unit: string
  readonly says: string
}

const parsed = new Map<string, { readonly symbol: string; readonly expression: Expression }>()

/** Reads a line once; `name = expression`. */
export function parseLine({ line, unit, says }: FormulaLine): ParsedLine {
  const known = parsed.get(line) ?? readLine(line)
  parsed.set(line, known)
  return { ...known, unit, says }
}

function readLine(line: string): { symbol: string; expression: Expression } {
  const match = /^\s*(?<symbol>[A-Za-z][A-Za-z0-9_]*)\s*=(?<formula>.+)$/.exec(line)?.groups
  if (match?.symbol === undefined || match.formula === undefined)
    throw new Error(`Unexpected \`${line}\`, expected \`name = formula\``)
  return { symbol: match.symbol, expression: parseExpression(match.formula) }
}

/** The symbols that a formula takes from outside: those that none of its earlier lines gives. */
export function symbolsNeeded(lines: readonly FormulaLine[]): string[] {
  const own = new Set<string>()
  const needed = new Set<string>()
  for (const line of lines) {
    const { symbol, expression } = parseLine(line)
    for (const name of namesIn(expression)) if (!own.has(name)) needed.add(name)
    own.add(symbol)
  }
  return [...needed]
}

/** What the symbols of a formula stand for; `absent` is what may be absent and is. */
export interface Terms {
  readonly [symbol: string]: Term | readonly Term[] | 'absent'
}

/** Puts terms into a formula; its last line is the result. Addends that stand on what is absent fall away. */
export function workFormula(lines: readonly FormulaLine[], terms: Terms): Step {
  const step = workWhatIsThere(lines, terms)
  if (step === null) throw new Error(`Unexpected nothing left of \`${lines.at(-1)?.line ?? ''}\`, expected a value`)
  return step
}

/** The same; null where nothing is left of the last line. */
export function workWhatIsThere(lines: readonly FormulaLine[], terms: Terms): Step | null {
  const known: Record<string, Terms[string]> = { ...terms }
  let last: Step | null = null
  for (const line of lines) {
    last = workLine(parseLine(line), known)
    known[parseLine(line).symbol] = last ?? 'absent'
  }
  return last
}

function workLine({ symbol, expression, unit, says }: ParsedLine, known: Terms): Step | null {
  const absent = new Set(Object.keys(known).filter(name => known[name] === 'absent'))
  const kept = absent.size === 0 ? expression : withoutNames(expression, absent)
  if (kept === null) return null
  const uses = Object.fromEntries(namesIn(kept).map(name => [name, termNamed(name, known, symbol)]))
  return { type: 'step', symbol, expression: kept, uses, unit: unit === asWritten ? firstUnit(uses) : unit, says }
}

/** A formula's unit where it is that of what is put in. */
export const asWritten = 'as written'

function firstUnit(uses: Step['uses']): string {
  const [first] = Object.values(uses).flat()
  return first !== undefined && 'unit' in first ? first.unit : '1'
}

function termNamed(name: string, known: Terms, symbol: string): Term | readonly Term[] {
  const term = known[name]
  if (term === undefined || term === 'absent')
    throw new Error(
      `Unexpected \`${name}\` in the formula of \`${symbol}\`, expected one of ${Object.keys(known).join(', ')}`,
    )
  return term
}

/** Puts terms into a formula if all that it takes from outside are there; null where one is not. */
export function workIfWhole(
  lines: readonly FormulaLine[],
  termOf: (symbol: string) => Terms[string] | null,
): Step | null {
  const terms: Record<string, Terms[string]> = {}
  for (const symbol of symbolsNeeded(lines)) {
    const term = termOf(symbol)
    if (term === null || term === 'absent') return null
    terms[symbol] = term
  }
  return workFormula(lines, terms)
}
