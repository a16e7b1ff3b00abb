import type { ReadOptions } from '../quantities/quantity.ts'

/** What can be found; earlier kinds go first among hits that are equally good. */
export const hitKinds = ['part', 'circuit', 'connector', 'measurement', 'job', 'session', 'quantity', 'text'] as const
export type HitKind = (typeof hitKinds)[number]

/** Figures of one dimension, or of one currency, in the order of `low`. Entries by their number, sizes in SI. */
export interface FigureGroup {
  /** `length`, `money:GBP`, `thread`. */
  readonly name: string
  /** How far the rounding of what was written reaches. */
  readonly low: readonly number[]
  readonly high: readonly number[]
  /** What was written, without its rounding: equal but for a range. */
  readonly from: readonly number[]
  readonly to: readonly number[]
  readonly entry: readonly number[]
  /** Threads only: millimetres, 0 where none was written. */
  readonly pitch: readonly number[]
}

/** Entries, one column a field, in the order in which equals are shown. Numbers point into the tables. */
interface EntryColumns {
  readonly kind: readonly number[]
  readonly note: readonly number[]
  readonly line: readonly number[]
  readonly column: readonly number[]
  /** `paths`, `labels`, `things`: -1 where there is none. */
  readonly path: readonly number[]
  readonly label: readonly number[]
  /** Of the identifier as words, in `labels` too. */
  readonly name: readonly number[]
  readonly thing: readonly number[]
  readonly said: readonly number[]
  /** Where in `said` the figure stands; both 0: nowhere. */
  readonly start: readonly number[]
  readonly end: readonly number[]
  readonly address: readonly number[]
  readonly anchor: readonly string[]
  /** Of a figure, what was written and in which of `units`; else empty and -1. */
  readonly text: readonly string[]
  readonly value: readonly (number | null)[]
  readonly unit: readonly number[]
}

export interface IndexedNote {
  /** Null: build.md or inspection.yaml. */
  readonly session: string | null
  readonly number: number | null
  readonly date: string
  readonly title: string
  readonly file: string
}

/** The whole of a record that can be searched, as plain JSON. */
export interface SearchIndex {
  readonly format: 'oddleg-search/1'
  /** What *about* is worth, as a share. */
  readonly approximate: number
  /** What build.md sets about reading figures: what is asked is read alike. */
  readonly reading: ReadOptions
  readonly notes: readonly IndexedNote[]
  readonly things: readonly { readonly name: string; readonly address: string }[]
  readonly paths: readonly string[]
  readonly labels: readonly string[]
  readonly saids: readonly string[]
  readonly addresses: readonly string[]
  readonly units: readonly string[]
  readonly entries: EntryColumns
  readonly figures: readonly FigureGroup[]
  /** In the order of their code units, and for each which labels and saids hold it: differences, ascending. */
  readonly words: readonly string[]
  readonly inLabels: readonly (readonly number[])[]
  readonly inSaids: readonly (readonly number[])[]
}
