import leven from 'leven'

/** The directives of a note. */
export const directiveNames = ['private', 'measure', 'job', 'connector', 'mark'] as const
export type DirectiveName = (typeof directiveNames)[number]

interface NearName {
  readonly name: DirectiveName
  /** False for a name that is one edit or a capital away. */
  readonly exact: boolean
}

/** The directive that a name is, or is taken to be meant for. */
export function nearName(written: string): NearName | null {
  const lower = written.toLowerCase()
  for (const name of directiveNames) {
    if (written === name) return { name, exact: true }
    if (lower === name || isOneEdit(lower, name)) return { name, exact: false }
  }
  return null
}

function isOneEdit(written: string, name: string): boolean {
  if (Math.abs(written.length - name.length) > 1) return false
  return leven(written, name) === 1 || isSwapped(written, name)
}

/** `pirvate`: two neighbours changed places. */
function isSwapped(written: string, name: string): boolean {
  if (written.length !== name.length) return false
  const first = [...name].findIndex((letter, at) => letter !== written[at])
  return name.slice(0, first) + (name[first + 1] ?? '') + (name[first] ?? '') + name.slice(first + 2) === written
}

interface WrittenHead {
  readonly colons: number
  readonly name: string
  /** The character behind the name. */
  readonly next: string
}

const shortName = 4 // letters: `red:dark` is one edit from `:mark` and a word all the same

/** Whether colons and a name are a mark, or meant to be one; if not they are words: `12:30`, `red:black`, `a four-way:connector`. */
export function isMark({ colons, name, next }: WrittenHead): boolean {
  const near = nearName(name)
  if (near === null) return false
  if (near.name === 'private' || next === '[' || next === '{') return true
  return colons > 1 && (near.exact || near.name.length > shortName)
}
