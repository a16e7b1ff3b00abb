/** Part of a text, UTF-16 units from 0, the end exclusive. */
export interface Span {
  readonly start: number
  readonly end: number
}
