/** A sheet metal by the words in which builders name it, and what its standard promises at the least. */
interface SheetMetal {
  readonly name: string
  readonly words: RegExp
  /** MPa, at 0.2 % of lasting strain; null where none was read. */
  readonly yieldStress: number | null
  /** Least inside radius of a bend of 90°, in thicknesses, for sheet over one thickness and up to another, mm. */
  readonly bends: readonly (readonly [over: number, upTo: number, radius: number])[]
  readonly source: string
}

const en485 = 'EN 485-2, as a sheet dealer reprints it'

/** Only what was read: other tempers and thicknesses are not here. */
export const sheetMetals: readonly SheetMetal[] = [
  {
    name: '5083-O/H111',
    words: /\b5083\b(?=.*\b(?:O|H111|annealed)\b)/i,
    yieldStress: 125,
    bends: [
      [0.5, 3, 1],
      [6, 12.5, 2.5],
    ],
    source: en485,
  },
  {
    name: '5754-O/H111',
    words: /\b5754\b(?=.*\b(?:O|H111|annealed)\b)/i,
    yieldStress: 80,
    bends: [
      [0.5, 1.5, 0.5],
      [1.5, 3, 1],
      [6, 12.5, 2],
    ],
    source: en485,
  },
]
