import type { Check } from './check.ts'
import { symbolsNeeded, type Terms } from './formula.ts'
import { type Found, type Input, termIn } from './input.ts'
import type { Bound, Limit } from './limit.ts'
import type { SymbolTable } from './limit-end.ts'
import { lookUp } from './look-up.ts'
import { boundsOf, chooseLimit } from './resolve-limit.ts'
import type { Scope } from './scope.ts'

/** The inputs of one check for one subject, each read once and only when asked for. */
export class Reading {
  readonly #check: Check
  readonly #scope: Scope
  readonly #read = new Map<string, Found | null>()

  constructor(check: Check, scope: Scope) {
    this.#check = check
    this.#scope = scope
  }

  get check(): Check {
    return this.#check
  }

  get scope(): Scope {
    return this.#scope
  }

  /** What an input gives; null where it is missing. */
  named(name: string): Found | null {
    const known = this.#read.get(name)
    if (known !== undefined) return known
    const input = this.#check.inputs[name]
    if (input === undefined)
      throw new Error(
        `Unexpected input \`${name}\` of \`${this.#check.id}\`, expected one of ${Object.keys(this.#check.inputs).join(', ')}`,
      )
    const found = input.read(this.#scope)
    this.#read.set(name, found)
    return found
  }

  /** All inputs by name; null where one is missing. */
  all(): Record<string, Found> | null {
    const found: Record<string, Found> = {}
    for (const name of Object.keys(this.#check.inputs)) {
      const one = this.named(name)
      if (one !== null) found[name] = one
    }
    return Object.keys(found).length === Object.keys(this.#check.inputs).length ? found : null
  }

  /** The words of an input; null where it is none. */
  words(name: string | undefined): string | null {
    const found = name === undefined ? null : this.named(name)
    return found?.type === 'words' ? found.words : null
  }

  /** Reads what these symbols stand for, all of them, so that all that is missing is named; null where one is. */
  terms(symbols: readonly string[]): Terms | null {
    const found = symbols.map(symbol => [symbol, this.term(symbol) ?? this.#leftOut(symbol)] as const)
    const terms: Record<string, Terms[string]> = {}
    for (const [symbol, term] of found) if (term !== null) terms[symbol] = term
    return Object.keys(terms).length === symbols.length ? terms : null
  }

  /** Where it is asked whether the known part fails already, what could only worsen it may be absent. */
  #leftOut(symbol: string): 'absent' | null {
    return this.#scope.leavesOut === true && this.#check.onlyWorsens?.includes(symbol) === true ? 'absent' : null
  }

  term(symbol: string): Terms[string] | null {
    const [name] = this.#inputOf(symbol)
    const found = this.named(name)
    return found === null ? null : termIn(found)
  }

  /** Notes that what a symbol stands for is missing: it may be absent elsewhere, and here all turns on it. */
  needSymbol(symbol: string): void {
    const [, { reads, meaning }] = this.#inputOf(symbol)
    this.#scope.notebook.need(lookUp(this.#scope, reads[0] ?? symbol).path, `${meaning} is not written`)
  }

  /** The check's symbols as its limit uses them. */
  get symbols(): SymbolTable {
    return { term: symbol => this.term(symbol), meaning: symbol => this.#inputOf(symbol)[1].meaning }
  }

  /** Reads all that the limit needs here, so that it is named where it is missing. */
  readLimit(limit: Limit | null): void {
    if (limit === null) return
    const chosen = chooseLimit(limit, this.#scope)
    if (chosen.agreesWith !== undefined) this.terms([chosen.agreesWith])
    const bounds = boundsOf(chosen, this.words(chosen.by))
    for (const bound of [bounds?.min, bounds?.max]) if (bound !== undefined) this.terms(symbolsOfBound(bound))
  }

  #inputOf(symbol: string): [string, Input] {
    const entry = Object.entries(this.#check.inputs).find(([, input]) => input.symbol === symbol)
    if (entry === undefined)
      throw new Error(`Unexpected symbol \`${symbol}\` in \`${this.#check.id}\`, expected one of its inputs`)
    return entry
  }
}

/** The symbols that one end of a limit needs. */
function symbolsOfBound(bound: Bound): string[] {
  if ('share' in bound) return [bound.of]
  return 'formula' in bound ? symbolsNeeded(bound.formula) : []
}
