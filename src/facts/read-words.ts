import type { Place } from '../findings/place.ts'
import { type Front, type FrontScalar, placeWithin } from '../notes/front.ts'
import { readQuantities } from '../quantities/read-quantities.ts'
import type { Words } from './fact.ts'
import { scalarOf } from './front-tree.ts'
import { withOwnGroups } from './own-groups.ts'
import { sliceScalar } from './scalar-text.ts'
import { addFigure, markFigure, report, type Sheet } from './sheet.ts'
import { type UnmarkedWords, unmark } from './unmark.ts'

export interface WordsRead {
  readonly words: Words
  readonly place: Place
}

/** A key's value as words with their private marks; null where it holds no words. */
export function readWords(sheet: Sheet, front: Front | undefined): WordsRead | null {
  const scalar = trimmed(front)
  return scalar === null ? null : { words: readUnmarked(sheet, scalar).words, place: scalar.place }
}

/** The same for words that a person would say: figures in them are found too. */
export function readProse(sheet: Sheet, front: Front | undefined): WordsRead | null {
  const scalar = trimmed(front)
  if (scalar === null) return null
  const unmarked = readUnmarked(sheet, scalar)
  enterProse(sheet, scalar, unmarked)
  return { words: unmarked.words, place: scalar.place }
}

function trimmed(front: Front | undefined): FrontScalar | null {
  const scalar = scalarOf(front)
  return scalar === null ? null : sliceScalar(scalar, 0)
}

function readUnmarked(sheet: Sheet, scalar: FrontScalar): UnmarkedWords {
  const unmarked = unmark(scalar.text)
  if (unmarked.broken !== null) {
    const place = placeWithin(scalar.pieces, sheet.file, { start: unmarked.broken, end: unmarked.broken + 1 })
    const message =
      'Unexpected private mark that does not parse, expected one such as `:private[the plate]{as=identity}`'
    report(sheet, 'directive', { place, message })
  }
  return unmarked
}

function enterProse(sheet: Sheet, scalar: FrontScalar, { words, origin }: UnmarkedWords): void {
  const { readings, doubts } = readQuantities(words.text, sheet.options)
  const placeOf = ({ start, end }: { start: number; end: number }): Place =>
    placeWithin(scalar.pieces, sheet.file, { start: origin(start), end: origin(Math.max(start, end - 1)) + 1 })
  for (const { quantity, ...span } of withOwnGroups(sheet, readings)) {
    const marks = words.marks.filter(mark => mark.start < span.end && span.start < mark.end)
    const id = addFigure(sheet, { quantity, place: placeOf(span), role: 'prose', path: null })
    markFigure(sheet, id, [...new Set(marks.map(({ as }) => as))])
  }
  for (const doubt of doubts)
    report(sheet, doubt.rule, { place: placeOf(doubt), message: doubt.message, mend: doubt.mend })
}
