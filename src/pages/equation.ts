/** Symbol = values put in = result, as one piece of mathematics. */
export function equation(sides: readonly string[]): string {
  const inner = sides.map(side => side.replace(/^<math[^>]*>|<\/math>$/g, ''))
  return `<math>${inner.filter((side, index) => side !== '' && side !== inner[index - 1]).join('<mo>=</mo>')}</math>`
}
