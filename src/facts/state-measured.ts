import type { Place } from '../findings/place.ts'
import type { Front, FrontMap } from '../notes/front.ts'
import type { FigureAsked } from './enter-figure.ts'
import type { FactValue, Words } from './fact.ts'
import { entryOf, scalarOf } from './front-tree.ts'
import { dimensionHinted } from './hinted-dimension.ts'
import { printPath } from './identifier.ts'
import { dimensionsMeasured, type MeasuredProperty, reportNearProperty } from './measured-property.ts'
import { holdsWords } from './properties.ts'
import { readFigure } from './read-figure.ts'
import { readProse, readWords } from './read-words.ts'
import { sliceScalar } from './scalar-text.ts'
import { addFact, type Sheet } from './sheet.ts'
import { reportKey } from './structure-findings.ts'

const measurementKeys = ['value', 'with', 'note', 'supersedes']

/** States a measured property: a figure, or a mapping with its value and how it was measured. */
export function stateMeasured(sheet: Sheet, value: Front, property: MeasuredProperty): void {
  reportNearProperty(sheet, property)
  const measured = { ...property, ...(value.kind === 'map' ? howMeasured(sheet, value) : unsaid) }
  if (value.kind === 'map') reportKeys(sheet, value, property)
  const inner = value.kind === 'map' ? entryOf(value, 'value')?.value : value
  const read = readMeasured(sheet, inner ?? null, measured)
  if (read !== null) addMeasured(sheet, measured, read)
}

function reportKeys(sheet: Sheet, map: FrontMap, { subject, property }: MeasuredProperty): void {
  const ground = { front: map, under: [printPath(subject, property)] }
  for (const { key } of map.entries)
    if (!measurementKeys.includes(key)) reportKey(sheet, ground, { path: [key], known: measurementKeys })
}

interface HowMeasured {
  readonly with: Words | null
  readonly note: Words | null
  readonly supersedes: boolean
}

const unsaid: HowMeasured = { with: null, note: null, supersedes: false }

function howMeasured(sheet: Sheet, map: FrontMap): HowMeasured {
  return {
    with: readWords(sheet, entryOf(map, 'with')?.value)?.words ?? null,
    note: readProse(sheet, entryOf(map, 'note')?.value)?.words ?? null,
    supersedes: scalarOf(entryOf(map, 'supersedes')?.value)?.text.trim() === 'true',
  }
}

export type Measured = MeasuredProperty & HowMeasured

interface ValueMeasured {
  readonly place: Place
  readonly value: FactValue
  readonly figure: string | null
}

/** The value: a figure, words where the property holds words, or that it is taken back; `null` is a mapping without one. */
function readMeasured(sheet: Sheet, front: Front | null, measured: Measured): ValueMeasured | null {
  if (front?.kind === 'nothing') return { place: front.place, value: { type: 'nothing' }, figure: null }
  if (front !== null && holdsWords(measured.property)) {
    const read = readWords(sheet, front)
    return read === null ? null : { place: read.place, value: { type: 'words', words: read.words }, figure: null }
  }
  const value = front ?? { kind: 'nothing' as const, place: measured.keyPlace }
  const read = readFigure(sheet, value, askedOf(measured, value))
  return read === null ? null : { ...read, value: { type: 'quantity', quantity: read.quantity } }
}

/** A bare number under a name such as `roof-height` is asked for its unit. */
function askedOf(measured: Measured, value: Front): FigureAsked {
  const dimensions = dimensionsMeasured(measured)
  const path = printPath(measured.subject, measured.property)
  const hinted = dimensionHinted(measured.property)
  const isBare = value.kind === 'scalar' && /^[-−+]?[\d.,\s]+$/.test(sliceScalar(value, 0).text)
  return {
    path,
    role: 'measurement',
    dimensions: dimensions.length === 0 && isBare && hinted !== null ? [hinted] : dimensions,
  }
}

/** States a measured figure that was read; an observation unless it is words. */
export function addMeasured(sheet: Sheet, measured: Measured, { place, value, figure }: ValueMeasured): void {
  const { subject, property: key, keyPlace, bare, supersedes, note } = measured
  const observed = value.type !== 'words'
  const said = { observed, with: measured.with, note, supersedes, bare }
  addFact(sheet, { type: 'property', subject, key, keyPlace, place, value, figure, ...said })
}
