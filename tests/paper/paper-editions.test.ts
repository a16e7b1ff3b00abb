import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  type PDFObject,
  PDFRawStream,
  PDFString,
} from 'pdf-lib'
import { beforeAll, describe, expect, test } from 'vitest'
import { publishFiles } from '../../src/publish.ts'
import type { Canary } from '../editions/canaries.ts'
import { canaryBuild, editionLists, inPhoto } from '../editions/canary-build.ts'
import { readBuild } from '../editions/published-bytes.ts'
import { openTestPress } from './open-press.ts'
import { bookmarks, pageTexts, readPdf } from './read-pdf.ts'

let canaries: readonly Canary[]
const said = new Map<string, string>()

beforeAll(async () => {
  const made = await canaryBuild()
  canaries = made.canaries
  const built = await readBuild(made.files)
  const press = await openTestPress()
  for (const edition of ['public', 'full']) {
    const files = await publishFiles(built, { edition, serve: false, paper: press.print })
    const content = files.find(({ path }) => path === 'record.pdf')?.content
    if (!(content instanceof Uint8Array)) throw new Error('Unexpected files without record.pdf')
    said.set(edition, await everythingSaid(content))
  }
  await press.close()
}, 180_000)

/** What a document says anywhere: drawn words, bookmarks, what it says of itself, every string and every stream unpacked. */
async function everythingSaid(pdf: Uint8Array): Promise<string> {
  const document = await readPdf(pdf)
  const drawn = [
    ...(await pageTexts(document)),
    ...(await bookmarks(document)),
    JSON.stringify(await document.getMetadata()),
  ]
  await document.destroy()
  const { context } = await PDFDocument.load(pdf, { updateMetadata: false })
  const held = context.enumerateIndirectObjects().flatMap(([, object]) => stringsIn(object))
  // A long word may be broken over two lines; in streams, digits of places must not grow together into a word.
  return [...drawn.map(text => text.replace(/\s/g, '')), ...held].join('\n').toLowerCase()
}

function stringsIn(object: PDFObject): string[] {
  if (object instanceof PDFString || object instanceof PDFHexString) return [object.decodeText()]
  if (object instanceof PDFArray) return object.asArray().flatMap(stringsIn)
  if (object instanceof PDFDict)
    return object.entries().flatMap(([name, value]) => [name.decodeText(), ...stringsIn(value)])
  if (!(object instanceof PDFRawStream)) return []
  const isPicture = object.dict.toString().includes('/DCTDecode')
  const bytes = isPicture ? object.contents : decodePDFRawStream(object).decode()
  return [...stringsIn(object.dict), Buffer.from(bytes).toString('latin1')]
}

const withheld: readonly string[] = editionLists.public
const isHidden = ({ as }: Canary): boolean => as.some(kind => kind === 'broken' || withheld.includes(kind))
const stands = (edition: string, { word }: Canary): boolean => said.get(edition)?.includes(word.toLowerCase()) ?? false

/** What no page shows, and what a page shows only under a pointer. */
const notOnPaper: readonly string[] = [
  'authority',
  'note of a measurement',
  'title of a link with a mark',
  'title of a link',
  'title of a definition',
]

describe('the document of an edition', () => {
  test('says nothing anywhere of what the public edition withholds', () => {
    expect(canaries.filter(canary => isHidden(canary) && stands('public', canary)).map(({ where }) => where)).toEqual(
      [],
    )
  })

  test('says all that the public edition does not withhold', () => {
    expect(
      canaries
        .filter(canary => !isHidden(canary) && !notOnPaper.includes(canary.where) && !stands('public', canary))
        .map(({ where }) => where),
    ).toEqual([])
  })

  test('of the full edition says every canary that a page shows', () => {
    const lost = canaries.filter(canary => !stands('full', canary)).map(({ where }) => where)
    expect(lost.filter(where => !notOnPaper.includes(where))).toEqual([])
  })

  test('keeps nothing of the metadata of photographs', () => {
    expect([...said.values()].filter(text => text.includes(inPhoto.toLowerCase()))).toEqual([])
  })
})
