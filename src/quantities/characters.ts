const [wordPart, letter, gap] = [1, 2, 4]
const plain = 128 // characters of ASCII
const known = 128
const kinds = new Uint8Array(65536)

function findKind(code: number): number {
  const character = String.fromCharCode(code)
  const isLetterKind = /[\p{L}\p{M}]/u.test(character)
  return (
    known +
    (isLetterKind ? letter : 0) +
    (isLetterKind || /[\p{Nd}_]/u.test(character) ? wordPart : 0) +
    (/[ \t\n\r\u00a0\u2000-\u200a\u202f\u205f\u3000]/.test(character) ? gap : 0)
  )
}

const plainKinds = Uint8Array.from({ length: plain }, (_, code) => findKind(code))

/** Kept for each character as it comes; nothing stands at the text's end, whose code is NaN. */
function kindOfRare(code: number): number {
  if (!(code >= 0)) return 0
  if (kinds[code] === 0) kinds[code] = findKind(code)
  return kinds[code] ?? 0
}

// The plain ones are looked up right here: these three are asked of almost every character about a figure.
const kindOf = (code: number): number => (code < plain ? (plainKinds[code] ?? 0) : kindOfRare(code))

/** An ASCII digit. */
export function isDigit(code: number): boolean {
  return code >= 48 && code <= 57
}

/** A letter of any script; micro, ohm and diameter signs count as letters. */
export function isLetter(code: number): boolean {
  return (kindOf(code) & letter) !== 0
}

/** A letter, digit or underscore, that is something that would carry a word on; false for NaN. */
export function isWordPart(code: number): boolean {
  return (kindOf(code) & wordPart) !== 0
}

/** A space that stands between a number and its unit, of whatever width, a tab or a line's end. */
export function isGap(code: number): boolean {
  return (kindOf(code) & gap) !== 0
}

/** The place behind at most three gap characters from a place on. */
export function skipGap(text: string, from: number): number {
  let at = from
  while (at < from + 3 && isGap(text.charCodeAt(at))) at += 1
  return at
}
