import { identifierOf } from '../facts/identifier.ts'
import type { DraftGround } from './draft-ground.ts'

/** A thing that a sentence names, and where. */
export interface NamedThing {
  /** `fuel-tank`, `circuit:fuel-pump`, `vehicle`. */
  readonly path: string
  readonly at: number
  readonly end: number
}

interface Name {
  readonly words: string
  readonly path: string
}

/** The names of what the record holds, as people would say them, the longest first. */
export function sayableNames({ record }: DraftGround): Name[] {
  const parts = record.parts.flatMap(({ id, name }) =>
    [name, name.split(',')[0] ?? '', id.replaceAll('-', ' ')].map(words => ({ words, path: id })),
  )
  const circuits = record.circuits.map(({ id }) => ({
    words: `${id.replaceAll('-', ' ')} circuit`,
    path: `circuit:${id}`,
  }))
  const own = ['wheelbase', 'ride height'].map(words => ({ words, path: 'vehicle' }))
  const all = [...parts, ...circuits, ...own]
    .map(({ words, path }) => ({ words: words.trim().toLowerCase(), path }))
    .filter(({ words }) => words.length > 2)
  const distinct = all.filter(
    (one, at) => all.findIndex(other => other.words === one.words && other.path === one.path) === at,
  )
  return distinct.sort((one, other) => other.words.length - one.words.length)
}

/** The things of the record that a sentence names, whole words only, in the order said; a shorter name within a longer is none. */
export function namedThings(sentence: string, names: readonly Name[]): NamedThing[] {
  const text = sentence.toLowerCase()
  const found: NamedThing[] = []
  for (const { words, path } of names) {
    for (let at = text.indexOf(words); at !== -1; at = text.indexOf(words, at + 1)) {
      const end = at + words.length
      if (!isWholeName(text, at, end)) continue
      if (found.some(other => at < other.end && end > other.at)) continue
      found.push({ path, at, end })
    }
  }
  return found.sort((one, other) => one.at - other.at)
}

/** Whether words stand alone as a name: `the radiator cap` does not name the radiator, `front brake pipe` not the brake pipe. */
function isWholeName(text: string, at: number, end: number): boolean {
  return /(?:^|[^\p{L}\p{N}\s-]\s*|\n)$/u.test(text.slice(0, at)) || leadsTo.test(text.slice(0, at))
    ? endsName.test(text.slice(end))
    : false
}

const small =
  'is|are|was|were|weighs|weighed|measures|measured|comes|came|holds|held|took|takes|draws|drew|has|had|and|but|so|to|on|in|into|from|for|at|with|of|by|because|then|which|that|after|before|back|again|off|out|up'
const deeds =
  'fitted|installed|removed|ordered|bought|made|modified|rejected|returned|sold|scrapped|tried|binned|welded|shortened|it|down|over|under|behind|near'
const properties =
  'length|width|height|depth|weight|mass|bore|diameter|clearance|travel|pressure|voltage|current|resistance|flow|torque|temperature|capacity|gap|track'
const leadsTo = new RegExp(
  String.raw`(?:^|[^\p{L}\p{N}])(?:the|a|an|my|our|this|that|new|old|both|its|${small}|${deeds})\s+$`,
  'iu',
)
const endsName = new RegExp(
  String.raw`^(?:['’]s)?(?:\s*$|\s*[^\p{L}\p{N}\s]|\s+(?:${small}|${properties}|now|just|about|\d)|\s*\n)`,
  'iu',
)

const leads = 'the|a|an|my|our|this|that|new|old|both|its|some'
const ends = new RegExp(String.raw`\b(?:${small})\b|[^\p{L}\p{N}\s-]`, 'iu')

/** The thing that words begin to name, `the sump guard came back` → `sump guard`; null where they name none. */
export function nounAt(words: string): string | null {
  const rest = words.replace(new RegExp(String.raw`^\s*(?:(?:${leads})\s+)*`, 'i'), '')
  const noun = rest
    .slice(0, ends.exec(rest)?.index ?? rest.length)
    .trim()
    .split(/\s+/)
    .slice(0, 3)
    .join(' ')
  return identifierOf(noun) === '' || /^\d/.test(noun) ? null : noun
}
