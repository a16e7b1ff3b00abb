import { isLetter } from './characters.ts'
import { codesOf } from './codes-of.ts'
import { matchSpelling } from './unit-spellings.ts'
import { findUnit } from './units.ts'

/** A unit, or a part of a made one, and where it ends. */
export interface Part {
  readonly id: string
  readonly end: number
}

const powerWords = /(?:sq|square|cu|cubic)\.? /iy
const powerMark = /(?:\^?([23])|([²³])| (squared|cubed))(?![\p{L}\p{N}_])/uy

const powerFirsts = codesOf('23²³^')
const letterS = 115
const letterC = 99

function match(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at
  return pattern.exec(text)
}

function mayBePower(text: string, at: number): boolean {
  if (text.charCodeAt(at) !== 32) return powerFirsts.has(text.charCodeAt(at))
  const next = text.charCodeAt(at + 1)
  return next > 127 || (next | 32) === letterS || (next | 32) === letterC
}

const squareThings =
  /^ (?:tube|tubing|bar|box|section|hole|plate|pad|washer|stock|steel|timber|post|rod|shaft|drive|spigot)s?\b/i

/** `25 mm sq tube` is 25 mm across; `2.5 mm sq` alone is an area. */
function asLength(text: string, base: Part | null): Part | null {
  if (base === null || base.id !== 'mm2' || text[base.end - 3] !== ' ') return base
  return squareThings.test(text.slice(base.end, base.end + 9)) ? { id: 'mm', end: base.end - 3 } : base
}

/** One unit with its power: `mm²`, `sq ft`, `cubic inches`, `in3`. */
export function readPart(text: string, at: number): Part | null {
  const first = text.charCodeAt(at) | 32
  const before = first === letterS || first === letterC ? match(powerWords, text, at) : null
  const start = at + (before === null ? 0 : before[0].length)
  const base = asLength(text, matchSpelling(text, start))
  if (base === null) return null
  if (before !== null) {
    const id = `${base.id}${before[0][0]?.toLowerCase() === 's' ? 2 : 3}`
    return findUnit(id) === null ? null : { id, end: base.end }
  }
  const isSpelled = isLetter(text.charCodeAt(base.end - 1))
  const mark = isSpelled && mayBePower(text, base.end) ? match(powerMark, text, base.end) : null
  if (mark === null) return base
  const power = mark[1] ?? (mark[2] === '²' || mark[3] === 'squared' ? '2' : '3')
  const id = `${base.id}${power}`
  const isKnown = findUnit(id) !== null || id === 's2'
  if (isKnown) return { id, end: base.end + mark[0].length }
  return mark[0].length === 1 && mark[1] !== undefined ? null : base // `V2` is no volt.
}
