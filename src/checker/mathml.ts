import { unitSymbol } from '../quantities/format.ts'
import type { Expression, FunctionName, Operator } from './expression.ts'

/** A piece of a formula in both of its forms: MathML without attributes of style, and one line of text. */
export interface Printed {
  readonly mathml: string
  readonly text: string
}

/** How names are printed: as symbols, or as the values put in. `index` picks the member of a set inside a sum. */
export interface NamePrinter {
  readonly mode: 'symbols' | 'values'
  readonly name: (name: string, index: number | null) => Printed
  /** How many members a name stands for; null for a single figure. */
  readonly size: (name: string) => number | null
}

const thin = '<mspace width="0.17em"/>'
const narrowNoBreak = '\u202f'

const greek: Readonly<Record<string, string>> = Object.fromEntries(
  'alpha α beta β gamma γ Delta Δ delta δ eta η theta θ kappa κ lambda λ mu μ nu ν pi π rho ρ sigma σ tau τ phi φ omega ω'
    .split(' ')
    .flatMap((word, at, all) => (at % 2 === 0 ? [[word, all[at + 1] ?? '']] : [])),
)

/** `r_20` as r with the subscript 20, `DeltaU` as ΔU, `theta_i` as θ with i; further subscripts are joined by commas. */
export function printSymbol(symbol: string): Printed {
  const [head = '', ...tails] = symbol.split('_')
  const prefix = Object.keys(greek).find(word => head.startsWith(word))
  const letters = prefix === undefined ? head : `${greek[prefix]}${head.slice(prefix.length)}`
  const base =
    [...letters].length > 1 && prefix === undefined
      ? `<mi mathvariant="normal">${escapeXml(letters)}</mi>`
      : lettersMathml(letters)
  if (tails.length === 0) return { mathml: base, text: letters }
  const subscript = tails.join(',')
  const sub = /^\d+$/.test(subscript)
    ? `<mn>${subscript}</mn>`
    : `<mi mathvariant="normal">${escapeXml(subscript)}</mi>`
  return { mathml: `<msub>${base}${sub}</msub>`, text: `${letters}_${subscript}` }
}

function lettersMathml(letters: string): string {
  const each = [...letters].map(letter => `<mi>${escapeXml(letter)}</mi>`)
  return each.length === 1 ? each.join('') : `<mrow>${each.join('')}</mrow>`
}

/** A number with its unit behind a thin space, as `12.5 mm`. */
export function printFigure(digits: string, unit: string): Printed {
  const symbol = unitSymbol(unit)
  const number = digits.replace(/^-/, '−')
  const mathml = `${number.startsWith('−') ? `<mo>−</mo><mn>${escapeXml(number.slice(1))}</mn>` : `<mn>${escapeXml(number)}</mn>`}`
  if (symbol === '') return { mathml, text: number }
  return {
    mathml: `${mathml}${thin}<mi mathvariant="normal">${escapeXml(symbol)}</mi>`,
    text: `${number}${narrowNoBreak}${symbol}`,
  }
}

const ranks: Readonly<Record<Operator, number>> = { '+': 1, '-': 1, '*': 2, '/': 2, '^': 4 }
const signs: Readonly<Record<'+' | '-', string>> = { '+': '+', '-': '−' }

/** Prints an expression; brackets stand only where they are needed. */
export function printExpression(expression: Expression, printer: NamePrinter, index: number | null = null): Printed {
  const print = (part: Expression): Printed => printExpression(part, printer, index)
  switch (expression.type) {
    case 'number':
      return printFigure(expression.text, expression.unit ?? '1')
    case 'name':
      return expression.name === 'pi' ? printSymbol('pi') : printer.name(expression.name, index)
    case 'negative': {
      const of = bracketed(expression.of, print(expression.of), 3)
      return { mathml: `<mo>−</mo>${of.mathml}`, text: `−${of.text}` }
    }
    case 'binary':
      return printBinary(expression, print, printer)
    case 'call':
      return printCall(expression, printer, index)
  }
}

type Binary = Extract<Expression, { type: 'binary' }>

function printBinary(
  { operator, left, right }: Binary,
  print: (part: Expression) => Printed,
  printer: NamePrinter,
): Printed {
  const rank = ranks[operator]
  if (operator === '/') return printFraction(left, right, print)
  if (operator === '^') return printPower({ left, right }, print, printer)
  const a = bracketed(left, print(left), rank)
  const second = bracketed(right, print(right), operator === '-' ? rank + 1 : rank)
  const b = second.text.startsWith('−') ? inBrackets(second) : second
  if (operator !== '*')
    return {
      mathml: `${a.mathml}<mo>${signs[operator]}</mo>${b.mathml}`,
      text: `${a.text} ${signs[operator]} ${b.text}`,
    }
  const isPlain = printer.mode === 'symbols' && right.type !== 'number'
  return { mathml: `${a.mathml}<mo>${isPlain ? '\u2062' : '×'}</mo>${b.mathml}`, text: `${a.text} × ${b.text}` }
}

function printFraction(left: Expression, right: Expression, print: (part: Expression) => Printed): Printed {
  const [over, under] = [print(left), print(right)]
  const text = `${bracketed(left, over, 2).text} / ${bracketed(right, under, 3).text}`
  return { mathml: `<mfrac><mrow>${over.mathml}</mrow><mrow>${under.mathml}</mrow></mfrac>`, text }
}

function printPower(
  of: Pick<Binary, 'left' | 'right'>,
  print: (part: Expression) => Printed,
  printer: NamePrinter,
): Printed {
  const isFigure =
    (of.left.type === 'number' && of.left.unit !== null) || (of.left.type === 'name' && printer.mode === 'values')
  const printed = print(of.left)
  const base = isFigure ? inBrackets(printed) : bracketed(of.left, printed, 5)
  const power = print(of.right)
  const superscript: Readonly<Record<string, string>> = { '2': '²', '3': '³' }
  const raised = superscript[power.text] ?? `^${bracketed(of.right, power, 5).text}`
  return {
    mathml: `<msup><mrow>${base.mathml}</mrow><mrow>${power.mathml}</mrow></msup>`,
    text: `${base.text}${raised}`,
  }
}

const functionWords: Partial<Record<FunctionName, string>> = { asin: 'arcsin', acos: 'arccos', atan: 'arctan' }

function printCall(call: Extract<Expression, { type: 'call' }>, printer: NamePrinter, index: number | null): Printed {
  const [first] = call.arguments
  if (first === undefined) throw new Error(`Unexpected empty \`${call.name}\`, expected a value`)
  if (call.name === 'sum') return printSum(first, printer)
  const given = call.arguments.flatMap(argument => printMembers(argument, printer, index))
  if (call.name === 'sqrt')
    return {
      mathml: `<msqrt>${given.map(({ mathml }) => mathml).join('')}</msqrt>`,
      text: `√(${given.map(({ text }) => text).join('')})`,
    }
  const word = functionWords[call.name] ?? call.name
  const mathml = `<mi>${word}</mi><mo>\u2061</mo><mrow><mo>(</mo>${given.map(one => one.mathml).join('<mo>,</mo>')}<mo>)</mo></mrow>`
  return { mathml, text: `${word}(${given.map(({ text }) => text).join(', ')})` }
}

const mostMembers = 6 // written out one by one; beyond that a line no longer fits a page, and the values stand in the list

function printSum(of: Expression, printer: NamePrinter): Printed {
  const size = sizeOf(of, printer) ?? 0
  if (printer.mode === 'symbols' || size > (of.type === 'name' ? mostMembers : mostMembers / 2)) {
    const inner = bracketed(of, printExpression(of, { ...printer, mode: 'symbols', name: printSymbol }), 3)
    return { mathml: `<mo>∑</mo>${inner.mathml}`, text: `Σ ${inner.text}` }
  }
  const each = printMembers(of, printer, null)
  const [only] = each
  if (only === undefined) return printFigure('0', '1')
  if (each.length === 1 && of.type === 'name') return only
  return inBrackets({
    mathml: each.map(({ mathml }) => mathml).join('<mo>+</mo>'),
    text: each.map(({ text }) => text).join(' + '),
  })
}

/** An expression once for each member of the sets in it, with the values put in; else once. */
function printMembers(of: Expression, printer: NamePrinter, index: number | null): Printed[] {
  const size = printer.mode === 'values' && index === null ? sizeOf(of, printer) : null
  if (size === null) return [printExpression(of, printer, index)]
  return Array.from({ length: size }, (_, member) => printExpression(of, printer, member))
}

function sizeOf(of: Expression, printer: NamePrinter): number | null {
  if (of.type === 'name') return printer.size(of.name)
  if (of.type === 'negative') return sizeOf(of.of, printer)
  if (of.type === 'binary') return sizeOf(of.left, printer) ?? sizeOf(of.right, printer)
  if (of.type === 'number') return null
  return of.arguments.reduce<number | null>((size, argument) => size ?? sizeOf(argument, printer), null)
}

function bracketed(part: Expression, printed: Printed, rank: number): Printed {
  const own =
    part.type === 'binary'
      ? ranks[part.operator]
      : part.type === 'negative'
        ? 1.5
        : part.type === 'call' && part.name === 'sum' && !printed.text.startsWith('(')
          ? 2
          : 9
  return own < rank || (part.type === 'binary' && part.operator === '/' && rank > 2) ? inBrackets(printed) : printed
}

function inBrackets({ mathml, text }: Printed): Printed {
  return { mathml: `<mrow><mo>(</mo>${mathml}<mo>)</mo></mrow>`, text: `(${text})` }
}

function escapeXml(text: string): string {
  return text.replace(/[&<>"]/g, sign => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] ?? sign)
}
