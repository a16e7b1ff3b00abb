import { decodeNamedCharacterReference } from 'decode-named-character-reference'
import type { Span } from './source.ts'

/** Where each UTF-16 unit of a text begins and ends in the file. */
export interface TextOffsets {
  readonly starts: readonly number[]
  readonly ends: readonly number[]
}

/** A text as the parser gave it, and the stretch of the file in which it stands. */
interface WrittenText {
  readonly value: string
  readonly source: string
  readonly span: Span
  /** How many `>` may stand before a line of it: the block quotes around it. */
  readonly quotes: number
}

/** Finds each unit of a text in its file, through references, escapes and the marks before a line; null where they do not agree. */
export function textOffsets(written: WrittenText): TextOffsets | null {
  const { value, source, span } = written
  if (span.end - span.start === value.length && source.startsWith(value, span.start)) return unaltered(written)
  const reading: Reading = { ...written, at: span.start, unit: 0, starts: [], ends: [] }
  while (reading.unit < value.length) if (!takeOne(reading)) return null
  return reading
}

/** The place of `value.slice(start, end)`. */
export function placeOf(offsets: TextOffsets, span: Span): Span {
  const start = offsets.starts[span.start] ?? offsets.ends.at(-1) ?? 0
  return { start, end: span.end > span.start ? (offsets.ends[span.end - 1] ?? start) : start }
}

function unaltered({ value, span }: WrittenText): TextOffsets {
  const starts = Array.from({ length: value.length }, (_, unit) => span.start + unit)
  return { starts, ends: starts.map(start => start + 1) }
}

interface Reading extends WrittenText {
  at: number
  unit: number
  starts: number[]
  ends: number[]
}

function takeOne(reading: Reading): boolean {
  const { value, source, at, unit, span } = reading
  if (at >= span.end) return false
  const written = source.charCodeAt(at)
  if (isLineEnd(value.charCodeAt(unit)) && /[ \t\r\n]/u.test(source.charAt(at))) return takeLineEnd(reading)
  if (written === backslash && takeEscape(reading)) return true
  if (written === ampersand && takeReference(reading)) return true
  if (written === value.charCodeAt(unit) || (written === 0 && value.charCodeAt(unit) === replacement))
    return take(reading, 1, 1)
  return false
}

const backslash = 0x5c
const ampersand = 0x26
const replacement = 0xfffd // stands for NUL in a text, CommonMark 0.31 2.3

const isLineEnd = (code: number): boolean => code === 0x0a || code === 0x0d

/** `\*` is one character of the text: any ASCII punctuation may be escaped (CommonMark 0.31 2.4). */
function takeEscape(reading: Reading): boolean {
  const next = reading.source.charAt(reading.at + 1)
  if (!/[!-/:-@[-`{-~]/u.test(next) || reading.value.charAt(reading.unit) !== next) return false
  return take(reading, 2, 1)
}

const reference = /&(?:#[xX]([0-9a-fA-F]{1,6})|#([0-9]{1,7})|([A-Za-z][A-Za-z0-9]{0,31}));/uy

function takeReference(reading: Reading): boolean {
  reference.lastIndex = reading.at
  const found = reference.exec(reading.source)
  if (found === null) return false
  const decoded = decode(found)
  if (decoded === null || !reading.value.startsWith(decoded, reading.unit)) return false
  return take(reading, found[0].length, decoded.length)
}

function decode([, hexadecimal, decimal, name]: RegExpExecArray): string | null {
  if (name !== undefined) return decodeNamedCharacterReference(name) || null
  const code = hexadecimal === undefined ? Number.parseInt(decimal ?? '', 10) : Number.parseInt(hexadecimal, 16)
  return isUnwritable(code) ? String.fromCharCode(replacement) : String.fromCodePoint(code)
}

/** Code points that the parser replaces: controls, surrogates, non-characters. */
function isUnwritable(code: number): boolean {
  const control = code < 9 || code === 11 || (code > 13 && code < 32) || (code > 126 && code < 160)
  const nonCharacter = (code > 64_975 && code < 65_008) || (code & 65_535) === 65_535 || (code & 65_535) === 65_534
  return control || (code > 55_295 && code < 57_344) || nonCharacter || code > 1_114_111
}

function take(reading: Reading, width: number, units: number): boolean {
  for (let unit = 0; unit < units; unit++) {
    reading.starts.push(reading.at)
    reading.ends.push(reading.at + width)
  }
  reading.at += width
  reading.unit += units
  return true
}

const lineEnd = /[ \t]*(\r\n|\r|\n)/uy

/** `⟨blanks⟩⟨line end⟩> ⟨blanks⟩`: what stands before the next line's words is not in the text. */
function takeLineEnd(reading: Reading): boolean {
  lineEnd.lastIndex = reading.at
  const found = lineEnd.exec(reading.source)
  if (found === null) return takeBlank(reading)
  const written = found[1] ?? ''
  reading.at += found[0].length - written.length
  const units = reading.value.startsWith(written, reading.unit) ? written.length : 1
  take(reading, written.length, units)
  reading.at = nextLine(reading)
  return true
}

/** A blank that is no line's end stands for itself. */
function takeBlank(reading: Reading): boolean {
  return reading.source.charAt(reading.at) === reading.value.charAt(reading.unit) && take(reading, 1, 1)
}

const blanks = /[ \t]*/uy

/** Skips blanks and as many `>` as leave the rest of the line in agreement with the text. */
function nextLine(reading: Reading): number {
  let at = afterBlanks(reading.source, reading.at)
  for (let quotes = 0; quotes < reading.quotes; quotes++) {
    if (reading.source.charAt(at) !== '>' || agrees(reading, at)) return at
    at = afterBlanks(reading.source, at + 1)
  }
  return at
}

function afterBlanks(source: string, at: number): number {
  blanks.lastIndex = at
  return at + (blanks.exec(source)?.[0].length ?? 0)
}

/** Whether the line from here on is the text's next line: `> b` after four blanks is words, not a quote's mark. */
function agrees(reading: Reading, at: number): boolean {
  const trial: Reading = { ...reading, at, starts: [], ends: [] }
  while (trial.unit < trial.value.length && !isLineEnd(trial.value.charCodeAt(trial.unit)))
    if (!takeOne(trial)) return false
  const rest = afterBlanks(trial.source, trial.at)
  return rest >= trial.span.end || isLineEnd(trial.source.charCodeAt(rest))
}
