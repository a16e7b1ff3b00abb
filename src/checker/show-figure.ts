import { formatNumber } from '../quantities/format.ts'
import type { Quantity } from '../quantities/quantity.ts'
import { type Printed, printFigure } from './mathml.ts'
import type { Leaf } from './term.ts'
import { fromSi } from './unit.ts'
import type { Shown } from './verdict.ts'

/** What is worked on with is shown to two digits more, so that who follows on a pocket calculator ends at the same figure. */
export const digitsOnTheWay = 6

/** Digits for reading, `significant` figures of them. */
export function digitsOf(value: number, significant = 4): string {
  return Number.isFinite(value) ? formatNumber(Number(value.toPrecision(significant))) : '?'
}

/** A figure in SI, shown in a unit: `9.548 mΩ/m`. */
export function showSi(value: number, unit: string, significant = 4): Printed {
  return printFigure(digitsOf(fromSi(value, unit), significant), unit)
}

/** A leaf as its words or its table say it: `7.0 A`, without its tolerance. */
export function showLeaf(leaf: Leaf): Printed {
  const { quantity } = leaf
  if (quantity !== null && isPlain(quantity))
    return printFigure(
      quantity.numberText?.replace(/,/g, '') ?? digitsOf(quantity.number ?? leaf.value, 12),
      quantity.unit,
    )
  return quantity?.unit === 'AWG'
    ? printFigure(digitsOf(leaf.value * 1e6, digitsOnTheWay), 'mm2')
    : printFigure(digitsOf(fromSi(leaf.value, leaf.unit), 12), leaf.unit)
}

/** A leaf with what it can be: `7.0 A ± 0.4 A`, as written where it was. */
export function showLeafWhole(leaf: Leaf): Printed {
  if (leaf.text === null) return showLeaf(leaf)
  if (/^[\d.]+$/.test(leaf.text) && leaf.unit !== '1') return printFigure(leaf.text, leaf.unit)
  return {
    text: leaf.text,
    mathml: `<mtext>${leaf.text.replace(/[&<>]/g, sign => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;' })[sign] ?? sign)}</mtext>`,
  }
}

const isPlain = ({ number, unit, numberText }: Quantity): boolean =>
  number !== null && unit !== 'AWG' && numberText !== null && /^\d[\d.,]*$/.test(numberText)

/** A printed piece as a formula of its own. */
export const inMath = ({ mathml, text }: Printed): Shown => ({ mathml: `<math>${mathml}</math>`, text })
