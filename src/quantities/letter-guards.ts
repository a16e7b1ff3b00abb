import { isDigit } from './characters.ts'
import { isDecade } from './clock-time.ts'
import { isFirmLabel, isLabelled } from './labels.ts'
import type { NumberToken } from './number-token.ts'
import type { UnitToken } from './read-unit.ts'
import { wordAfter, wordBefore } from './words-around.ts'

const hyphen = 45
const stroke = 47
const space = 32
const steels = /^(?:304|316|317|321|904)$/
const cores = /^ ?[x×]/ // `3C x 1.5 mm²` is a cable of three cores
const tyre = /^z?r\d\d$/
const largestWheel = 12 // inches: `5.5J` is a wheel, not joules
const engines = /^(?:head|heads|engine|engines|twin|turbo|valve|valves|cylinder|unit)$/
const isSmall = (code: number): boolean => code >= 97 && code <= 122

/** The steel 316L, the wheel 5.5J, the tyre 205/55 R16 91V, the grade 43A. */
function isGrade(text: string, number: NumberToken, symbol: string, before: string): boolean {
  if (symbol === 'C' && cores.test(text.slice(number.end + 1, number.end + 4))) return true
  if (symbol === 'J' && number.value.toNumber() <= largestWheel) return true
  if (symbol === 'L' && steels.test(text.slice(number.start, number.end))) return true
  return tyre.test(before) || isLabelled(text, number)
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
  if (isLower) return code === stroke || (code === space && isDigit(after))
  return unit.gap === 'space' && code === hyphen && isSmall(after) && !isSmall(symbol.charCodeAt(0))
}

/** Whether a unit of one letter is none after all. */
export function isLetterRefused(text: string, number: NumberToken, unit: UnitToken): boolean {
  const symbol = text.slice(unit.start, unit.end)
  if (number.written === 'words' || isLedOn(text, unit, symbol) || isValves(text, unit, symbol)) return true
  if (unit.gap === 'hyphen' && !'VWAm'.includes(symbol)) return true
  const before = wordBefore(text, number.start, 0).word
  if (isFirmLabel(before)) return true
  const isTight = unit.gap === 'none'
  if (isTight && isGrade(text, number, symbol, before)) return true
  if (symbol === 'K') return isTight || text.startsWith(' on the ', unit.end)
  return symbol === 's' && isTight && isDecade(text, number)
}
