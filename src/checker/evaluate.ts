import type { Expression, FunctionName, Operator } from './expression.ts'
import { toSi } from './unit.ts'

/** One figure in SI, or one for each member of a set. */
export type Value = number | readonly number[]

/** Works an expression out, in SI. Sets are worked member by member: `sum(m * x)` adds the products. */
export function evaluate(expression: Expression, values: Readonly<Record<string, Value>>): Value {
  switch (expression.type) {
    case 'number':
      return numberValue(expression)
    case 'name':
      return nameValue(expression.name, values)
    case 'negative':
      return eachOf(evaluate(expression.of, values), value => -value)
    case 'binary':
      return pairwise(
        operations[expression.operator],
        evaluate(expression.left, values),
        evaluate(expression.right, values),
      )
    case 'call':
      return call(
        expression.name,
        expression.arguments.map(argument => evaluate(argument, values)),
      )
  }
}

/** A number and its unit in SI: `20 degC` is 293.15. */
function numberValue({ text, unit }: { readonly text: string; readonly unit: string | null }): number {
  return unit === null ? Number(text) : toSi(Number(text), unit)
}

function nameValue(name: string, values: Readonly<Record<string, Value>>): Value {
  if (Object.hasOwn(values, name)) return values[name] ?? Number.NaN
  if (name === 'pi') return Math.PI
  throw new Error(`Unexpected name \`${name}\` in a formula, expected one of ${Object.keys(values).join(', ')}`)
}

const operations: Readonly<Record<Operator, (left: number, right: number) => number>> = {
  '+': (left, right) => left + right,
  '-': (left, right) => left - right,
  '*': (left, right) => left * right,
  '/': (left, right) => left / right,
  '^': (left, right) => left ** right,
}

type Single = Exclude<FunctionName, 'min' | 'max' | 'sum'>

const singles: Readonly<Record<Single, (value: number) => number>> = {
  sqrt: Math.sqrt,
  ln: Math.log,
  exp: Math.exp,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  asin: Math.asin,
  acos: Math.acos,
  atan: Math.atan,
  abs: Math.abs,
}

function call(name: FunctionName, given: readonly Value[]): Value {
  if (name === 'sum') return given.flat().reduce((total, value) => total + value, 0)
  if (name === 'min') return Math.min(...given.flat())
  if (name === 'max') return Math.max(...given.flat())
  const [first, ...more] = given
  if (first === undefined || more.length > 0)
    throw new Error(`Unexpected ${given.length} values for \`${name}\`, expected one`)
  return eachOf(first, singles[name])
}

function eachOf(value: Value, work: (value: number) => number): Value {
  return typeof value === 'number' ? work(value) : value.map(work)
}

function pairwise(work: (left: number, right: number) => number, left: Value, right: Value): Value {
  if (typeof left === 'number' && typeof right === 'number') return work(left, right)
  if (typeof left === 'number') return (right as readonly number[]).map(value => work(left, value))
  if (typeof right === 'number') return left.map(value => work(value, right))
  if (left.length !== right.length)
    throw new Error(`Unexpected sets of ${left.length} and ${right.length}, expected equal ones`)
  return left.map((value, index) => work(value, right[index] ?? Number.NaN))
}
