const giving = /\b(?:giv(?:e|es|ing)|gave|budged?|yield(?:ed)?)\s$/i
const inTheDoor =
  /^ (?:in the (?:door|camp|grave)|on (?:the|each|either) (?:pedal|brake|clutch|throttle|gas|floor|ladder))\b/i
const ofBody = /^ (?:through|caught|went|got|broke|[a-z]{2,12}ped)\b/ // `a foot slipped`

/** Whether an article's amount is only a saying: *would not give an inch*, *a foot in the door*, *a foot slipped*. */
export function isSaying(text: string, start: number, end: number): boolean {
  const behind = text.slice(end, end + 24)
  if (text.startsWith('foot', end - 4) && ofBody.test(behind)) return true
  return giving.test(text.slice(Math.max(0, start - 9), start)) || inTheDoor.test(behind)
}
