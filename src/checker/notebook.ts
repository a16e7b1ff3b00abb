import type { Place } from '../findings/place.ts'
import type { Leaf } from './term.ts'

/** What is not in the record and would have to be: its path, and the reason in words. */
export interface Need {
  readonly path: string
  readonly why: string
  /** Something is written there, of another dimension or no figure. */
  readonly isWritten?: boolean
}

/** Words of the record that a working went by: `circuit:fuel-pump/use` is `pump`. */
interface UsedWords {
  readonly path: string
  readonly words: string
  readonly place: Place
  readonly session: string | null
  readonly figure: string | null
}

/** A row that was read off a table, and who published it. */
export interface UsedTable {
  readonly table: string
  readonly row: string
  readonly source: string
}

/** What is noted while the inputs of one verdict are read. */
export class Notebook {
  readonly assumed: string[] = []
  readonly missing: Need[] = []
  readonly notes: string[] = []
  readonly tables: UsedTable[] = []
  readonly words: UsedWords[] = []
  /** Every figure of the record that was read, those that no formula holds too: the section by which a table's row was found. */
  readonly figures: Leaf[] = []

  assume(sentence: string): void {
    if (!this.assumed.includes(sentence)) this.assumed.push(sentence)
  }

  need(path: string, why: string): void {
    if (!this.missing.some(known => known.path === path)) this.missing.push({ path, why })
  }

  /** What is written, and cannot be used: a length in litres. */
  refuse(path: string, why: string): void {
    if (!this.missing.some(known => known.path === path)) this.missing.push({ path, why, isWritten: true })
  }

  note(sentence: string): void {
    if (!this.notes.includes(sentence)) this.notes.push(sentence)
  }

  look(row: UsedTable): void {
    if (!this.tables.some(known => known.table === row.table && known.row === row.row)) this.tables.push(row)
  }

  use(words: UsedWords): void {
    if (!this.words.some(known => known.path === words.path)) this.words.push(words)
  }

  see(figure: Leaf): void {
    if (!this.figures.some(({ id }) => id === figure.id)) this.figures.push(figure)
  }

  /** Takes over what another notebook holds: an attempt that came to be used. */
  takeOver(other: Notebook): void {
    for (const sentence of other.assumed) this.assume(sentence)
    for (const { path, why, isWritten } of other.missing)
      isWritten === true ? this.refuse(path, why) : this.need(path, why)
    for (const sentence of other.notes) this.note(sentence)
    for (const row of other.tables) this.look(row)
    for (const words of other.words) this.use(words)
    for (const figure of other.figures) this.see(figure)
  }
}
