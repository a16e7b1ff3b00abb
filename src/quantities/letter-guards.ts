import { isDigit } from './characters.ts'
import { isDecade } from './clock-time.ts'
import { isFirmLabel, isLabelled } from './labels.ts'
import type { NumberToken } from './number-token.ts'
import type { UnitToken } from './read-unit.ts'
import { clauseBefore, isCapitalised, wordAfter, wordBefore } from './words-around.ts'

const hyphen = 45
const mostPence = 99
const poles = /^ (?:plug|socket|connector|switch|breaker|housing|header)/i // `4p plug`: poles
const modelLetters: ReadonlySet<string> = new Set(['L', 'K', 'N', 'J', 'H', 'degC', 'fahrenheit'])
const stroke = 47
const space = 32
const steels = /^(?:304|316|317|321|904)$/
const cores = /^ ?[x×]/ // `3C x 1.5 mm²` is a cable of three cores, `8g x 40 mm` a screw of gauge 8
const tyre = /^z?r\d\d$/
const largestWheel = 12 // inches: `5.5J` is a wheel, not joules
const sideLetters = 'LWH'
const sideBehind = /^ ?[x×] ?[\d.]{1,6} ?[WHD](?![\p{L}\p{N}])/u
const sideBefore = /[LWD] ?[x×] ?$/
const engines = /^(?:head|heads|engine|engines|twin|turbo|valve|valves|cylinder|unit)$/
const highestRate = 30
const charging = /^(?:dis)?(?:charg(?:e|es|ed|ing)|rate|rates|burst)$/
const rated = /^-(?:rated|only|class|capable|tolerant|nominal|peak|fused|supply|side)\b/ // `a 12 V-only lamp`
const isSmall = (code: number): boolean => code >= 97 && code <= 122

/** `MPT 7210A`: figures behind capitals are a maker's number. */
const isTypeNumber = (text: string, { start, end }: NumberToken): boolean =>
  end - start >= 4 &&
  /^\d+$/.test(text.slice(start, end)) &&
  /(?<!\p{L})\p{Lu}{2,}\s$/u.test(text.slice(Math.max(0, start - 8), start))

/** The steel 316L, the wheel 5.5J, the tyre 205/55 R16 91V, the grade 43A. */
function isGrade(text: string, number: NumberToken, symbol: string, before: string): boolean {
  if (symbol === 'C' && cores.test(text.slice(number.end + 1, number.end + 4))) return true
  if (symbol === 'g' && cores.test(text.slice(number.end + 1, number.end + 4))) return true
  if (symbol === 'J' && number.value.toNumber() <= largestWheel) return true
  if (symbol === 'L' && steels.test(text.slice(number.start, number.end))) return true
  return tyre.test(before) || isLabelled(text, number) || isTypeNumber(text, number)
}

/** `600 L × 400 W`: the letters of length and width, not litres and watts. */
function isSide(text: string, number: NumberToken, unit: UnitToken): boolean {
  const sideAhead = sideBehind.test(text.slice(unit.end, unit.end + 14))
  return sideAhead || sideBefore.test(text.slice(Math.max(0, number.start - 4), number.start))
}

/** `16V head`: valves. */
function isValves(text: string, unit: UnitToken, symbol: string): boolean {
  return symbol === 'V' && unit.gap === 'none' && engines.test(wordAfter(text, unit.end).word)
}

/** `2 V-belts`, `w/`, `5 v 5`: the letter belongs to what follows. */
function isLedOn(text: string, unit: UnitToken, symbol: string): boolean {
  const code = text.charCodeAt(unit.end)
  const after = text.charCodeAt(unit.end + 1)
  const isLower = symbol === 'v' || symbol === 'w'
  if (isLower) return code === stroke || (unit.gap === 'space' && code === space && isDigit(after))
  const isCompound = unit.gap === 'space' && code === hyphen && isSmall(after) && !isSmall(symbol.charCodeAt(0))
  return isCompound && !rated.test(text.slice(unit.end, unit.end + 12))
}

/** `1080p`, `12 p`, page 12p: no price in pence. */
function isNoPence(text: string, number: NumberToken, { gap, end }: UnitToken): boolean {
  if (poles.test(text.slice(end, end + 11))) return true
  return number.written === 'words' || gap !== 'none' || number.value.toNumber() > mostPence || isLabelled(text, number)
}

/** `a Halvern 900 L`: the letter of a model behind its name. */
function isModelName(text: string, number: NumberToken, { id, gap }: UnitToken): boolean {
  if (!modelLetters.has(id) || gap !== 'space' || !/^[1-9]\d{2,3}$/.test(text.slice(number.start, number.end)))
    return false
  const before = wordBefore(text, number.start, 0)
  const isFirst = /^(?:[^.!?]*[.!?:])?\s*$/.test(text.slice(Math.max(0, before.start - 3), before.start))
  return before.word.length > 2 && !isFirst && isCapitalised(text, before.start)
}

/** `0.5C`, *charged at 0.2 C*: a battery's current as a share of its capacity. */
function isChargeRate(text: string, number: NumberToken, { id, gap, end }: UnitToken): boolean {
  const size = number.value.toNumber()
  if (id !== 'degC' || size <= 0 || size > highestRate) return false
  if (gap === 'none' && size <= 3) return true
  const [nearest = '', further = ''] = clauseBefore(text, number.start, 2)
  return charging.test(wordAfter(text, end).word) || (size <= 3 && nearest === 'at' && charging.test(further))
}

/** Whether a unit of one letter is none after all. */
export function isLetterRefused(text: string, number: NumberToken, unit: UnitToken): boolean {
  const symbol = text.slice(unit.start, unit.end)
  if (symbol === 'p') return isNoPence(text, number, unit)
  if (number.written === 'words' || isLedOn(text, unit, symbol) || isValves(text, unit, symbol)) return true
  if (sideLetters.includes(symbol) && isSide(text, number, unit)) return true
  if (unit.gap === 'hyphen' && !'VWAm'.includes(symbol)) return true
  const before = wordBefore(text, number.start, 0).word
  if (isFirmLabel(before) || (before === 'no' && text[number.start - 2] === '.')) return true
  if (isChargeRate(text, number, unit)) return true
  const isTight = unit.gap === 'none'
  if (isTight && isGrade(text, number, symbol, before)) return true
  if (symbol === 'K') return isTight || text.startsWith(' on the ', unit.end)
  if (symbol === 's') return isTight && (number.kind === 'fraction' || isDecade(text, number))
  return isModelName(text, number, unit)
}
