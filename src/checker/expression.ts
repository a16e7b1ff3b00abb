/** A formula as a tree: it computes, and it prints, so that what is printed cannot differ from what is computed. */
export type Expression =
  /** A number in SI after its unit, if any, is put in; `text` and `unit` as written. */
  | { readonly type: 'number'; readonly text: string; readonly unit: string | null }
  | { readonly type: 'name'; readonly name: string }
  | { readonly type: 'negative'; readonly of: Expression }
  | { readonly type: 'binary'; readonly operator: Operator; readonly left: Expression; readonly right: Expression }
  | { readonly type: 'call'; readonly name: FunctionName; readonly arguments: readonly Expression[] }

export type Operator = '+' | '-' | '*' | '/' | '^'

const functionNames = [
  'sqrt',
  'ln',
  'exp',
  'sin',
  'cos',
  'tan',
  'asin',
  'acos',
  'atan',
  'abs',
  'min',
  'max',
  'sum',
] as const

export type FunctionName = (typeof functionNames)[number]

interface Token {
  readonly type: 'number' | 'name' | 'sign' | 'end'
  readonly text: string
  readonly at: number
}

/** Reads one expression: `r_20 * (1 + alpha * (t - 20 degC))`. A name right after a number is its unit. Throws on anything else. */
export function parseExpression(text: string): Expression {
  const reader = new ExpressionReader(text)
  const read = reader.sum()
  reader.expect('end', '')
  return read
}

/** The names of values that an expression needs, each once, in the order met; `pi` is a number. */
export function namesIn(expression: Expression): string[] {
  const found = new Set<string>()
  const visit = (part: Expression): void => {
    if (part.type === 'name' && part.name !== 'pi') found.add(part.name)
    if (part.type === 'negative') visit(part.of)
    if (part.type === 'binary') [part.left, part.right].forEach(visit)
    if (part.type === 'call') part.arguments.forEach(visit)
  }
  visit(expression)
  return [...found]
}

/** The expression without the addends that stand on absent names; null where nothing is left. `I * R + U_feed` without `U_feed` is `I * R`. */
export function withoutNames(expression: Expression, absent: ReadonlySet<string>): Expression | null {
  const keep = (part: Expression): Expression | null => withoutNames(part, absent)
  switch (expression.type) {
    case 'number':
      return expression
    case 'name':
      return absent.has(expression.name) ? null : expression
    case 'negative': {
      const of = keep(expression.of)
      return of === null ? null : { type: 'negative', of }
    }
    case 'call': {
      const kept = expression.arguments.map(keep).filter(part => part !== null)
      return kept.length === 0 ? null : { ...expression, arguments: kept }
    }
    case 'binary':
      return sidesKept(expression, keep(expression.left), keep(expression.right))
  }
}

function sidesKept(
  whole: Extract<Expression, { type: 'binary' }>,
  left: Expression | null,
  right: Expression | null,
): Expression | null {
  if (left !== null && right !== null) return { ...whole, left, right }
  if (whole.operator === '+') return left ?? right
  if (whole.operator === '-') return left ?? (right === null ? null : { type: 'negative', of: right })
  return null
}

class ExpressionReader {
  readonly #text: string
  readonly #tokens: readonly Token[]
  #at = 0

  constructor(text: string) {
    this.#text = text
    this.#tokens = tokensOf(text)
  }

  get #next(): Token {
    return this.#tokens[this.#at] ?? { type: 'end', text: '', at: this.#text.length }
  }

  #take(): Token {
    const token = this.#next
    this.#at += 1
    return token
  }

  #isSign(...signs: string[]): boolean {
    return this.#next.type === 'sign' && signs.includes(this.#next.text)
  }

  expect(type: Token['type'], text: string): void {
    const token = this.#take()
    if (token.type !== type || token.text !== text) {
      const wanted = type === 'end' ? 'the end' : `\`${text}\``
      throw new Error(
        `Unexpected \`${token.text || 'end'}\` in \`${this.#text}\` at ${token.at + 1}, expected ${wanted}`,
      )
    }
  }

  sum(): Expression {
    let left = this.#product()
    while (this.#isSign('+', '-')) left = binary(this.#take().text as Operator, left, this.#product())
    return left
  }

  #product(): Expression {
    let left = this.#signed()
    while (this.#isSign('*', '/')) left = binary(this.#take().text as Operator, left, this.#signed())
    return left
  }

  #signed(): Expression {
    if (!this.#isSign('-')) return this.#power()
    this.#take()
    return { type: 'negative', of: this.#signed() }
  }

  // A power binds tighter than a minus before it and is read from the right: -2^3^2 = -(2^(3^2)).
  #power(): Expression {
    const base = this.#primary()
    if (!this.#isSign('^')) return base
    this.#take()
    return binary('^', base, this.#signed())
  }

  #primary(): Expression {
    const token = this.#take()
    if (token.type === 'number')
      return { type: 'number', text: token.text, unit: this.#next.type === 'name' ? this.#take().text : null }
    if (token.type === 'name') return this.#isSign('(') ? this.#call(token) : { type: 'name', name: token.text }
    if (token.type === 'sign' && token.text === '(') {
      const inner = this.sum()
      this.expect('sign', ')')
      return inner
    }
    throw new Error(
      `Unexpected \`${token.text || 'end'}\` in \`${this.#text}\` at ${token.at + 1}, expected a number, a name or \`(\``,
    )
  }

  #call(token: Token): Expression {
    const name = functionNames.find(known => known === token.text)
    if (name === undefined)
      throw new Error(
        `Unexpected function \`${token.text}\` in \`${this.#text}\`, expected one of ${functionNames.join(', ')}`,
      )
    this.expect('sign', '(')
    const given = [this.sum()]
    while (this.#isSign(',')) {
      this.#take()
      given.push(this.sum())
    }
    this.expect('sign', ')')
    return { type: 'call', name, arguments: given }
  }
}

const binary = (operator: Operator, left: Expression, right: Expression): Expression => ({
  type: 'binary',
  operator,
  left,
  right,
})

function tokensOf(text: string): Token[] {
  const pattern = /\s+|(?<number>\d+(?:\.\d+)?(?:e[+-]?\d+)?)|(?<name>[A-Za-z][A-Za-z0-9_]*|%)|(?<sign>[-+*/^(),])/gy
  const tokens: Token[] = []
  for (let at = 0; at < text.length; at = pattern.lastIndex) {
    pattern.lastIndex = at
    const groups = pattern.exec(text)?.groups
    if (groups === undefined)
      throw new Error(`Unexpected \`${text[at]}\` in \`${text}\` at ${at + 1}, expected a formula`)
    for (const type of ['number', 'name', 'sign'] as const)
      if (groups[type] !== undefined) tokens.push({ type, text: groups[type], at })
  }
  return tokens
}
