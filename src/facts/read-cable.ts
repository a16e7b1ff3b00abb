import type { FrontScalar } from '../notes/front.ts'
import { placeWithin } from '../notes/front.ts'
import { readQuantities } from '../quantities/read-quantities.ts'
import { enterFigure, type FigureRead, reportDimension } from './enter-figure.ts'
import { quoted } from './quoted.ts'
import { reportUnread } from './read-figure.ts'
import { readWords, type WordsRead } from './read-words.ts'
import { sliceScalar } from './scalar-text.ts'
import { report, type Sheet } from './sheet.ts'
import type { Figure } from './stated-note.ts'

interface CableAsked {
  readonly path: string
  readonly role: Figure['role']
  /** A pin's wire may be given by its colour alone. */
  readonly colourAlone: boolean
}

interface CableRead {
  readonly area: FigureRead | null
  readonly colour: WordsRead | null
}

/** `2.5 mm² green/purple`, `AWG 14 red`: a section, and the words around it as the colour. */
export function readCable(sheet: Sheet, scalar: FrontScalar, asked: CableAsked): CableRead {
  const areaAsked = { path: `${asked.path}.area`, role: asked.role, dimensions: ['area'] as const }
  const { readings } = readQuantities(scalar.text, sheet.options)
  const areas = readings.filter(({ quantity }) => quantity.dimension === 'area')
  const [area] = areas
  if (area !== undefined && areas.length === 1) {
    const place = placeWithin(scalar.pieces, sheet.file, area)
    return {
      area: enterFigure(sheet, { quantity: area.quantity, place }, areaAsked),
      colour: colourAround(sheet, scalar, area),
    }
  }
  const [other] = readings
  if (areas.length > 1) reportTwoSections(sheet, scalar, asked.path)
  else if (other !== undefined)
    reportDimension(
      sheet,
      { quantity: other.quantity, place: placeWithin(scalar.pieces, sheet.file, other) },
      areaAsked,
    )
  else if (asked.colourAlone) return { area: null, colour: readWords(sheet, scalar) }
  else reportUnread(sheet, sliceScalar(scalar, 0), areaAsked)
  return { area: null, colour: null }
}

function reportTwoSections(sheet: Sheet, scalar: FrontScalar, path: string): void {
  const message = `Unexpected ${quoted(scalar.text)} for \`${path}\`, expected one section and its colour such as \`2.5 mm² green/purple\``
  report(sheet, 'not-a-quantity', { place: sliceScalar(scalar, 0).place, message, about: [path] })
}

/** The words on the longer side of the section, without a comma between. */
function colourAround(sheet: Sheet, scalar: FrontScalar, area: { start: number; end: number }): WordsRead | null {
  const before = sliceScalar(scalar, 0, area.start)
  const after = sliceScalar(scalar, area.end)
  const side = after.text.length >= before.text.length ? after : before
  const lead = /^[,;]\s*/.exec(side.text)?.[0].length ?? 0
  return readWords(sheet, sliceScalar(side, lead, side.text.replace(/\s*[,;]$/, '').length))
}
