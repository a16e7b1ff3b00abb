import { type PDFDocument, PDFRawStream, StandardFonts } from 'pdf-lib'

const point = 72 / 25.4 // points to a millimetre
const left = 22 * point // the cover's margin
const foot = 19 * point // above what stands at the foot of every page
const lead = 11 // points from line to line
const words =
  'SHA-256 of manifest.json, which holds the sum of every file; this one is summed with noughts in place of these digits:'

/**
 * Draws the place of the manifest's own sum at the foot of the cover, as plain bytes: the manifest counts this document, so that
 * its sum can be put in only afterwards, digit for digit.
 */
export async function drawOwnSum(document: PDFDocument, blank: string): Promise<void> {
  const { node } = document.getPage(0)
  const font = await document.embedFont(StandardFonts.Helvetica)
  node.normalize()
  const { context } = document
  node.wrapContentStreams(context.getPushGraphicsStateContentStream(), context.getPopGraphicsStateContentStream())
  const key = node.newFontDictionary('OwnSum', font.ref)
  const line = (size: number, up: number, text: string): string =>
    `BT ${key} ${size} Tf ${left.toFixed(2)} ${(foot + up).toFixed(2)} Td (${text}) Tj ET`
  const drawn = `q /Artifact BMC 0.2 g ${line(7, lead, words)} 0 g ${line(9, 0, blank)} EMC Q`
  const stream = PDFRawStream.of(context.obj({ Length: drawn.length }), Buffer.from(drawn, 'latin1'))
  node.addContentStream(context.register(stream))
}
