import { strToU8 } from 'fflate'
import { columnWidth } from './column-width.ts'
import { contentXml } from './ods-content.ts'
import { settingsXml } from './ods-settings.ts'
import { stableZip } from './stable-zip.ts'
import type { ExportTable } from './tables/export-table.ts'

const mime = 'application/vnd.oasis.opendocument.spreadsheet' // OpenDocument 1.3 part 2

const manifest = `<?xml version="1.0" encoding="UTF-8"?>
<manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" manifest:version="1.3">
<manifest:file-entry manifest:full-path="/" manifest:version="1.3" manifest:media-type="${mime}"/>
<manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/>
<manifest:file-entry manifest:full-path="settings.xml" manifest:media-type="text/xml"/>
</manifest:manifest>
`

/** All tables as one OpenDocument spreadsheet: typed cells, headings frozen. The same tables give the same bytes. */
export function spreadsheetOds(tables: readonly ExportTable[], currency: string): Uint8Array {
  const widths = tables.map(table => table.columns.map((_, at) => columnWidth(table, at)))
  const parts: [string, string][] = [
    // The format asks for the type first, unpacked, so that a reader can tell the file by its first bytes.
    ['mimetype', mime],
    ['META-INF/manifest.xml', manifest],
    ['content.xml', contentXml({ tables, widths, currency })],
    ['settings.xml', settingsXml(tables.map(({ name }) => name))],
  ]
  return stableZip(
    parts.map(([name, text]) => [name, strToU8(text)]),
    ['mimetype'],
  )
}
