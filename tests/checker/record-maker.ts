import type { Fact, FactValue, Subject, ThingKind, Words } from '../../src/facts/fact.ts'
import type { BuildHead, StatedNote } from '../../src/facts/stated-note.ts'
import type { Place } from '../../src/findings/place.ts'
import { foldFacts } from '../../src/record/fold-facts.ts'
import type { AsBuiltRecord } from '../../src/record/record.ts'
import { readFigure, readShapes } from './read-shapes.ts'

/** What a record states: `circuit/load` of the thing that is asked about, `circuit:other/load` of another. */
export type Given = Readonly<Record<string, string>>

/** The thing that a bare kind is about. */
export const exampleId = 'example'

const things: readonly string[] = ['circuit', 'connector', 'loom', 'earth-point', 'volume', 'vehicle']
const file = 'content/sessions/2026-03-07-example.md'
const session = '2026-03-07-example'

/** Folds a record from paths and texts, one line of a made note for each. */
export function makeRecord(given: Given, head: Partial<BuildHead> = {}): AsBuiltRecord {
  const stated = Object.entries(given).flatMap(([path, text], at) => factsOf(path, text, at + 3))
  const kinds = partKinds(Object.keys(given))
  const facts = [...kinds, ...stated]
  const inBuild = facts.filter(fact => fact.session === null)
  const inSession = facts.filter(fact => fact.session !== null)
  return foldFacts(
    { build: buildNote(inBuild, head), sessions: [sessionNote(inSession)], inspection: null },
    { photos: [], today: null, checks: [] },
  ).record
}

const placeAt = (line: number, name = file): Place => ({ file: name, line, column: 11, endLine: line, endColumn: 15 })

/** Every part that a path names, fitted, and of its kind. */
function partKinds(paths: readonly string[]): Fact[] {
  const named = new Map<string, string>()
  for (const path of paths) {
    const { kind, id } = splitGiven(path)
    if (isPartKind(kind)) named.set(id, kind)
  }
  return [...named].flatMap(([id, kind]) => [
    mention(id),
    property({ kind: 'part', id }, 'kind', { type: 'words', words: words(kind) }, 2),
  ])
}

const special: readonly string[] = ['build', 'require', 'limit', 'ask', 'job', 'temporary', 'state']
const isPartKind = (kind: string): boolean => !things.includes(kind) && !special.includes(kind)

function splitGiven(path: string): { kind: string; id: string; key: string } {
  const [, kind = '', id, key = ''] = /^([a-z-]+)(?::([^/]+))?\/(.+)$/.exec(path) ?? []
  return { kind, id: id ?? exampleId, key }
}

function factsOf(path: string, text: string, line: number): Fact[] {
  const { kind, id, key } = splitGiven(path)
  if (kind === 'build') return [property({ kind: 'build', id: 'electrical' }, key, factValue(text), line, null)]
  if (kind === 'require') return [requirement(key, text, line)]
  if (kind === 'limit') return [limit(key, text, line)]
  if (kind === 'ask')
    return [
      {
        type: 'asking',
        check: key,
        subjects: text === 'all' ? null : text.split(', '),
        session: null,
        place: placeAt(line, 'content/build.md'),
      },
    ]
  if (kind === 'job') return [job(id === exampleId ? key : id, text, line)]
  if (kind === 'temporary')
    return [
      {
        type: 'temporary',
        id: key,
        what: words(text.replace(/ before \w+$/, '')),
        part: null,
        until: null,
        before: / before (\w+)$/.exec(text)?.[1] ?? null,
        session,
        place: placeAt(line),
      },
    ]
  if (kind === 'state') return [mention(key, text)]
  const subject: Subject = {
    kind: isPartKind(kind) ? 'part' : (kind as ThingKind),
    id: kind === 'vehicle' ? 'vehicle' : id,
  }
  const value: FactValue =
    kind === 'volume' && key !== 'wall' ? { type: 'shapes', shapes: readShapes(text, placeAt(line)) } : factValue(text)
  return [property(subject, key, value, line)]
}

function factValue(text: string): FactValue {
  if (text.startsWith('['))
    return {
      type: 'list',
      entries: text
        .slice(1, -1)
        .split(', ')
        .map(entry => ({ words: words(entry), place: placeAt(1) })),
    }
  const quantity = readFigure(text)
  return quantity === null ? { type: 'words', words: words(text) } : { type: 'quantity', quantity }
}

const words = (text: string): Words => ({ text, marks: [] })

function property(subject: Subject, key: string, value: FactValue, line: number, of: string | null = session): Fact {
  const place = placeAt(line, of === null ? 'content/build.md' : file)
  return {
    type: 'property',
    subject,
    key,
    keyPlace: place,
    value,
    figure: `q-${line}`,
    observed: false,
    with: null,
    note: null,
    supersedes: false,
    bare: false,
    place,
    session: of,
  }
}

function mention(part: string, action = 'fitted'): Fact {
  const place = placeAt(2)
  return {
    type: 'mention',
    part,
    keyPlace: place,
    action: { word: action as never, place },
    fits: null,
    cost: null,
    qty: null,
    from: null,
    replaces: null,
    why: null,
    place,
    session,
  }
}

function requirement(path: string, text: string, line: number): Fact {
  const place = placeAt(line, 'content/build.md')
  const value = readFigure(text)
  if (value === null) throw new Error(`Unexpected \`${text}\`, expected a figure to require`)
  return { type: 'requirement', path, keyPlace: place, value, place, session: null }
}

/** `voltage-drop/lighting` → `max 2 %, the builder's own target`. */
function limit(name: string, text: string, line: number): Fact {
  const [check = '', ...of] = name.split('/')
  const [, side = '', figure = '', why] = /^(min|max) ([^,]+)(?:, (.+))?$/.exec(text) ?? []
  const place = placeAt(line, 'content/build.md')
  const value = readFigure(figure)
  return {
    type: 'limit',
    check,
    of: of.length === 0 ? null : of.join('/'),
    keyPlace: place,
    min: side === 'min' ? value : null,
    max: side === 'max' ? value : null,
    why: why === undefined ? null : words(why),
    place,
    session: null,
  }
}

function job(id: string, text: string, line: number): Fact {
  const [, said = '', before = null, done] = /^(.*?)(?: before (\w+))?( done)?$/.exec(text) ?? []
  return {
    type: 'job',
    id,
    explicit: true,
    words: words(said),
    done: done !== undefined,
    before,
    place: placeAt(line),
    session,
  }
}

const empty = { figures: [], body: { type: 'root' as const, children: [] }, findings: [] }

function buildNote(facts: readonly Fact[], head: Partial<BuildHead>): StatedNote {
  const whole: BuildHead = {
    file: 'content/build.md',
    fence: placeAt(1, 'content/build.md'),
    title: words('Sandpiper'),
    summary: null,
    started: null,
    by: null,
    currency: 'GBP',
    rates: {},
    units: {},
    approximateShare: 0.05,
    reading: { gallon: null, mil: null, decimal: 'point' },
    identity: [],
    ...head,
  }
  return { session: null, build: whole, facts, ...empty }
}

function sessionNote(facts: readonly Fact[]): StatedNote {
  const head = {
    id: session,
    file,
    fence: placeAt(1),
    title: words('Example'),
    by: null,
    date: '2026-03-07',
    datePlace: placeAt(2),
    hours: null,
  }
  return { session: head, build: null, facts, ...empty }
}
