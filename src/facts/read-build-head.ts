import type { Front } from '../notes/front.ts'
import type { Note } from '../notes/note.ts'
import { readOneQuantity } from '../quantities/read-one-quantity.ts'
import { positiveDecimal } from './exact-decimal.ts'
import { entriesOf, entryOf, scalarOf } from './front-tree.ts'
import { quotedFront } from './quoted.ts'
import { readFigure } from './read-figure.ts'
import { readDate, readTitle, readWriter } from './read-head.ts'
import { readWords } from './read-words.ts'
import { placeOfText } from './scalar-text.ts'
import { report, type Sheet } from './sheet.ts'
import type { BuildHead } from './stated-note.ts'

const usualCurrency = 'GBP' // where build.md names none

/** What build.md says of the build as a whole. */
export function readBuildHead(sheet: Sheet, note: Note): BuildHead {
  const { front, file, fence } = note
  const started = entryOf(front, 'started')?.value
  return {
    file,
    fence,
    title: readTitle(sheet, note),
    summary: readWords(sheet, entryOf(front, 'summary')?.value)?.words ?? null,
    started: started === undefined || started.kind === 'nothing' ? null : readDate(sheet, started, 'started'),
    by: readWriter(sheet, front),
    currency: readCurrency(sheet, entryOf(front, 'currency')?.value),
    rates: readRates(sheet, entryOf(front, 'rates')?.value),
    units: readUnits(sheet, entryOf(front, 'units')?.value),
    approximateShare: readApproximate(sheet, entryOf(front, 'approximate')?.value),
    reading: { gallon: sheet.options.gallon, mil: sheet.options.mil, decimal: sheet.options.decimal },
    identity: entriesOf(entryOf(front, 'identity')?.value).flatMap(({ key, value }) => {
      const read = readWords(sheet, value)
      return read === null ? [] : [{ key, ...read }]
    }),
  }
}

function readCurrency(sheet: Sheet, front: Front | undefined): string {
  const code = scalarOf(front)?.text.trim()
  if (front === undefined || code === undefined) return usualCurrency
  if (isCurrency(code)) return code
  const message = `Unexpected ${quotedFront(front)} for \`currency\`, expected a code of three letters such as \`GBP\``
  report(sheet, 'unknown-value', { place: placeOfText(front), message })
  return usualCurrency
}

/** A code of ISO 4217 in capitals. */
const isCurrency = (code: string): boolean => /^[A-Z]{3}$/.test(code)

/** What one of each currency is worth; exact decimals, as money is. */
function readRates(sheet: Sheet, section: Front | undefined): Record<string, string> {
  const rates = entriesOf(section).flatMap(({ key, keyPlace, value }) => {
    const rate = positiveDecimal(scalarOf(value)?.text ?? '', sheet.options.decimal)
    if (rate !== null && isCurrency(key)) return [[key, rate] as const]
    if (isCurrency(key)) {
      const message = `Unexpected ${quotedFront(value)} for \`rates/${key}\`, expected a number such as \`0.86\``
      report(sheet, 'not-a-quantity', { place: placeOfText(value), message })
    } else
      report(sheet, 'unknown-key', {
        place: keyPlace,
        message: `Unexpected key \`${key}\` in \`rates\`, expected a code of three letters such as \`EUR\``,
      })
    return []
  })
  return Object.fromEntries(rates)
}

/** The unit in which figures of each dimension are shown, by the identifiers of units. */
function readUnits(sheet: Sheet, section: Front | undefined): Record<string, string> {
  const units = entriesOf(section).flatMap(({ key, value }) => {
    const text = scalarOf(value)?.text.trim()
    if (text === undefined) return []
    const one = readOneQuantity(`1 ${text}`, sheet.options)
    if (one !== null && one.dimension === key) return [[key, one.unit] as const]
    const rule = one === null ? 'unknown-value' : 'dimension'
    const message = `Unexpected ${quotedFront(value)} for \`units/${key}\`, expected a unit of that dimension such as \`mm\`, \`L\` or \`kg\``
    report(sheet, rule, { place: placeOfText(value), message })
    return []
  })
  return Object.fromEntries(units)
}

function readApproximate(sheet: Sheet, front: Front | undefined): number {
  if (front === undefined || front.kind === 'nothing') return sheet.options.approximate
  return (
    readFigure(sheet, front, { path: 'build:approximate', role: 'setting', dimensions: ['ratio'] })?.quantity.si ??
    sheet.options.approximate
  )
}
