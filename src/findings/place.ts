/** Where something is written: `file` relative to the build folder with `/`, lines and UTF-16 columns from 1, the end exclusive. */
export interface Place {
  readonly file: string
  readonly line: number
  readonly column: number
  readonly endLine: number
  readonly endColumn: number
}

/** Orders places as a reader meets them: by file, then line, then column. */
export function comparePlaces(a: Place, b: Place): number {
  if (a.file !== b.file) return a.file < b.file ? -1 : 1
  return a.line - b.line || a.column - b.column || a.endLine - b.endLine || a.endColumn - b.endColumn
}
