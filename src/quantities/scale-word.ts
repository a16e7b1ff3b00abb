const scale =
  /\s?k(?: (?=(?:mi|miles?|km|kms|kilomet\w+|rpm|revs|ohms?|lumens?|quid|euros)\b)|-(?=mile\b))|\s(thousand|million)(?=[\s-])/iy
const [space, letterH, letterI, letterK, letterM, letterT] = [32, 104, 105, 107, 109, 116]
const thousand = 1_000
const million = 1_000_000

function mayBegin(text: string, at: number): boolean {
  const first = text.charCodeAt(at)
  if (first !== space) return (first | 32) === letterK
  const [second, third] = [text.charCodeAt(at + 1) | 32, text.charCodeAt(at + 2) | 32]
  return second === letterK || (second === letterT && third === letterH) || (second === letterM && third === letterI)
}

/** What multiplies the figures that end at a place: the *k* of `61k miles`, the *thousand* of `61 thousand miles`. */
export function readScaleWord(text: string, at: number): { factor: number; end: number } | null {
  if (!mayBegin(text, at)) return null
  scale.lastIndex = at
  const match = scale.exec(text)
  if (match === null) return null
  const end = match[1] === undefined ? scale.lastIndex - 1 : scale.lastIndex
  return { factor: match[1]?.toLowerCase() === 'million' ? million : thousand, end }
}
