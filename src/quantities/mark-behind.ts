import { isGap } from './characters.ts'
import type { Mark } from './mark-before.ts'

const behind =
  /\s(?:(or so|or thereabouts|give or take|approx(?:imately)?|ish|more or less|near enough)|(min(?:imum)?|or more|or over|or better|at (?:the )?least)|(max(?:imum)?|or less|or under|at (?:the )?most))(?![\p{L}\p{N}])|-?(ish)(?![\p{L}\p{N}])/iuy
/** What may stand behind a comma or in brackets; `5 mm, max 10 mm` is another figure. */
const apart =
  /(?:,\s(?:(or so|or thereabouts|give or take(?=[.,;:)]|$)|more or less|near enough)|(or more|at the least)|(or less|at (?:the )?most))(?![\p{L}\p{N}]|\s?[£€$\d])|\s\((?:(approx(?:imately|\.)?)|(min(?:imum|\.)?)|(max(?:imum|\.)?))\))/iuy

const [comma, bracket, hyphen, plus] = [44, 40, 45, 43]
/** The first two letters of the words behind a figure that say something of it. */
const openings = new Set(
  ['or', 'gi', 'ap', 'is', 'mi', 'ma', 'at', 'mo', 'ne'].map(pair => pair.charCodeAt(0) * 128 + pair.charCodeAt(1)),
)

function mayBeBehind(text: string, end: number): boolean {
  const code = text.charCodeAt(end)
  if (code === hyphen) return true
  const from = code === comma ? end + 1 : end
  if (!isGap(text.charCodeAt(from))) return false
  const start = text.charCodeAt(from + 1) === bracket ? from + 2 : from + 1
  return openings.has((text.charCodeAt(start) | 32) * 128 + (text.charCodeAt(start + 1) | 32))
}

/** `20 mm+` is twenty and more; `12 V+` is a pole. */
function openMark(text: string, end: number): { mark: Mark; end: number } | null {
  const isOpen = /^[a-z]\+(?![\d/+−-]|\p{L})/u.test(text.slice(end - 1, end + 2))
  return isOpen ? { mark: 'min', end: end + 1 } : null
}

/** What the words behind a figure that ends at a place say of it, and where they end. */
export function markBehind(text: string, end: number): { mark: Mark; end: number } | null {
  if (text.charCodeAt(end) === plus) return openMark(text, end)
  if (!mayBeBehind(text, end)) return null
  const isApart = text.charCodeAt(end) === comma || text.charCodeAt(end + 1) === bracket
  const pattern = isApart ? apart : behind
  pattern.lastIndex = end
  const match = pattern.exec(text)
  if (match === null) return null
  const mark =
    match[2] !== undefined || match[5] !== undefined
      ? 'min'
      : match[3] !== undefined || match[6] !== undefined
        ? 'max'
        : 'about'
  return { mark, end: pattern.lastIndex }
}
