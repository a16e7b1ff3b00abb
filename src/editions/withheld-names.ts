import type { Finding } from '../findings/finding.ts'
import type { StatedBuild } from './edition-notes.ts'
import type { NameHit } from './find-in-fields.ts'
import { redactNotes } from './redact-notes.ts'
import { isWithin, type Taken } from './taken.ts'
import { withheldBy } from './withheld.ts'

/** Withheld words that stand unmarked where an edition would publish them: one finding a place, which names the editions. */
export function withheldNames(stated: StatedBuild, editions: readonly string[]): Finding[] {
  const found = new Map<string, { hit: NameHit; editions: string[] }>()
  for (const edition of editions) {
    const withheld = withheldBy(stated.editions, edition)
    if (withheld === null || withheld.isWhole) continue
    for (const hit of redactNotes(stated, withheld).hits) {
      const known = found.get(keyOf(hit))
      if (known === undefined) found.set(keyOf(hit), { hit, editions: [edition] })
      else if (!known.editions.includes(edition)) known.editions.push(edition)
    }
  }
  return [...found.values()].map(({ hit, editions: names }) => nameFinding(hit, names, isInName(hit.place, stated)))
}

/** All that an edition leaves out of the notes, in their order, for the builder's eyes only. */
export function takenOut(stated: StatedBuild, edition: string): Taken[] {
  const withheld = withheldBy(stated.editions, edition)
  if (withheld === null || withheld.isWhole) return []
  const once = new Map(
    redactNotes(stated, withheld).taken.map(taken => [JSON.stringify([taken.place, taken.as]), taken]),
  )
  return [...once.values()].sort(
    ({ place: a }, { place: b }) => compareText(a.file, b.file) || a.line - b.line || a.column - b.column,
  )
}

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

const keyOf = ({ place, word }: NameHit): string => `${place.file}:${place.line}:${place.column} ${word.text}`

function nameFinding({ place, word }: NameHit, editions: readonly string[], isName: boolean): Finding {
  const names = editions.map(name => `\`${name}\``)
  const which =
    names.length === 1 ? `the edition ${names[0]}` : `the editions ${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
  const { file, line, column, endLine, endColumn } = place
  return {
    rule: 'withheld-name',
    severity: 'error',
    file,
    line,
    column,
    endLine,
    endColumn,
    message: `Unexpected \`${word.text}\` in what ${which} would publish, expected it marked or in other words: it is withheld as ${word.as}`,
    mend: isName ? 'write another name: in a name no mark is read' : mendOf(place, word),
    about: [],
    related: [{ ...word.place, message: `It is marked as ${word.as} here` }],
  }
}

/** Whether a place lies in a key of front matter, which is an identifier or a word of the format. */
function isInName(place: NameHit['place'], { keys }: StatedBuild): boolean {
  return keys.some(key => isWithin(place, key.place))
}

/** What stands in a line of prose can be marked; a name of a file or a thing takes another. */
function mendOf(place: NameHit['place'], word: NameHit['word']): string | null {
  const isExact = place.line === place.endLine && place.endColumn - place.column === word.text.length
  return isExact ? `:private[${word.text}]{as=${word.as}}` : null
}
