import { type Front, type FrontScalar, placeWithin } from '../notes/front.ts'
import type { Dimension, Quantity, ReadOptions } from '../quantities/quantity.ts'
import { readBareNumber } from '../quantities/read-bare-number.ts'
import { readOneQuantity } from '../quantities/read-one-quantity.ts'
import { readQuantities } from '../quantities/read-quantities.ts'
import { enterFigure, type FigureAsked, type FigureRead } from './enter-figure.ts'
import { expectedFigure } from './expected-figure.ts'
import { quoted, quotedFront } from './quoted.ts'
import { placeOfText, sliceScalar } from './scalar-text.ts'
import { report, type Sheet } from './sheet.ts'

/** A key's value as one figure; anything else is reported, once. */
export function readFigure(sheet: Sheet, front: Front, asked: FigureAsked): FigureRead | null {
  if (front.kind !== 'scalar') {
    const message = `Unexpected ${quotedFront(front)} for \`${asked.path}\`, expected ${expectedFigure(asked.dimensions)}`
    report(sheet, 'not-a-quantity', { place: front.place, message, about: [asked.path] })
    return null
  }
  const scalar = sliceScalar(front, 0)
  const quantity = /:private/i.test(scalar.text) ? null : readValue(scalar.text, asked.dimensions, sheet.options)
  if (quantity !== null) return enterFigure(sheet, { quantity, place: placeOfText(front) }, asked)
  reportUnread(sheet, scalar, asked)
  return null
}

/** One figure of the dimensions asked for; a bare number where a number without a unit may stand. */
export function readValue(text: string, dimensions: readonly Dimension[], options: ReadOptions): Quantity | null {
  const quantity = readOneQuantity(text, options)
  if (quantity !== null) return quantity
  if (dimensions.length === 0 || dimensions.includes('ratio')) return readBareNumber(text, options.decimal)
  if (!dimensions.includes('frequency') || readBareNumber(text, options.decimal) === null) return null
  const turning = readOneQuantity(`${text} rpm`, options)
  return turning === null ? null : { ...turning, text }
}

/** A unit or a decimal mark that may be two things is said as such; the rest is no quantity. */
export function reportUnread(sheet: Sheet, scalar: FrontScalar, asked: FigureAsked): void {
  const { doubts } = readQuantities(scalar.text, sheet.options)
  const doubt = doubts.find(({ rule }) => rule === 'ambiguous-unit' || rule === 'decimal-mark')
  if (doubt !== undefined) {
    const place = placeWithin(scalar.pieces, sheet.file, doubt)
    report(sheet, doubt.rule, { place, message: doubt.message, mend: doubt.mend, about: [asked.path] })
    return
  }
  const place = scalar.text === '' ? scalar.place : placeOfText(scalar)
  const message = `Unexpected ${quoted(scalar.text)} for \`${asked.path}\`, expected ${expectedFigure(asked.dimensions)}`
  report(sheet, 'not-a-quantity', { place, message, about: [asked.path] })
}
