import type { Quantity } from '../quantities/quantity.ts'
import type { Held } from '../record/record.ts'
import type { DimensionText } from './dimension-line.ts'
import type { PageScope } from './page-scope.ts'
import { wordsAddress } from './thing-addresses.ts'

/** The lettering of a dimension: the figure as written, its balloon, and the way to its words. */
export function dimensionText(scope: PageScope, held: Held<Quantity>, says: string): DimensionText {
  const balloon = scope.balloon(held.session)
  return {
    text: bareFigure(held.value),
    balloon: balloon.square ? 'b' : balloon.text,
    href: scope.to(wordsAddress(held)),
    says: `${says} ${held.value.text}, ${balloon.says}`,
  }
}

/** A figure without its tolerance. */
export function bareFigure({ text }: Quantity): string {
  return text.split(/ ?±/)[0]?.trim() ?? text
}
