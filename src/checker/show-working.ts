import { type NamePrinter, type Printed, printExpression, printSymbol } from './mathml.ts'
import type { Notebook } from './notebook.ts'
import type { Contribution } from './propagate.ts'
import { digitsOnTheWay, inMath, showLeaf, showLeafWhole, showSi } from './show-figure.ts'
import { type Leaf, leavesOf, type Step, stepsOf, type Term, workOut } from './term.ts'
import { differenceFromSi, fromSi } from './unit.ts'
import type { WorkedContribution, WorkedStep, WorkedValue } from './verdict.ts'

/** The lines that lead to a result. A line that only passes a value on is no working. */
function workingSteps(term: Term): Step[] {
  return stepsOf(term).filter(({ expression }) => expression.type !== 'name')
}

/** The lines that lead to several results, each shown once, less those that stand elsewhere already. */
export function showDistinct(terms: readonly Term[], elsewhere: readonly WorkedStep[] = []): WorkedStep[] {
  const lineOf = ({ symbol, values }: WorkedStep): string => `${symbol.text} = ${values.text}`
  const seen = new Set(elsewhere.map(lineOf))
  const steps = terms.flatMap(workingSteps)
  const used = new Set(steps.flatMap(({ uses }) => Object.values(uses).flat().map(passedOn)))
  const shown = steps.map(step => showStep(step, used.has(step) ? digitsOnTheWay : undefined))
  return shown.filter(step => !seen.has(lineOf(step)) && seen.add(lineOf(step)))
}

/** What a line that only passes a value on passes on. */
function passedOn(used: Term | readonly Term[]): Term {
  const term = used as Term
  if (term.type === 'leaf' || term.expression.type !== 'name') return term
  const [from] = Object.values(term.uses).flat()
  return from === undefined ? term : passedOn(from)
}

function showStep(step: Step, digits: number | undefined): WorkedStep {
  const value = workOut(step)
  const symbol = printSymbol(step.symbol)
  return {
    symbol: inMath(symbol),
    formula: inMath(printExpression(step.expression, namesOf(step))),
    values: inMath(printExpression(step.expression, valuesOf(step))),
    result: inMath(showSi(value, step.unit, digits)),
    value: fromSi(value, step.unit),
    unit: step.unit,
    says: step.says,
  }
}

/** Symbols as the terms name themselves, so that a line reads as the line before it ended. */
function namesOf(step: Step): NamePrinter {
  return { mode: 'symbols', name: name => printSymbol(nameOf(step.uses[name], name)), size: () => null }
}

const nameOf = (used: Step['uses'][string] | undefined, name: string): string =>
  used !== undefined && 'type' in used && used.type === 'step' ? used.symbol : name

function valuesOf(step: Step): NamePrinter {
  const used = (name: string): Term | readonly Term[] => {
    const term = step.uses[name]
    if (term === undefined) throw new Error(`Unexpected name \`${name}\` in the working of \`${step.symbol}\``)
    return term
  }
  return {
    mode: 'values',
    name: (name, index) => {
      const term = used(name)
      const one = 'type' in term ? term : term[index ?? 0]
      return one === undefined ? printSymbol(name) : showTerm(one)
    },
    size: name => {
      const term = used(name)
      return 'type' in term ? null : term.length
    },
  }
}

const showTerm = (term: Term): Printed =>
  term.type === 'leaf' ? showLeaf(term) : showSi(workOut(term), term.unit, digitsOnTheWay)

/** The values that a result and its limit stand on, and the words that they went by. */
export function showValues(terms: readonly Term[], notebook: Notebook): WorkedValue[] {
  const leaves = new Map<string, Leaf>()
  for (const leaf of [...terms.flatMap(leavesOf), ...notebook.figures])
    if (!leaves.has(leaf.id) && !isOfLimit(leaf)) leaves.set(leaf.id, leaf)
  return [...[...leaves.values()].map(leafValue), ...notebook.words.map(wordsValue)]
}

/** What only a limit is made of is said beside the limit. */
const isOfLimit = ({ origin, symbol }: Leaf): boolean =>
  origin === 'limit' || (origin === 'constant' && ['share', 'limit', 'n'].includes(symbol))

function leafValue(leaf: Leaf): WorkedValue {
  const { meaning, origin, path, quantity, place, session, figure } = leaf
  return {
    symbol: inMath(printSymbol(leaf.symbol)),
    meaning,
    origin,
    shown: inMath(showLeafWhole(leaf)),
    path,
    quantity,
    place,
    session,
    figure,
  }
}

function wordsValue({ path, words, place, session, figure }: Notebook['words'][number]): WorkedValue {
  const text = words.replace(/[&<>]/g, sign => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;' })[sign] ?? sign)
  const shown = { mathml: `<math><mtext>${text}</mtext></math>`, text: words }
  return {
    symbol: null,
    meaning: path.slice(path.lastIndexOf('/') + 1).replaceAll('.', ' '),
    origin: 'record',
    shown,
    path,
    quantity: null,
    place,
    session,
    figure,
  }
}

/** Where the uncertainty comes from, the greatest share first. `resultUnit` is that of the result. */
export function showContributions(contributions: readonly Contribution[], resultUnit: string): WorkedContribution[] {
  return contributions.map(({ leaf, carried, share }) => ({
    path: leaf.path ?? leaf.symbol,
    symbol: inMath(printSymbol(leaf.symbol)),
    meaning: leaf.meaning,
    halfWidth: differenceFromSi((leaf.high - leaf.low) / 2, leaf.unit),
    unit: leaf.unit,
    carried: differenceFromSi(Math.abs(carried), resultUnit),
    share,
  }))
}
