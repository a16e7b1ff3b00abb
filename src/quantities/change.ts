import type { Amount } from './amount.ts'
import { clauseBefore, wordBefore } from './words-around.ts'

/** Beginnings of the verbs after which *from 10 to 12 mm* is an old and a new value. */
const changing =
  /^(?:rais|lower|cut|open|went$|go$|goes$|gone$|going$|increas|reduc|drop|rose$|rise|rising|fell$|fall|chang|mov|shorten|lengthen|widen|narrow|deepen|thicken|thinn|grew|grow|shrink|shrank|shrunk|bore|rebor|turn|skim|machin|mill|filed|filing|ground|grind|swap|upgrad|downgrad|uprat|step|shift|stretch|extend|adjust|reset|set$|improv|brought|bring|came|come|clos|heat|warm|cool|charg|discharg|climb|jump|slid|crept|creep|sank|sink|sagg|sag$|switch|convert|ream|drill|enlarg|trim|wound|tighten|loosen|took$|take|taking|wore$|wear|worn$|stiffen|compress|squash|squeez|replac|revis|alter|correct|updat|pulled|let$|eased|dipp|settl|spread|sprang|expand|contract)/

const fixing = /^(?:weld|bolt|join|butt|glu|rivet|clamp|bond|screw|solder|braz|tack)/

/** Whether a verb of change stands before the *from* that leads to a place. */
export function findChange(text: string, start: number): boolean {
  const from = wordBefore(text, start, 0)
  if (from.word !== 'from') return false
  const [nearest = '', ...others] = clauseBefore(text, from.start, 8)
  if (/^(?:anywhere|anything|everything|somewhere)$/.test(nearest)) return false
  return /^(?:up|down|back)$/.test(nearest) || [nearest, ...others].some(word => changing.test(word))
}

/** Whether two amounts are pieces that were joined, as in `welded 3 mm to 5 mm plate`. */
export function isBetweenFixed(text: string, [left, right]: readonly [Amount, Amount]): boolean {
  if (left.unit === null || right.unit === null) return false
  return clauseBefore(text, left.start, 3).some(word => fixing.test(word))
}
