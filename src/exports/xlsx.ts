import { unzipSync } from 'fflate'
import writeExcelFile from 'write-excel-file/node'
import { columnWidth } from './column-width.ts'
import { legalXml } from './escape-xml.ts'
import { stableZip } from './stable-zip.ts'
import type { CellKind, ExportCell, ExportTable } from './tables/export-table.ts'

const formats: Partial<Record<CellKind, string>> = { money: '#,##0.00', date: 'yyyy-mm-dd' }

/** All tables as one workbook, a sheet each: typed cells, headings frozen. The same tables give the same bytes. */
export async function workbookXlsx(tables: readonly ExportTable[]): Promise<Uint8Array> {
  const sheets = tables.map(table => ({
    sheet: table.name.slice(0, 31), // characters that a sheet's name may have
    data: [
      headings(table),
      ...table.rows.map(row => row.map((cell, at) => typedCell(cell, table.columns[at]?.kind ?? 'text'))),
    ],
    columns: table.columns.map((_, at) => ({ width: columnWidth(table, at) })),
    stickyRowsCount: 1,
  }))
  const written = await writeExcelFile(sheets).toBuffer()
  const parts = Object.entries(unzipSync(new Uint8Array(written))).sort(([one], [other]) => (one < other ? -1 : 1))
  return stableZip(parts)
}

const headings = ({ columns }: ExportTable) =>
  columns.map(({ name }) => ({ value: name, type: String, fontWeight: 'bold' as const }))

/** Words are string cells whatever they begin with: no cell of ours is a formula. */
function typedCell(cell: ExportCell, kind: CellKind) {
  if (cell === null) return null
  const format = formats[kind]
  if (kind === 'date')
    return { value: new Date(`${cell}T00:00:00Z`), type: Date, ...(format === undefined ? {} : { format }) }
  if (kind === 'money') return { value: Number(cell), type: Number, ...(format === undefined ? {} : { format }) }
  if (kind === 'number') return { value: Number(cell), type: Number }
  if (kind === 'flag') return { value: cell === true, type: Boolean }
  return { value: fitting(String(cell)), type: String }
}

const mostCharacters = 32_767 // that a cell of a workbook may hold (ECMA-376, the limits of its first application)
const cutMark = '… (cut here: a cell holds no more)'

/** Words as a workbook may hold them; the CSV and ODS have them whole. */
function fitting(text: string): string {
  const legal = legalXml(text)
  return legal.length <= mostCharacters ? legal : legal.slice(0, mostCharacters - cutMark.length) + cutMark
}
