import { createHash } from 'node:crypto'
import { ParseSpeeds, PDFArray, PDFDict, PDFDocument, PDFHexString, PDFName, PDFRef, PDFString } from 'pdf-lib'
import { drawOwnSum } from './draw-own-sum.ts'
import type { Folder } from './folder.ts'

/** The number of the page on which each anchor stands, from 1. */
export async function pagesOfAnchors(pdf: Uint8Array): Promise<ReadonlyMap<string, number>> {
  const document = await readPdf(pdf)
  const numbers = new Map(document.getPages().map((page, index) => [page.ref, index + 1]))
  const destinations = document.catalog.lookupMaybe(PDFName.of('Dests'), PDFDict)
  const found = new Map<string, number>()
  for (const [name, goal] of destinations?.entries() ?? []) {
    const place = document.context.lookupMaybe(goal, PDFArray)?.get(0)
    const number = place instanceof PDFRef ? numbers.get(place) : undefined
    if (number !== undefined) found.set(name.decodeText(), number)
  }
  return found
}

const readPdf = (pdf: Uint8Array): Promise<PDFDocument> =>
  PDFDocument.load(pdf, { updateMetadata: false, parseSpeed: ParseSpeeds.Fastest })

/** Says what the document is, dated by its last session; nothing of the machine or the clock is left in it. */
export async function finishPdf(
  pdf: Uint8Array,
  { title, edition, date, sum, blankSum, headings }: Folder & { readonly headings: readonly string[] },
): Promise<Uint8Array> {
  const document = await readPdf(pdf)
  mendBookmarks(document, headings)
  await drawOwnSum(document, blankSum)
  const day = new Date(`${date ?? '1980-01-01'}T00:00:00Z`)
  document.setTitle(`${title}, as built`, { showInWindowTitleBar: true })
  document.setSubject(`As-built record, edition ${edition}; SHA-256 of record.json ${sum}`)
  document.setAuthor('')
  document.setCreator('oddleg')
  document.setProducer('oddleg')
  document.setCreationDate(day)
  document.setModificationDate(day)
  const name = PDFHexString.of(createHash('sha256').update(`${sum} ${edition}`).digest('hex').slice(0, 32))
  document.context.trailerInfo.ID = document.context.obj([name, name])
  return document.save({
    useObjectStreams: true,
    addDefaultPage: false,
    updateFieldAppearances: false,
    objectsPerTick: Number.POSITIVE_INFINITY,
  })
}

/**
 * Chromium takes a bookmark's words from what it draws: without the blank at the end of a line, and twice over where a page
 * begins with the heading. Each such bookmark gets the heading's own words.
 */
function mendBookmarks(document: PDFDocument, headings: readonly string[]): void {
  const known = new Map(
    headings.flatMap(words => [[close(words), words] as const, [close(words + words), words] as const]),
  )
  for (const [, object] of document.context.enumerateIndirectObjects()) {
    if (!(object instanceof PDFDict) || !object.has(PDFName.of('Parent'))) continue
    const title = object.get(PDFName.of('Title'))
    if (!(title instanceof PDFString || title instanceof PDFHexString)) continue
    const words = known.get(close(title.decodeText()))
    if (words !== undefined) object.set(PDFName.of('Title'), PDFHexString.fromText(words))
  }
}

const close = (words: string): string => words.replace(/\s/g, '').toLowerCase()
