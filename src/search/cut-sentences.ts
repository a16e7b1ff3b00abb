import type { Pieces } from './pieces-of.ts'

/** Where a sentence stands in its text, without the blanks around it. */
export interface Cut {
  readonly start: number
  readonly end: number
}

const segmenter = new Intl.Segmenter('en', { granularity: 'sentence' })
// What a workshop shortens ends no sentence.
const shortened =
  /(?:^|[\s(])(?:approx|max|min|no|nos|dia|thk|qty|incl|excl|e\.g|i\.e|cf|vs|fig|ref|temp|mm|in|ft|lb)\.\s*$/i

/** Cuts a text into its sentences; never within a figure. */
export function cutSentences({ text, pieces }: Pick<Pieces, 'text' | 'pieces'>): Cut[] {
  const cuts: Cut[] = []
  let start = 0
  for (const { index, segment } of segmenter.segment(text)) {
    const end = index + segment.length
    const isWithin = pieces.some(({ figure, from, to }) => figure !== null && from < end && end < to)
    if (end < text.length && (shortened.test(segment) || isWithin)) continue
    cuts.push(...trimmed(text, start, end))
    start = end
  }
  return cuts
}

function trimmed(text: string, start: number, end: number): Cut[] {
  const words = text.slice(start, end)
  const from = start + words.length - words.trimStart().length
  const cut = { start: from, end: from + words.trim().length }
  return cut.end > cut.start ? [cut] : []
}
