import { strFromU8, unzipSync, zipSync } from 'fflate'
import readExcelFile from 'read-excel-file/node'
import { DraftTrouble } from './draft-trouble.ts'
import type { ListCell, ListSheet } from './list-sheet.ts'
import { tellFormulas } from './tell-formulas.ts'

const mostMb = 64 // of all parts together, unpacked: a list of 50,000 rows takes about 20
const mostParts = 1000 // files within the workbook

/** All sheets of a workbook, row by row. */
export async function readXlsx(bytes: Uint8Array, file: string): Promise<ListSheet[]> {
  const safe = unpacked(bytes, file)
  const sheets = await readExcelFile(Buffer.from(safe)).catch((cause: unknown) => {
    throw new DraftTrouble(`\`${file}\` is a zip but no workbook that can be read: save it as XLSX again, or as CSV.`, {
      cause,
    })
  })
  return sheets.map(({ sheet, data }) => ({ name: sheet, rows: data.map(row => row.map(cellOf)) }))
}

function cellOf(cell: unknown): ListCell {
  if (cell instanceof Date) return { text: cell.toISOString().slice(0, 10), isNumber: false }
  return { text: cell === null || cell === undefined ? '' : String(cell).trim(), isNumber: typeof cell === 'number' }
}

/** The workbook's parts unpacked within limits and put together again unpacked, so that its reader cannot be made to swell. */
function unpacked(bytes: Uint8Array, file: string): Uint8Array {
  let [size, count] = [0, 0]
  try {
    const parts = unzipSync(bytes, {
      filter: ({ originalSize }) => {
        size += originalSize
        count += 1
        if (size > mostMb * 1024 * 1024)
          throw new DraftTrouble(
            `\`${file}\` would unpack to more than ${mostMb} MB, expected a list of parts: nothing of it was read.`,
          )
        if (count > mostParts)
          throw new DraftTrouble(
            `\`${file}\` holds more than ${mostParts} files, expected a workbook: nothing of it was read.`,
          )
        return true
      },
    })
    refuseOpenDocument(parts, file)
    return zipSync(tellFormulas(parts), { level: 0 })
  } catch (cause) {
    if (cause instanceof DraftTrouble) throw cause
    throw new DraftTrouble(`\`${file}\` is no XLSX workbook: it cannot be unpacked.`, { cause })
  }
}

function refuseOpenDocument({ mimetype }: Record<string, Uint8Array>, file: string): void {
  if (mimetype !== undefined && strFromU8(mimetype).startsWith('application/vnd.oasis.opendocument'))
    throw new DraftTrouble(`\`${file}\` is an OpenDocument file: save the list as XLSX or CSV.`)
}
