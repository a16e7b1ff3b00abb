/** Size of the lettering in a drawing's own units, which are pixels on a screen. The style sheet says the same. */
const letteringSize = 14

// Widths as shares of the letter size: DejaVu Sans Condensed, the widest of the style sheet's lettering, measured and rounded up.
const widths: readonly (readonly [RegExp, number])[] = [
  [/[ijlIJ'’.,· \u00a0\u202f]/u, 0.32],
  [/[-/:;\\f|!()[\]rt²"*_`]/u, 0.42],
  [/[cszkvxyFLPTY?]/u, 0.56],
  [/[mwMW@%—Ω&OQ#+<=>~±⌀]/u, 0.92],
  [/[ -\u{24f}]/u, 0.68],
  [/[\u{250}-\u{2e7f}]/u, 0.85],
]
const widest = 1.1 // a letter of none of these, such as an ideograph

const widthOfLetter = (letter: string): number => widths.find(([letters]) => letters.test(letter))?.[1] ?? widest

/** How much room a line of lettering takes at most. */
export function widthOf(text: string, size = letteringSize): number {
  let width = 0
  for (const letter of text) width += widthOfLetter(letter)
  return width * size
}

// A figure keeps its unit: `2.5 mm²`, `7.5 A`, `12 AWG`.
const beforeUnit = /(?<=\p{N}) (?=(?:[cm]?m[²2]?|m?A|m?V|k?W|m?Ω|AWG|°C|%)(?![\p{L}\p{N}]))/gu

/** Breaks words into lines no wider than this; a word that is too long by itself is broken where it must be. Nothing is left out. */
export function wrap(text: string, width: number, size = letteringSize): string[] {
  const words = text
    .replace(beforeUnit, '\u00a0')
    .split(/[ \t\r\n]+/u)
    .filter(word => word !== '')
  const lines: string[] = []
  for (const word of words.flatMap(long => pieces(long, width, size))) {
    const longer = `${lines.at(-1) ?? ''} ${word}`
    if (lines.length > 0 && widthOf(longer, size) <= width) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return lines.length === 0 ? [''] : lines
}

function pieces(word: string, width: number, size: number): string[] {
  if (widthOf(word, size) <= width) return [word]
  const found: string[] = []
  let piece = ''
  for (const letter of word) {
    if (piece !== '' && widthOf(piece + letter, size) > width) {
      found.push(piece)
      piece = ''
    }
    piece += letter
  }
  return piece === '' ? found : [...found, piece]
}
