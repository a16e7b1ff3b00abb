import type { Taken } from '../editions/taken.ts'

/** What an edition leaves out, a line each: where it stands, as what it is withheld, the words. For the builder's own screen. */
export function reportTaken(taken: readonly Taken[], edition: string): string {
  if (taken.length === 0) return `The edition ${edition} leaves nothing out.`
  const lines = taken.map(
    ({ place, as, what }) => `  ${place.file}:${place.line}:${place.column} ${named(as)}: ${short(what)}`,
  )
  return [`The edition ${edition} leaves out:`, ...lines].join('\n')
}

/** The same for `--json`. */
export function takenRow({ place, as, what }: Taken): Record<string, unknown> {
  return { file: place.file, line: place.line, column: place.column, as: named(as), text: what }
}

const named = (as: Taken['as']): string => (as === 'broken' ? 'unclear' : as)

const longest = 60 // characters of a withheld block that tell which it is

function short(words: string): string {
  const line = words.replace(/\s+/g, ' ').trim()
  return line.length > longest ? `${line.slice(0, longest)} …` : line
}
