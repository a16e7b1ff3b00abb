/** One cell of a purchase list: its words, trimmed, and whether a spreadsheet held it as a number. */
export interface ListCell {
  readonly text: string
  readonly isNumber: boolean
}

/** A sheet of a workbook, or a CSV, which has no name. Every row is there, as a spreadsheet counts them. */
export interface ListSheet {
  readonly name: string | null
  readonly rows: readonly (readonly ListCell[])[]
}
