/** A word as it is compared, and where it stands in its text, UTF-16 units. */
interface FoundWord {
  readonly word: string
  readonly start: number
  readonly end: number
}

// Letters with their marks, digits; a point or a comma between digits belongs to them.
const pattern = /\p{N}+(?:[.,]\p{N}+)+\p{L}*|[\p{L}\p{N}\p{M}]+/gu
const marks = /\p{M}+/gu
const thousands = /,(?=\p{N}{3}(?!\p{N}))/gu

/** The words of a text, lower case and without marks: `Rücklicht` is `rucklicht`, `2,5` is `2.5`, `1,260` is `1260`. */
export function wordsIn(text: string): FoundWord[] {
  const found: FoundWord[] = []
  for (const { 0: written, index } of text.matchAll(pattern)) {
    const plain = written.normalize('NFKD').replace(marks, '').toLowerCase()
    const word = plain.replace(thousands, '').replaceAll(',', '.')
    if (word !== '') found.push({ word, start: index, end: index + written.length })
  }
  return found
}
