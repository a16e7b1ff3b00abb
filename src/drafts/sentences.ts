/** A stretch of text between two full stops or lines, UTF-16 units from 0. */
export interface Sentence {
  readonly start: number
  readonly end: number
  readonly text: string
}

/** Cuts text into sentences; an empty line or a line of a list ends one, a point within a figure does not. */
export function cutSentences(text: string): Sentence[] {
  const cuts = [...text.matchAll(/[.!?]+["')\]]*(?=\s|$)|\n(?=\s*\n|\s*[-*+] |\s*\d+[.)] )/g)].map(
    ({ index, 0: found }) => index + found.length,
  )
  const ends = [...cuts.filter(cut => !isWithinShortening(text, cut)), text.length]
  let start = 0
  return ends.flatMap(end => {
    const from = start
    start = end
    const words = text.slice(from, end)
    return words.trim() === ''
      ? []
      : [{ start: from + (words.length - words.trimStart().length), end, text: words.trim() }]
  })
}

/** `approx.`, `min.`, `no.`, `in.` before a small letter or a digit are shortened words, no ends. */
function isWithinShortening(text: string, cut: number): boolean {
  return (
    /\b(?:approx|min|max|no|in|ft|dia|vol|e\.g|i\.e)\.$/i.test(text.slice(Math.max(0, cut - 8), cut)) &&
    /^\s+[a-z0-9]/.test(text.slice(cut, cut + 3))
  )
}
