import type { Shown } from '../checker/verdict.ts'

/** Symbol = values put in = result, as one piece of mathematics that reads aloud as its line of text. */
export function equation(sides: readonly string[], text: string): string {
  const inner = sides.map(side => side.replace(/^<math[^>]*>|<\/math>$/g, ''))
  const body = inner.filter((side, index) => side !== '' && side !== inner[index - 1]).join('<mo>=</mo>')
  return `<math alttext="${attribute(text)}">${body}</math>`
}

/** A piece of mathematics with the line of text that it reads aloud as. */
export function aloud({ mathml, text }: Shown): string {
  return equation([mathml], text)
}

const attribute = (text: string): string =>
  text.replace(/[&<>"]/g, sign => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] ?? sign)
