import { identifierOf } from '../facts/identifier.ts'
import type { Reading } from '../quantities/quantity.ts'
import { type NamedThing, namedThings, nounAt, type sayableNames } from './named-things.ts'
import { type Proposal, yamlValue } from './proposal.ts'
import type { Sentence } from './sentences.ts'
import type { SpokenFigure } from './spoken-figures.ts'
import { saidProperties } from './spoken-properties.ts'

/** A figure whose name is sure: it stands in the body as `:measure[…]`. */
export interface SureFigure {
  readonly reading: Reading
  readonly path: string
}

interface ProposedFigures {
  readonly sure: readonly SureFigure[]
  readonly proposals: readonly Proposal[]
}

type Names = ReturnType<typeof sayableNames>

/** Names the figures of one sentence: what the record can name for sure, and what the builder must look at. */
export function proposeFigures(sentence: Sentence, figures: readonly SpokenFigure[], names: Names): ProposedFigures {
  const things = namedThings(sentence.text, names)
  const sure: SureFigure[] = []
  const proposals: Proposal[] = []
  for (const { reading, firstAt } of figures) {
    const at = firstAt - sentence.start
    const said = saidProperties(sentence.text, at, reading.quantity.dimension)
    const [property] = said
    if (property === undefined || reading.quantity.dimension === 'money') continue
    const thing = thingNear(things, at)
    const isSure = said.length === 1 && figures.length === 1 && isAlone(sentence, reading, things)
    if (thing !== null && isSure) sure.push({ reading, path: `${thing.path}/${property.property}` })
    else
      proposals.push(
        ...proposed({ sentence, reading, property: property.property }, thing?.path ?? nounBefore(sentence.text, at)),
      )
  }
  return { sure, proposals: proposals.filter(isFirst) }
}

/** Whether a sentence is about one thing only, in plain words, with the figure in it. */
function isAlone({ text, start, end }: Sentence, reading: Reading, things: readonly NamedThing[]): boolean {
  const before = text.slice(0, reading.start - start)
  const leads = before.match(/\b(?:the|a|an|my|our)\s/gi)?.length ?? 0
  return new Set(things.map(({ path }) => path)).size === 1 && leads < 2 && reading.end <= end && isPlain(text)
}

/** A figure said twice in one sentence, in another unit perhaps, is proposed as it was said first. */
function isFirst({ thing, keys }: Proposal, at: number, all: readonly Proposal[]): boolean {
  return all.findIndex(other => other.thing === thing && other.keys[0]?.[0] === keys[0]?.[0]) === at
}

interface Unsure {
  readonly sentence: Sentence
  readonly reading: Reading
  readonly property: string
}

function proposed({ sentence, reading, property }: Unsure, thing: string | null): Proposal[] {
  if (thing === null || thing.includes(':')) return []
  const said = reading.start < sentence.end ? sentence.text : `${sentence.text} … ${reading.quantity.text}`
  return [{ section: 'measurements', thing, keys: [[property, yamlValue(reading.quantity.text)]], said }]
}

/** The last thing named before a figure, else the first after it. */
function thingNear(things: readonly NamedThing[], at: number): NamedThing | null {
  return things.findLast(thing => thing.at < at) ?? things[0] ?? null
}

/** `the sump guard is 3 mm thick` → `sump-guard`. */
function nounBefore(sentence: string, at: number): string | null {
  const found = [...sentence.slice(0, at).matchAll(/\b(?:the|a|an|my|our)\s+/gi)].at(-1)
  if (found === undefined) return null
  const noun = nounAt(sentence.slice(found.index))
  return noun === null ? null : identifierOf(noun)
}

/** Words without a mark of Markdown, in which a directive can be put without changing how they read. */
const isPlain = (text: string): boolean => !/[`[\]<>{}|:*_~\\]/.test(text)
