import { pageAddress, relativeHref } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { listed, plain } from './inline.ts'
import { type LabelKind, type Labelled, labelKinds } from './label-kinds.ts'
import type { PageLabel, PartOfPage } from './page-parts.ts'
import { pageScope } from './page-scope.ts'
import { qrCode, quietZone } from './qr-code.ts'
import { hasSheet } from './sheet.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { words } from './tables.ts'

/** A sheet of labels: how they lie on A4, and where it is published. */
interface LabelSheet {
  readonly size: 'large' | 'small'
  readonly title: string
  readonly folders: readonly string[]
  readonly says: string
}

const large: LabelSheet = {
  size: 'large',
  title: 'Labels',
  folders: ['labels'],
  says: '24 on a sheet of A4, 3 × 8, each 70 mm × 37 mm, without gaps',
}
const small: LabelSheet = {
  size: 'small',
  title: 'Small labels',
  folders: ['labels', 'small'],
  says: '65 on a sheet of A4, 5 × 13, each 38.1 mm × 21.2 mm, 2.5 mm apart',
}

/** Sheets of labels to print and stick on: what a thing is called, and a code that leads to its page. */
export function makeLabelPages(atlas: Atlas): Page[] {
  const kinds = labelKinds(atlas)
  return hasSheet(atlas, 'labels') ? [labelPage(atlas, kinds, large), labelPage(atlas, kinds, small)] : []
}

function labelPage(atlas: Atlas, kinds: readonly LabelKind[], sheet: LabelSheet): Page {
  const scope = pageScope(atlas, pageAddress(...sheet.folders))
  const other = sheet.size === 'large' ? small : large
  const count = kinds.reduce((sum, { things }) => sum + things.length, 0)
  return simplePage(scope, {
    title: sheet.title,
    section: 'labels',
    look: 'labels',
    wide: true,
    gutter: [{ term: 'Labels', words: [plain(String(count))] }],
    rows: [
      textRow(
        words('lede', `${sheet.says}. ${codeWords(atlas)}`),
        words('plain', [
          plain('Print at full size, without headers. All kinds print, each from a new sheet; of one kind only: '),
          ...listed(kinds.map(({ title, id, things }) => [plain(`${title} (${things.length})`, `#${id}`)])),
          plain('; '),
          plain('all again', '#main'),
          plain('. Another size: '),
          scope.link(other.title.toLowerCase(), pageAddress(...other.folders)),
          plain('.'),
        ]),
      ),
      wideRow(...kinds.map(kind => labelsPart(atlas, kind, sheet))),
    ],
  })
}

function codeWords({ extras }: Atlas): string {
  return (extras.base ?? null) === null
    ? 'The address of this record is not known, so each code holds the identifier that stands beside it, to search for. Published with --base it leads to the page.'
    : `Each code leads to the page of the thing, below ${extras.base}`
}

function labelsPart(atlas: Atlas, { title, id, things }: LabelKind, { size }: LabelSheet): PartOfPage {
  return { kind: 'labels', title, id, size, labels: things.map(thing => labelOf(atlas, thing)) }
}

function labelOf({ record, extras }: Atlas, { name, identifier, address }: Labelled): PageLabel {
  const base = extras.base ?? null
  const text = base === null ? identifier : `${base}${relativeHref('index.html', address)}`
  const { size, path } = qrCode(text)
  const width = size + 2 * quietZone
  return {
    name,
    identifier,
    of: `${record.build.title.text}, edition ${record.edition}`,
    code: { path, box: `${-quietZone} ${-quietZone} ${width} ${width}`, says: `QR code: ${text}` },
  }
}
