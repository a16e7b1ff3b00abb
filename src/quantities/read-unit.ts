import { ambiguousUnits } from './ambiguous-units.ts'
import { isGap, isLetter, skipGap } from './characters.ts'
import { codesOf } from './codes-of.ts'
import { isInches } from './inch-or-preposition.ts'
import type { ReadOptions } from './quantity.ts'
import { type Part, readPart } from './unit-part.ts'
import { matchSpelling } from './unit-spellings.ts'
import { findMadeUnit, findUnit, mayLeadMadeUnit } from './units.ts'

/** A unit as it stands behind, or before, a number. */
export interface UnitToken {
  readonly id: string
  /** The key of a spelling that may be more than one unit. */
  readonly ambiguous: string | null
  readonly start: number
  readonly end: number
  /** What stands between number and unit. */
  readonly gap: 'none' | 'space' | 'hyphen'
}

const joint =
  /[ \u00a0\u2009\u202f]?([/·⋅∙•*-]) ?|(\.)(?:(?=\p{L})|[ -](?=(?:ft|lbs?|lbf|in)(?!\p{L})))|[ \n](per|an?) |[ \u00a0\u2009\u202f](?=\p{L})/uy
const jointFirsts = codesOf(' \n/*-.')
const products = new Set('/·⋅∙')
const conduction = /^(?:\(|m ?[·.⋅]? ?K)/ // `0.035 W/mK` is no power
/** Small letters that begin neither a joining word nor the word of a power. */
const plainFirsts = codesOf('bdefghijklmnoqrtuvwxyz')

const choiceOf = (key: string, options: ReadOptions) =>
  ambiguousUnits.find(unit => unit.key === key)?.choose(options) ?? null

const imperialOf = (key: string): string =>
  ambiguousUnits.find(unit => unit.key === key)?.choose({ gallon: 'imperial', mil: 'mm', decimal: 'point' }) ?? key

interface Reader {
  readonly text: string
  readonly options: ReadOptions
}

/** The unit that two parts make; a gallon that nobody chose makes an ambiguous one. */
function combine(first: string, joined: string, { options }: Reader): string | null {
  const [sign = '', second = ''] = [joined[0], joined.slice(1)]
  const whole = (change: (key: string) => string) => findMadeUnit(`${change(first)}${sign}${change(second)}`)
  const chosen = whole(key => choiceOf(key, options) ?? key)
  if (chosen !== null) return chosen
  return whole(imperialOf) === null ? null : 'gal'
}

/** Whether `/` or *per* follows, which a unit that is not known may follow. */
function mayBeRefused(text: string, end: number): boolean {
  const at = text[end] === ' ' ? end + 1 : end
  return text[at] === '/' || text[at] === 'p'
}

type Next = { readonly part: Part } | 'refused' | null

/** Whether what stands behind a unit cannot join it to another. */
function isAlone({ text }: Reader, { id, end }: Part): boolean {
  if (!mayLeadMadeUnit(id) && !mayBeRefused(text, end)) return true
  const code = text.charCodeAt(end)
  if (code < 128 && !jointFirsts.has(code)) return true
  return code === 32 && plainFirsts.has(text.charCodeAt(end + 1)) && matchSpelling(text, end + 1) === null
}

/** The *in* of `40 lb in the van`. */
function isPreposition({ text }: Reader, first: Part, { id, end }: Part): boolean {
  if (id !== 'in' || !text.startsWith('in', end - 2)) return false
  return /^[. ]+$/.test(text.slice(first.end, end - 2)) && !isInches(text, { start: first.end, end }, 'pounds')
}

function readNext(reader: Reader, first: Part): Next {
  if (isAlone(reader, first)) return null
  joint.lastIndex = first.end
  const match = joint.exec(reader.text)
  if (match === null) return null
  const [all, mark = '', , word] = match
  const start = first.end + all.length
  const second = readPart(reader.text, start)
  if (second === null) return mark === '/' && conduction.test(reader.text.slice(start, start + 4)) ? 'refused' : null
  const id = combine(first.id, `${mark === '/' || word !== undefined ? '/' : '·'}${second.id}`, reader)
  const isTight = products.has(mark) || word === 'per'
  if (id === null) return isTight && !first.id.startsWith('money:') ? 'refused' : null
  return isPreposition(reader, first, second) ? null : { part: { id, end: second.end } }
}

function readParts(reader: Reader, at: number): Part | null {
  let part = readPart(reader.text, at)
  for (let steps = 0; part !== null && steps < 2; steps += 1) {
    const next: Next = readNext(reader, part)
    if (next === 'refused') return null
    if (next === null) break
    part = next.part
  }
  return part
}

function gapAt(text: string, at: number): { gap: UnitToken['gap']; start: number } {
  const code = text.charCodeAt(at)
  if (isGap(code)) return { gap: 'space', start: skipGap(text, at) }
  const isHyphen = (code === 45 || code === 0x2011) && isLetter(text.charCodeAt(at + 1))
  return isHyphen ? { gap: 'hyphen', start: at + 1 } : { gap: 'none', start: at }
}

function goesOn(text: string, end: number, gap: UnitToken['gap']): boolean {
  if (text[end] === '.' && isLetter(text.charCodeAt(end + 1))) {
    const after = text[end + 1] ?? ''
    return gap === 'none' || after === after.toLowerCase() || !isLetter(text.charCodeAt(end + 2))
  }
  return (
    gap === 'hyphen' &&
    text[end] === '-' &&
    text.slice(end - 2, end) === 'in' &&
    !/^-[a-z]{4,}/.test(text.slice(end, end + 6))
  )
}

/** The unit that follows a number, gap and all; null where none does. */
export function readUnit(text: string, at: number, options: ReadOptions): UnitToken | null {
  const { gap, start } = gapAt(text, at)
  const part = readParts({ text, options }, start)
  if (part === null || goesOn(text, part.end, gap)) return null
  if (findUnit(part.id) !== null) return { id: part.id, ambiguous: null, start, end: part.end, gap }
  const chosen = choiceOf(part.id, options)
  if (chosen !== null) return { id: chosen, ambiguous: null, start, end: part.end, gap }
  const isQuestion = ambiguousUnits.some(unit => unit.key === part.id)
  // Of `0.8 g of braking` the quantity is `0.8 g`, of `12 gauge wire` `12 gauge`; the words behind only raise the question.
  const isLed = part.id === 'g-force' || part.id === 'gauge'
  const end = isLed ? text.indexOf(' ', start) : part.end
  return isQuestion ? { id: part.id, ambiguous: part.id, start, end, gap } : null
}
