import type { PrivateKind } from '../../plugins/private/node.ts'

/** A word that stands in one place of the test build and nowhere else. */
export interface Canary {
  readonly word: string
  /** What withholds it, any of these; `broken`: every edition but `full`; `shown`: nothing does. */
  readonly as: readonly (PrivateKind | 'broken' | 'shown')[]
  /** The place, for the message. */
  readonly where: string
}

type As = Canary['as'][number]

/** Makes a word anew, to show that nothing depends on it; undefined leaves it. */
export type Vary = (word: string, as: Canary['as']) => string | undefined

/** Hands out canaries and keeps the list. */
export class Aviary {
  readonly all: Canary[] = []
  readonly #vary: Vary

  constructor(vary: Vary = () => undefined) {
    this.#vary = vary
  }

  /** A bare word that counts as these kinds by where it stands. */
  word(as: As | readonly As[], where: string): string {
    const kinds = [as].flat() as readonly As[]
    return this.#keep({ word: `Zq${kinds[0]}${letters(this.all.length)}`, as: kinds, where })
  }

  /** An inline mark with a word in it; where the place itself counts as private, of those kinds too. */
  mark(as: PrivateKind, where: string, ...also: PrivateKind[]): string {
    return `:private[${this.word([as, ...also], where)}]{as=${as}}`
  }

  /** Sterling in a number that stands nowhere else. */
  money(where: string): string {
    return `£${this.#keep({ word: String(730_101 + this.all.length * 1_117), as: ['cost'], where })}`
  }

  #keep(canary: Canary): string {
    const word = this.#vary(canary.word, canary.as) ?? canary.word
    this.all.push({ ...canary, word })
    return word
  }
}

/** Two letters for a number, so that no canary begins another. */
function letters(count: number): string {
  return String.fromCharCode(97 + Math.floor(count / 26)) + String.fromCharCode(97 + (count % 26))
}
