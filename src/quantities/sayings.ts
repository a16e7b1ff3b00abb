const giving = /\b(?:giv(?:e|es|ing)|gave|budged?|yield(?:ed)?)\s$/i
const inTheDoor =
  /^ (?:in the (?:door|camp|grave)|on (?:the|each|either) (?:pedal|brake|clutch|throttle|gas|floor|ladder))\b/i

/** Whether an article's amount is only a saying: *would not give an inch*, *a foot in the door*. */
export function isSaying(text: string, start: number, end: number): boolean {
  return giving.test(text.slice(Math.max(0, start - 9), start)) || inTheDoor.test(text.slice(end, end + 24))
}
