export type CellKind = 'text' | 'number' | 'date' | 'money' | 'flag'

/** Money is an exact decimal as text (`184.00`), a date is ISO 8601 as text, a flag is true or false; null: nothing is known. */
export type ExportCell = string | number | boolean | null

interface ExportColumn {
  readonly name: string
  readonly kind: CellKind
}

/** One table of the record: the same rows in CSV, XLSX and ODS. */
export interface ExportTable {
  /** As file and sheet name: `part-history`. */
  readonly name: string
  readonly columns: readonly ExportColumn[]
  readonly rows: readonly (readonly ExportCell[])[]
}

/** Where a table is published within the record. */
export const csvPath = ({ name }: Pick<ExportTable, 'name'>): string => `tables/${name}.csv`

/** A column and what each row has in it. */
export interface Field<R> extends ExportColumn {
  readonly of: (row: R) => ExportCell
}

export const field = <R>(name: string, kind: CellKind, of: (row: R) => ExportCell): Field<R> => ({ name, kind, of })

/** A table with a row for each thing of a list. */
export function exportTable<R>(name: string, rows: readonly R[], fields: readonly Field<R>[]): ExportTable {
  return {
    name,
    columns: fields.map(({ name: heading, kind }) => ({ name: heading, kind })),
    rows: rows.map(row => fields.map(({ of }) => of(row))),
  }
}
