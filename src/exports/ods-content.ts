import { escapeXml } from './escape-xml.ts'
import type { CellKind, ExportCell, ExportTable } from './tables/export-table.ts'

interface Workbook {
  readonly tables: readonly ExportTable[]
  /** Of each table's columns, in characters. */
  readonly widths: readonly (readonly number[])[]
  /** ISO 4217, of money that names no other. */
  readonly currency: string
}

const perCharacterMm = 2.1 // room for a character of the usual ten-point letter

const head = `<?xml version="1.0" encoding="UTF-8"?>
<office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:number="urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0" xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0" office:version="1.3">
`

const cellStyles = `<number:date-style style:name="day"><number:year number:style="long"/><number:text>-</number:text><number:month number:style="long"/><number:text>-</number:text><number:day number:style="long"/></number:date-style>
<number:number-style style:name="coins"><number:number number:decimal-places="2" number:min-decimal-places="2" number:min-integer-digits="1" number:grouping="true"/></number:number-style>
<style:style style:name="heading" style:family="table-cell"><style:text-properties fo:font-weight="bold"/></style:style>
<style:style style:name="date" style:family="table-cell" style:data-style-name="day"/>
<style:style style:name="money" style:family="table-cell" style:data-style-name="coins"/>
`

/** The sheets of an OpenDocument spreadsheet. */
export function contentXml({ tables, widths, currency }: Workbook): string {
  const distinct = [...new Set(widths.flat())].sort((one, other) => one - other)
  const columnStyles = distinct.map(
    width =>
      `<style:style style:name="w${width}" style:family="table-column"><style:table-column-properties style:column-width="${(width * perCharacterMm).toFixed(1)}mm"/></style:style>\n`,
  )
  const sheets = tables.map((table, at) => sheetXml(table, widths[at] ?? [], currency))
  return `${head}<office:automatic-styles>\n${columnStyles.join('')}${cellStyles}</office:automatic-styles>
<office:body><office:spreadsheet>
${sheets.join('')}</office:spreadsheet></office:body>
</office:document-content>
`
}

function sheetXml({ name, columns, rows }: ExportTable, widths: readonly number[], currency: string): string {
  const widthsXml = widths.map(width => `<table:table-column table:style-name="w${width}"/>`).join('')
  const headings = columns.map(
    column =>
      `<table:table-cell table:style-name="heading" office:value-type="string">${paragraphs(column.name)}</table:table-cell>`,
  )
  const body = rows.map(row => {
    const cells = row.map((cell, at) =>
      cellXml(cell, columns[at]?.kind ?? 'text', currencyOf(columns, row, at) ?? currency),
    )
    return `<table:table-row>${cells.join('')}</table:table-row>\n`
  })
  return `<table:table table:name="${escapeXml(name)}">${widthsXml}
<table:table-header-rows><table:table-row>${headings.join('')}</table:table-row></table:table-header-rows>
${body.join('')}</table:table>
`
}

/** Money is in the currency that the next column of currencies names. */
function currencyOf(columns: ExportTable['columns'], row: readonly ExportCell[], at: number): string | null {
  const next = columns.findIndex(({ name }, index) => index > at && name.startsWith('currency'))
  const cell = row[next]
  return typeof cell === 'string' ? cell : null
}

/** A typed cell: a reader sees its number, date or words, never a formula. */
function cellXml(cell: ExportCell, kind: CellKind, currency: string): string {
  if (cell === null) return '<table:table-cell/>'
  const shown = paragraphs(String(cell))
  switch (kind) {
    case 'number':
      return `<table:table-cell office:value-type="float" office:value="${cell}">${shown}</table:table-cell>`
    case 'money':
      return `<table:table-cell table:style-name="money" office:value-type="currency" office:currency="${escapeXml(currency)}" office:value="${cell}">${shown}</table:table-cell>`
    case 'date':
      return `<table:table-cell table:style-name="date" office:value-type="date" office:date-value="${escapeXml(String(cell))}">${shown}</table:table-cell>`
    case 'flag':
      return `<table:table-cell office:value-type="boolean" office:boolean-value="${cell}">${shown}</table:table-cell>`
    case 'text':
      return `<table:table-cell office:value-type="string">${shown}</table:table-cell>`
  }
}

const paragraphs = (text: string): string =>
  text
    .split(/\r\n|\r|\n/)
    .map(line => `<text:p>${spaced(escapeXml(line))}</text:p>`)
    .join('')

/** Blanks in a row would be read as one. */
const spaced = (line: string): string =>
  line.replace(/ {2,}|^ | $/g, blanks => `<text:s text:c="${blanks.length}"/>`).replaceAll('\t', '<text:tab/>')
