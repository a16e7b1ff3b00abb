import type { Place } from '../findings/place.ts'
import type { Dimension, Quantity } from '../quantities/quantity.ts'
import { expectedFigure } from './expected-figure.ts'
import { quoted } from './quoted.ts'
import { addFigure, report, type Sheet } from './sheet.ts'
import type { Figure } from './stated-note.ts'

/** What a key asks for: `path` for sentences and for the figure, its list of the record, the dimensions that it may have. */
export interface FigureAsked {
  readonly path: string
  readonly role: Figure['role']
  /** None: any. */
  readonly dimensions: readonly Dimension[]
}

export interface FigureRead {
  readonly quantity: Quantity
  readonly place: Place
  readonly figure: string
}

/** Enters a figure under its path; one of another dimension is reported, and kept as a figure that nobody named. */
export function enterFigure(
  sheet: Sheet,
  read: { quantity: Quantity; place: Place },
  asked: FigureAsked,
): FigureRead | null {
  const fits = asked.dimensions.length === 0 || asked.dimensions.includes(read.quantity.dimension)
  if (fits) return { ...read, figure: addFigure(sheet, { ...read, role: asked.role, path: asked.path }) }
  addFigure(sheet, { ...read, role: 'prose', path: null })
  reportDimension(sheet, read, asked)
  return null
}

/** Says that a figure has the wrong dimension for its property. */
export function reportDimension(sheet: Sheet, read: { quantity: Quantity; place: Place }, asked: FigureAsked): void {
  const message = `Unexpected ${quoted(read.quantity.text)} for \`${asked.path}\`, expected ${expectedFigure(asked.dimensions)}`
  report(sheet, 'dimension', { place: read.place, message, about: [asked.path] })
}
