const clock = String.raw`(?:\d{1,2}:)?\d{1,2}:\d{2}(?:[.,]\d{1,3})?`
const span = new RegExp(String.raw`^\s*${clock}\s*-->\s*${clock}(?:\s.*)?$`) // 00:00:01.000 --> 00:00:04.000
const bracketed = new RegExp(String.raw`[\[(]\s*(?:${clock}|\d{1,2}:\d{2}:\d{2})\s*[\])]:?[ \t]?`, 'g') // [00:12:31] and (12:31)
const atStart = /^\s*\d{1,2}:\d{2}:\d{2}(?:[.,]\d{1,3})?(?:[ \t]*[-–—:][ \t]+|[ \t]+|$)/ // 00:12:31, hours with it: 12:31 alone may be a time of day

/** Text without the timings of a transcript: cues, their numbers, and times in brackets. Words stay as they are. */
export function dropTimings(text: string): string {
  const lines = text.split('\n')
  const kept = lines.filter(
    (line, at) => !span.test(line) && !isCueNumber(lines, at) && !(at === 0 && /^WEBVTT(?:\s|$)/.test(line)),
  )
  return kept.map(line => line.replace(bracketed, '').replace(atStart, '')).join('\n')
}

/** A number alone on the line over a cue. */
function isCueNumber(lines: readonly string[], at: number): boolean {
  return /^\s*\d+\s*$/.test(lines[at] ?? '') && span.test(lines[at + 1] ?? '')
}
