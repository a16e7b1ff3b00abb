import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** A document read back by a library that did not write it. */
export async function readPdf(pdf: Uint8Array): Promise<PDFDocumentProxy> {
  return getDocument({ data: pdf.slice(), verbosity: 0, isEvalSupported: false }).promise
}

/** The words of each page, its margins too, in the order drawn. */
export async function pageTexts(document: PDFDocumentProxy): Promise<string[]> {
  const texts: string[] = []
  for (let number = 1; number <= document.numPages; number++) {
    const { items } = await (await document.getPage(number)).getTextContent()
    texts.push(
      items
        .map(item => ('str' in item ? `${item.str}${item.hasEOL ? ' ' : ''}` : ''))
        .join('')
        .replace(/\s+/g, ' '),
    )
  }
  return texts
}

/** Every title of the bookmarks, with its rank. */
export async function bookmarks(document: PDFDocumentProxy): Promise<string[]> {
  type Outline = Awaited<ReturnType<PDFDocumentProxy['getOutline']>>
  const flat = (outline: Outline, rank: number): string[] =>
    (outline ?? []).flatMap(({ title, items }) => [`${'> '.repeat(rank)}${title}`, ...flat(items, rank + 1)])
  return flat(await document.getOutline(), 0)
}
