/** A text as it is compared: letters and digits only, each with where it stands in the text, runs of anything else one blank. */
interface FoldedText {
  readonly text: string
  /** For each UTF-16 unit of `text`, where its character begins in the original; one more for the end. */
  readonly origins: readonly number[]
}

/** Letters of other scripts that a reader takes for Latin ones (Unicode UTS 39 lists them all; these are from memory). */
const lookalikes: Readonly<Record<string, string>> = {
  а: 'a', в: 'b', с: 'c', ԁ: 'd', е: 'e', һ: 'h', н: 'h', і: 'i', ј: 'j', к: 'k', м: 'm', о: 'o', р: 'p', ԛ: 'q', ѕ: 's',
  т: 't', у: 'y', ү: 'y', х: 'x', ԝ: 'w', α: 'a', β: 'b', ε: 'e', η: 'n', ι: 'i', κ: 'k', μ: 'm', ν: 'v', ο: 'o', ρ: 'p', τ: 't',
  υ: 'u', χ: 'x', ω: 'w', γ: 'y', ɑ: 'a', ɡ: 'g', ı: 'i', ℓ: 'l', օ: 'o', ո: 'n', ս: 'u', ꮪ: 's',
} // biome-ignore format: a table reads better in rows

/**
 * Folds case, accents, width, composed and decomposed forms (NFKD), letters that look alike, and drops what nobody sees:
 * marks of direction, joiners, soft hyphens.
 */
export function foldLetters(text: string): FoldedText {
  let folded = ''
  const origins: number[] = []
  let at = 0
  for (const character of text) {
    const letters = foldCharacter(character)
    const isGapTwice = letters === ' ' && (folded === '' || folded.endsWith(' '))
    if (!isGapTwice) {
      folded += letters
      for (let unit = 0; unit < letters.length; unit++) origins.push(at)
    }
    at += character.length
  }
  return { text: folded, origins: [...origins, text.length] }
}

/** The same text without where its letters stand: nearly every text is ASCII, and nearly none holds what is sought. */
export function foldText(text: string): string {
  if (/[^\0-\x7f]/.test(text)) return foldLetters(text).text
  return text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .replace(/^ /, '')
}

const known = new Map<string, string>()

function foldCharacter(character: string): string {
  const before = known.get(character)
  if (before !== undefined) return before
  const folded = foldAnew(character)
  if (known.size < 4096) known.set(character, folded)
  return folded
}

function foldAnew(character: string): string {
  if (/^[\p{Cf}\p{M}]$/u.test(character)) return ''
  const plain = character
    .normalize('NFKD')
    .toUpperCase()
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\p{M}\p{Cf}]/gu, '')
  const letters = [...plain].map(letter => lookalikes[letter] ?? letter).join('')
  return letters !== '' && /^[\p{L}\p{N}]+$/u.test(letters) ? letters : ' '
}
