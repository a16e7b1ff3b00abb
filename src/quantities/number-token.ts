import type { Rational } from './rational.ts'

/** A number as it stands in the text. */
export interface NumberToken {
  readonly start: number
  readonly end: number
  readonly value: Rational
  /** Half of the last digit, or of the smallest part, as written. */
  readonly half: Rational
  readonly written: 'figures' | 'words'
  /** `article` is the one of *a litre*; `gauge` is `2/0`. */
  readonly kind: 'whole' | 'decimal' | 'fraction' | 'mixed' | 'article' | 'gauge'
  /** The whole numbers about the stroke of `60/55`. */
  readonly stroke: { readonly top: NumberToken; readonly bottom: NumberToken } | null
  /** Written with the other decimal mark. */
  readonly isMarkWrong: boolean
  /** Thousands set apart by a plain space, as in `2 350`. */
  readonly isSpaced: boolean
  /** *forty-odd*, `40ish`. */
  readonly isLoose: boolean
  /** `20+`: so many and more. */
  readonly isOpen?: true
}

/** Figures that are no number: a date, a time, a version, a part number; where the text goes on behind them. */
export interface CodeToken {
  readonly code: true
  readonly end: number
}

export type MaybeNumber = NumberToken | CodeToken

/** Whether what was found is a code rather than a number. */
export const isCode = (token: object): token is CodeToken => (token as Partial<CodeToken>).code === true
