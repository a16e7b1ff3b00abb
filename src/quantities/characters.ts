const wordPart = 1
const letter = 2
const gap = 4
const known = 128
const kinds = new Uint8Array(65536)

function kindOf(code: number): number {
  const kind = kinds[code] ?? 0
  if (kind !== 0 || !(code >= 0)) return kind
  const character = String.fromCharCode(code)
  const isLetterKind = /[\p{L}\p{M}]/u.test(character)
  const found =
    known +
    (isLetterKind ? letter : 0) +
    (isLetterKind || /[\p{Nd}_]/u.test(character) ? wordPart : 0) +
    (/[ \n\r\u00a0\u2007\u2009\u202f]/.test(character) ? gap : 0)
  kinds[code] = found
  return found
}

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

/** A space that stands between a number and its unit: plain, no-break, thin, figure or narrow, or a line's end. */
export function isGap(code: number): boolean {
  return (kindOf(code) & gap) !== 0
}

/** The place behind at most three gap characters from a place on. */
export function skipGap(text: string, from: number): number {
  let at = from
  while (at < from + 3 && isGap(text.charCodeAt(at))) at += 1
  return at
}
