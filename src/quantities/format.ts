import { formatMoneyNumber } from './format-money.ts'
import { placesFor, rationalOfDecimal, roundDecimal } from './round-decimal.ts'
import { unitOf } from './units.ts'

const narrowSpace = '\u202f' // between a number and its unit, and between groups of three digits
const mostDigits = 12 // significant; beyond them a float shows its own noise
const digitsOfUncertainty = 2 // at most (JCGM 100:2008, 7.2.6)
const isTight = new Set(['°', '%', ''])

function grouped(digits: string): string {
  return digits.length < 5 ? digits : digits.replace(/\B(?=(\d{3})+$)/g, narrowSpace)
}

function dressed(decimal: string): string {
  const [whole = '', places] = decimal.replace('-', '').split('.')
  const sign = decimal.startsWith('-') && /[1-9]/.test(decimal) ? '−' : ''
  return `${sign}${grouped(whole)}${places === undefined ? '' : `.${places}`}`
}

function withUnit(number: string, unitId: string): string {
  if (unitId.startsWith('money:')) return formatMoneyNumber(number, unitId.slice(6))
  const symbol = unitSymbol(unitId)
  return `${number}${isTight.has(symbol) && symbol !== '%' ? '' : narrowSpace}${symbol}`
}

/** The printed symbol of a unit's identifier; empty for a bare number. */
export const unitSymbol = (unitId: string): string => unitOf(unitId).symbol

/** A number for people: no more than twelve significant digits, thousands apart from five digits on, a true minus. */
export function formatNumber(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`Unexpected number ${value}, expected a finite one to print`)
  const exact = rationalOfDecimal(Number(value.toPrecision(mostDigits)))
  const places = placesFor(exact, mostDigits) ?? 0
  const decimal = places > 0 ? roundDecimal(exact, places).replace(/\.?0+$/, '') : roundDecimal(exact, 0)
  return dressed(decimal)
}

/** A number in a unit, such as `860 mm`. */
export function formatQuantity(value: number, unitId: string): string {
  return withUnit(formatNumber(value), unitId)
}

function placesOf(uncertainty: number): number | null {
  return Number.isFinite(uncertainty) && uncertainty > 0
    ? placesFor(rationalOfDecimal(uncertainty), digitsOfUncertainty)
    : null
}

/** A number in a unit, with no more digits than its uncertainty U warrants. */
export function formatWarranted(value: number, uncertainty: number, unitId: string): string {
  const places = placesOf(uncertainty)
  if (places === null) return formatQuantity(value, unitId)
  return withUnit(dressed(roundDecimal(rationalOfDecimal(value), places)), unitId)
}

/** `69.1 ± 1.2 L`: the uncertainty to two significant digits at most, the value rounded alike (JCGM 100:2008, 7.2.6). */
export function formatWithUncertainty(value: number, uncertainty: number, unitId: string): string {
  const places = placesOf(uncertainty)
  if (places === null) return formatQuantity(value, unitId)
  const [number, size] = [value, uncertainty].map(one => dressed(roundDecimal(rationalOfDecimal(one), places)))
  return withUnit(`${number} ± ${size}`, unitId)
}
