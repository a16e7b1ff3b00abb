import { isWordPart } from './characters.ts'
import { type Before, type Mark, phraseBefore, signBefore } from './mark-before.ts'
import { markBehind } from './mark-behind.ts'
import { clauseBefore } from './words-around.ts'

/** What the words about a figure say of it, and where they begin and end. */
export interface Qualifiers {
  readonly start: number
  readonly end: number
  readonly isApproximate: boolean
  readonly bound: 'min' | 'max' | null
}

const place =
  /^(?:wrap|wound|wind|coil|loop|fold|roll|tape|tied|tie|form|clamp|bent|bend|slip|clip|fit|turn|rout|went|go|goes|pass|ran|run|tight|shrink|shrunk|seal|cast|mould|weld|braz|stretch|slid|crimp|spun|spin|built|cut|fasten|bound|bind|swag|sleev|snug|tightly)/

/** Where the words of the quantity before end, and whether this one is a length, which things go around. */
export interface Surroundings {
  readonly limit: number
  readonly isLength: boolean
  /** `20+ mm` is twenty and more. */
  readonly isOpen: boolean
}

const afterSize =
  /^ (?:of|long|longer|wide|wider|deep|high|higher|thick|proud|more|less|too|over|above|below|away|off|out|from|in|at|to|and|or|before|after|under|up|down|short|clear|to|on|later|away)\b/i
const measure = /^(?:at|of|is|was|to|be|are|were)$/

/** Whether *around* tells a place: `wrapped around 38 mm tube`. */
function isPlace(text: string, { start }: Before, isLength: boolean): boolean {
  if (!isLength || text.slice(start, start + 6).toLowerCase() !== 'around') return false
  const words = clauseBefore(text, start, 6)
  return !measure.test(words[0] ?? '') && words.some(word => place.test(word))
}

const working =
  /^(?:nipp|tighten|torqu|pump|warm|heat|wound|wind|charg|topp|crank|revv|bring|brought|jack|inflat|did|done)/
const worked = /^(?:it|them|both|all|each|that|those)$/

/** Whether the *up* of *up to* belongs to a verb: *pumped it up to 32 psi*. */
function isWorkedUp(text: string, start: number): boolean {
  if (text.slice(start, start + 5).toLowerCase() !== 'up to') return false
  const [nearest = '', further = ''] = clauseBefore(text, start, 2)
  return working.test(worked.test(nearest) ? further : nearest)
}

function markBefore(text: string, at: number, { limit, isLength }: Surroundings): Before | null {
  const sign = signBefore(text, at, limit)
  if (sign !== null) return sign
  const before = phraseBefore(text, at, limit)
  return before === null ||
    isPlace(text, before, isLength) ||
    isWorkedUp(text, before.start) ||
    isWordPart(text.charCodeAt(before.start - 1))
    ? null
    : before
}

/** *A good 12 V battery* is a good one; *a good 3 mm proud* is three and more. */
function isPraise(text: string, { start }: Before, end: number): boolean {
  if (text.slice(start, start + 6).toLowerCase() !== 'a good') return false
  return /^[ -][a-z]/i.test(text.slice(end, end + 2)) && !afterSize.test(text.slice(end, end + 12))
}

const stop = 46
const shortStop = /^\. [a-z]/ // `3 in. max`

/** Reads the words before and behind a figure that make it approximate or a bound. */
export function readQualifiers(text: string, span: { start: number; end: number }, around: Surroundings): Qualifiers {
  let { start, end } = span
  const before = markBefore(text, start, around)
  const first = before !== null && isPraise(text, before, end) ? null : before
  const isStopped = text.charCodeAt(end) === stop && shortStop.test(text.slice(end, end + 3))
  const last = markBehind(text, isStopped ? end + 1 : end)
  if (first === null && last === null) return { start, end, isApproximate: false, bound: around.isOpen ? 'min' : null }
  const marks: Mark[] = around.isOpen ? ['min'] : []
  for (let before = first; before !== null; before = marks.length < 2 ? markBefore(text, start, around) : null) {
    marks.push(before.mark)
    start = before.start
  }
  for (let after = last; after !== null; after = marks.length < 4 ? markBehind(text, end) : null) {
    marks.push(after.mark)
    end = after.end
  }
  const bound = marks.includes('min') ? 'min' : marks.includes('max') ? 'max' : null
  return { start, end, isApproximate: marks.includes('about'), bound }
}
