import { isLetter } from './characters.ts'
import { isClockTime } from './clock-time.ts'
import { isInches } from './inch-or-preposition.ts'
import { isLabelled, isYear } from './labels.ts'
import { isLetterRefused } from './letter-guards.ts'
import type { NumberToken } from './number-token.ts'
import type { UnitToken } from './read-unit.ts'
import { clauseBefore, wordAfter, wordBefore } from './words-around.ts'

/** Things that a unit's word or letter belongs to when it stands before them: a foot pump, a V belt. */
const things: ReadonlyMap<string, RegExp> = new Map([
  ['foot', /^(?:pump|brake|rest|pedal|well|switch|plate|board|peg|valve|print)s?$/],
  [
    'second',
    /^(?:hand|gear|coat|row|pair|donor|one|owner|floor|stage|opinion|half|class|time|set|fix|hole|attempt|go|try)s?$/,
  ],
  ['meter', /^(?:reads?|reading|showed|shows|said|says|agreed?|disagreed?|needle|lead|probe|face|movement)s?$/],
  ['stone', /^(?:chip|guard|wall|bruise)s?$/],
  ['bar', /^(?:clamp|heater|fire|stool|end|gate)s?$/],
  ['yard', /^(?:broom|sale|gate|arm)s?$/],
  ['V', /^(?:belt|block|groove|notch|notche|pulley|band|twin|engine|shape)s?$/],
  ['A', /^(?:frame|arm|post|pillar|road)s?$/],
  ['C', /^(?:clamp|section|cell|channel|clip|ring|spanner|pillar|post)s?$/],
  ['L', /^(?:bracket|section|shape|piece|plate)s?$/],
  ['W', /^(?:clip|section)s?$/],
  ['J', /^(?:bolt|hook)s?$/],
  ['H', /^(?:section|beam|frame)s?$/],
  ['F', /^clamps?$/],
  ['K', /^(?:factor|frame)s?$/],
])
/** The first letters of the things' units that are words. */
const thingFirsts = new Set([...things.keys()].filter(name => name.length > 1).map(name => name.charCodeAt(0)))
const smallCount = 8
const hyphen = 45

function isThing(text: string, number: NumberToken, unit: UnitToken, symbol: string): boolean {
  const first = symbol.charCodeAt(0)
  if (symbol.length > 1 && !thingFirsts.has(first | 32)) return false
  const named = things.get(symbol.length > 3 ? symbol.toLowerCase() : symbol)
  if (named === undefined) return false
  const next = wordAfter(text, text.charCodeAt(unit.end) === hyphen ? unit.end + 1 : unit.end)
  return named.test(next.word) && (symbol.length > 1 || number.value.toNumber() <= smallCount)
}

const idioms = /^(?:day|second|stone)$/
const noAngle = /^ (?:of (?:freedom|separat)|burns?\b)/ // degrees that are no angle
const legged = /^(?:its|their|has|have|had|with|on|all|both|these|those|rubber|adjustable|levelling)$/
const standing = /^ ?(?:[.,;:!?)]|$| (?:are|were|is|that|which|stand|stands|need|needs)\b)/

/** *The stool has three feet*: those it stands on. */
function isLegs(text: string, number: NumberToken, unit: UnitToken): boolean {
  if (number.value.toNumber() > smallCount || !legged.test(wordBefore(text, number.start, 0).word)) return false
  return standing.test(text.slice(unit.end, unit.end + 8))
}

const oneFoot = /^ (?:of|long|wide|high|deep|from|above|below|square)\b/

/** *One day*, *one foot on the brake*. */
function isIdiom(text: string, number: NumberToken, unit: UnitToken, symbol: string): boolean {
  if (unit.id === 'deg') return noAngle.test(text.slice(unit.end, unit.end + 12))
  if (symbol === 'feet' && number.written === 'words') return isLegs(text, number, unit)
  if (number.written !== 'words' || text.slice(number.start, number.end).toLowerCase() !== 'one') return false
  if (symbol === 'foot') return !oneFoot.test(text.slice(unit.end, unit.end + 8))
  return idioms.test(symbol) || (symbol === 'minute' && wordBefore(text, number.start, 0).word === '')
}

/** *Two knots in the line*, *tied it with three knots*. */
function isTied(text: string, number: NumberToken, unit: UnitToken): boolean {
  if (/^ (?:in|tied|slipp|held)/.test(text.slice(unit.end, unit.end + 6))) return true
  return clauseBefore(text, number.start, 5).some(word => /^(?:un)?(?:tie|ties|tied|tying)$/.test(word))
}

function isWordInRefused(text: string, number: NumberToken, unit: UnitToken): boolean {
  if (isYear(text, number) || isLabelled(text, number)) return true
  const span = { start: number.start, end: unit.end }
  if (number.written === 'words') return !isInches(text, span, 'words')
  return !isInches(text, span, number.kind === 'whole' ? 'whole' : 'part')
}

/** Whether the word or letter behind a number is no unit there, whatever it looks like. */
export function isUnitRefused(text: string, number: NumberToken, unit: UnitToken): boolean {
  const symbol = text.slice(unit.start, unit.end)
  if (isThing(text, number, unit, symbol)) return true
  if (symbol === 'in' && unit.gap === 'space') return isWordInRefused(text, number, unit)
  if ((unit.id === 'h' || unit.id === 'min') && isClockTime(text, number, unit)) return true
  if (symbol.length === 1 && isLetter(symbol.charCodeAt(0)))
    return symbol !== 'Ω' && isLetterRefused(text, number, unit)
  if (symbol === 'knots') return isTied(text, number, unit)
  return symbol === 'st' ? unit.gap !== 'space' : isIdiom(text, number, unit, symbol)
}
