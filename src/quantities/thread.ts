import { isWordPart } from './characters.ts'
import { glyphFraction } from './fraction-part.ts'
import { Rational } from './rational.ts'
import { metricCoarse, pipe, taperPipe, unified } from './thread-table.ts'
import { britishAssociation, fineBritish, whitworth } from './thread-table-british.ts'
import { isCapitalised, wordAfter, wordBefore } from './words-around.ts'

/** A thread where it stands, and in millimetres. */
export interface ThreadToken {
  readonly start: number
  readonly end: number
  readonly diameter: number
  readonly pitch: number | null
}

const inch = 25.4 // mm, exact
const metric = /M(\d{1,2}(?:[.,]\d)?)(?:\s?[x×X*]\s?|-)?/y
const pitchShape = /(\d{1,2}(?:\.\d{1,3})?|\.\d{1,2})(?!\d|\.\d|\s?mm|["”″/])/y
const inchShape =
  /(#|[Nn]o\.?\s?)?(\d{1,2}(?:[- ]\d\/\d{1,2}|\/\d{1,2}|[½¼¾⅛⅜⅝⅞])?|[½¼¾⅛⅜⅝⅞])(?:["”″]|[\s-]?in(?:ch)?)?(?:\s?[-–x×]\s?(\d{1,2}))?[\s-]?(UNC|UNF|UNEF|UNS?|BSPP?|BSPT|BSF|BSW|Whit(?:worth)?|BA|NPTF?)(?![\p{L}\p{N}])/uy
const pipeShape = /G ?((?:\d[- ])?\d\/\d{1,2}|\d?[½¼¾⅛⅜⅝])["”″]?(?![\p{L}\p{N}/])/uy
const roadBefore = /^(?:on|along|up|down|off|via|by|from|to|onto|near|and|leave|left|join|joined|took|closed)$/
const fastenings =
  /^(?:bolt|stud|nut|screw|hole|tap|thread|plug|eye|cap|washer|rivet|insert|banjo|clearance|grub|shackle|rod|ball|x|set|hex|stainless|high|male|female|nyloc|eyebolt|u|tapped|into|one|ones)/

function isRoad(text: string, start: number, end: number): boolean {
  const next = wordAfter(text, end)
  if (/^(?:motorway|junction|services|northbound|southbound|eastbound|westbound|traffic)$/.test(next.word)) return true
  const article = wordBefore(text, start, 0)
  if (article.word !== 'the') return false
  return roadBefore.test(wordBefore(text, article.start, 0).word) && !fastenings.test(next.word)
}

function isModel(text: string, start: number): boolean {
  const before = wordBefore(text, start, 0)
  const isFirst = before.start === 0 || /[.!?:;\n(*-]\s*$/.test(text.slice(Math.max(0, before.start - 3), before.start))
  return before.word.length > 2 && text[start - 1] === ' ' && !isFirst && isCapitalised(text, before.start)
}

/** Whether a word goes on at a place; the `x` of `M8x1.25x25` goes on to a length. */
function isLedOn(text: string, at: number): boolean {
  return isWordPart(text.charCodeAt(at)) && !/^[xX]\d/.test(text.slice(at, at + 2))
}

/** Whether a thread's letter is one of a word; `4xM6` counts them. */
const isInWord = (text: string, start: number): boolean =>
  isWordPart(text.charCodeAt(start - 1)) &&
  !/(?<![\p{L}\d])\d{1,3}[xX]$/u.test(text.slice(Math.max(0, start - 5), start))

const largestPitch = (diameter: number): number => metricCoarse.get(diameter) ?? diameter / 4

/** Reads `M8`, `M10 x 1.5`; a second figure too big for a pitch is left for a length. */
export function readMetricThread(text: string, start: number): ThreadToken | null {
  metric.lastIndex = start
  const match = metric.exec(text)
  if (match === null || text[start - 1] === '-' || isInWord(text, start)) return null
  const size = match[1] ?? ''
  const diameter = Number(size.replace(',', '.'))
  const end = start + 1 + size.length
  const isPlural = text[end] === 's' && !isWordPart(text.charCodeAt(end + 1))
  if (isWordPart(text.charCodeAt(end)) && !isPlural && !/[xX]/.test(text[end] ?? '')) return null
  if (!metricCoarse.has(diameter) || (!isPlural && isRoad(text, start, end)) || isModel(text, start)) return null
  pitchShape.lastIndex = start + match[0].length
  const pitch = match[0].length > size.length + 1 ? Number(pitchShape.exec(text)?.[1] ?? Number.NaN) : Number.NaN
  const isPitch = pitch > 0 && pitch <= largestPitch(diameter) && !isLedOn(text, pitchShape.lastIndex)
  return isPitch ? { start, end: pitchShape.lastIndex, diameter, pitch } : { start, end, diameter, pitch: null }
}

function sizeOf(written: string): string | null {
  const glyph = glyphFraction(written, written.length - 1)
  const whole = glyph === null ? written : written.slice(0, -1)
  const [first = '', second] = whole.split(/[- ]/)
  const parts = [
    first === '' ? Rational.zero : Rational.parse(first),
    second === undefined ? Rational.zero : Rational.parse(second),
  ]
  if (parts.some(part => part === null)) return null
  return parts
    .reduce<Rational>((sum, part) => sum.plus(part ?? Rational.zero), glyph?.value ?? Rational.zero)
    .toString()
}

function inchThread(size: string, tpi: number | null, series: string): { diameter: number; pitch: number } | null {
  if (series.startsWith('BSP'))
    return pipe[size] === undefined ? null : { diameter: pipe[size][0], pitch: inch / pipe[size][1] }
  if (series.startsWith('NPT'))
    return taperPipe[size] === undefined
      ? null
      : { diameter: taperPipe[size][0] * inch, pitch: inch / taperPipe[size][1] }
  const table = series === 'BSF' ? fineBritish : /^(?:BSW|Whit)/.test(series) ? whitworth : null
  if (table !== null) {
    const count = tpi ?? table[size]
    return count === undefined
      ? null
      : { diameter: (Rational.parse(size)?.toNumber() ?? 0) * inch, pitch: inch / count }
  }
  if (series === 'BA') return britishAssociation[Number(size)] ?? null
  const number = size.startsWith('#') ? Number(size.slice(1)) : null
  const fraction = Rational.parse(size)?.toNumber() ?? 0
  const diameter = number === null ? fraction * inch : (0.06 + 0.013 * number) * inch // numbered sizes: ASME B1.1
  const threads = tpi ?? (series === 'UNC' || series === 'UNF' ? (unified[series][size] ?? null) : null)
  return threads === null || threads === 0 || diameter === 0 ? null : { diameter, pitch: inch / threads }
}

/** Reads the pipe thread `G1/4`, `G 1 1/4` of ISO 228-1 that begins at its letter. */
export function readPipeThread(text: string, start: number): ThreadToken | null {
  pipeShape.lastIndex = start
  const match = pipeShape.exec(text)
  if (match === null || isWordPart(text.charCodeAt(start - 1)) || text[start - 1] === '-') return null
  const size = sizeOf(match[1] ?? '')
  const found = size === null ? null : inchThread(size, null, 'BSP')
  return found === null ? null : { start, end: pipeShape.lastIndex, ...found }
}

/** Reads `3/8 UNF`, `10-32 UNF`, `1/4"-20 UNC`, `1/2 BSP` from the start of its size on. */
export function readInchThread(text: string, start: number): ThreadToken | null {
  inchShape.lastIndex = start
  const match = inchShape.exec(text)
  if (match === null) return null
  const [, sign, written = '', tpi, series = ''] = match
  const size = sizeOf(written)
  if (size === null) return null
  const isNumbered =
    sign !== undefined || (/^\d{1,2}$/.test(written) && tpi !== undefined && Number(written) <= 12 && written !== '1')
  const found = inchThread(isNumbered ? `#${size}` : size, tpi === undefined ? null : Number(tpi), series)
  return found === null ? null : { start, end: inchShape.lastIndex, ...found }
}
