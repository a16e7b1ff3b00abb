import { sizeBefore, words } from './words-about-in.ts'
import { clauseBefore, type Word, wordAfter, wordBefore } from './words-around.ts'

/** Verbs of putting a thing where it belongs. */
export const placing =
  /^(?:left|leave|leaves|leaving|put|puts|putting|screwed|dropped|popped|pushed|fitted|fit|got|get|keep|kept|bolted|glued|threw|poured|nailed|hammered|knocked|tapped|drove|sank|slipped|wound|stuck)$/
const remaining = words('last first other remaining final next')
const othersOut = /(?:are|is|were|was|one|two|three|four|five|six|\d) out(?:,| and| but|, and|, but) $/i
const weekdays = /^(?:mon|tues|wednes|thurs|fri|satur|sun)day$/

/** *Put the last 2 in*, *got all 6 in*, *there were 12 in*: so many of the things told of. */
export function isRemainder(text: string, start: number): boolean {
  const before = wordBefore(text, start, 0)
  if (before.word === 'all' || othersOut.test(text.slice(Math.max(0, start - 24), start))) return true
  if (/^(?:are|were)$/.test(before.word)) return wordBefore(text, before.start, 0).word === 'there'
  return remaining.has(before.word) && clauseBefore(text, before.start, 4).some(word => placing.test(word))
}

const seating =
  /^(?:clip|clips|clipped|put|puts|putting|screw|screwed|popped|fitted|fit|fits|got|get|keep|kept|bolt|bolted|glued|nailed|hammered|plug|plugged|slotted|weld|welded|solder|soldered|rivet|riveted)$/
const having = /^(?:had|have|has|having)$/
const seatedEnds = words('at on with for before after by to')
const besides = /^(?:at|with|by|on|near|under)$/ // `the 3 in at the front`
const untilThen = words('before after by on')
const packs = words('pack packet box bag card set tin tray bundle roll crate carton sleeve strip sheet shelf drawer')
const tasks = words('job jobs task team shift project case board committee order bike boat car van truck')

/** *Clip 5 in at the back*, *had 6 in before lunch*, *3 in to a pack*, *2 in on this job*: a count of what is there. */
export function isSeated(text: string, start: number, next: Word): boolean {
  const before = wordBefore(text, start, 0).word
  if (seatedEnds.has(next.word) && seating.test(before)) return true
  if (untilThen.has(next.word) && having.test(before)) return true
  if (before === 'the' && besides.test(next.word)) return true
  if (next.word !== 'to' && next.word !== 'on') return false
  const article = wordAfter(text, next.end)
  const thing = wordAfter(text, article.end)
  if (weekdays.test(article.word)) return !sizeBefore.has(before)
  if (next.word === 'to') return /^(?:a|the|each|every)$/.test(article.word) && packs.has(thing.word)
  return /^(?:this|that|each|every)$/.test(article.word) && tasks.has(thing.word)
}
