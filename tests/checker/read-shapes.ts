import type { PlacedShape, Shape } from '../../src/facts/fact.ts'
import type { Place } from '../../src/findings/place.ts'
import { plainReading, type Quantity } from '../../src/quantities/quantity.ts'
import { readBareNumber } from '../../src/quantities/read-bare-number.ts'
import { readOneQuantity } from '../../src/quantities/read-one-quantity.ts'

/** A figure as a note writes it; null for words. */
export function readFigure(text: string): Quantity | null {
  return readOneQuantity(text, { ...plainReading, gallon: 'imperial' }) ?? readBareNumber(text)
}

/** Shapes as a note writes them, `;` between: `box 860 x 380 x 300 mm`, `cylinder 300 x 800 mm`, `prism of [0,0] [520,0] [520,140] x 640 mm`. */
export function readShapes(text: string, place: Place): PlacedShape[] {
  return text.split('; ').map(one => ({ text: one, shape: readShape(one), place, figures: [] }))
}

function readShape(text: string): Shape {
  const unit = / ([a-z]+)$/.exec(text)?.[1] ?? 'mm'
  const figure = (digits: string | undefined): Quantity => {
    const found = readFigure(`${digits ?? ''} ${unit}`)
    if (found === null) throw new Error(`Unexpected \`${text}\`, expected a shape`)
    return found
  }
  if (text.startsWith('prism')) {
    const corners = [...text.matchAll(/\[([-\d.]+),([-\d.]+)\]/g)].map(
      match => [figure(match[1]), figure(match[2])] as const,
    )
    return { form: 'prism', corners, length: figure(/x ([\d.]+) [a-z]+$/.exec(text)?.[1]) }
  }
  const [first, second, third] = text
    .replace(/^\w+ /, '')
    .replace(/ [a-z]+$/, '')
    .split(' x ')
  if (text.startsWith('cylinder')) return { form: 'cylinder', diameter: figure(first), length: figure(second) }
  return { form: 'box', length: figure(first), width: figure(second), height: figure(third) }
}
