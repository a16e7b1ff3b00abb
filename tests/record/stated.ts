import type {
  Action,
  DonorFact,
  Fact,
  FactValue,
  JobFact,
  MentionFact,
  PropertyFact,
  ReferenceFact,
  SpendFact,
  Subject,
  ThingKind,
  Words,
} from '../../src/facts/fact.ts'
import type { BuildHead, StatedNote } from '../../src/facts/stated-note.ts'
import type { Place } from '../../src/findings/place.ts'
import type { Quantity } from '../../src/quantities/quantity.ts'
import { unitOf } from '../../src/quantities/units.ts'
import { foldFacts } from '../../src/record/fold-facts.ts'

type Unplaced<F> = F extends Fact ? Omit<F, 'session' | 'place' | 'keyPlace'> : never
type Said = Unplaced<Fact>

/** Places of a made note: each fact has a line of its own, keys in column 3, values in column 11. */
const placeAt = (file: string, line: number, column: number): Place => ({
  file,
  line,
  column,
  endLine: line,
  endColumn: column + 4,
})

export const words = (text: string): Words => ({ text, marks: [] })

/** A figure such as `860 mm`, `860 mm ± 2`, `about 60 L`, `at least 200 mm`; only what these tests need is read. */
export function figure(text: string): Quantity {
  const match =
    /^(?<lead>about |at least |at most )?(?<digits>-?\d+(?:\.(?<decimals>\d+))?)(?: (?<unit>[A-Za-z_0-9]+))?(?: ± (?<tolerance>[\d.]+))?$/.exec(
      text,
    )
  const { lead = '', digits = '', decimals = '', unit = '1', tolerance } = match?.groups ?? {}
  if (digits === '') throw new Error(`Unexpected figure \`${text}\`, expected one that these tests can make`)
  const number = Number(digits)
  const { dimension, factor, offset } = unitOf(unit)
  const bound = lead === 'at least ' ? 'min' : lead === 'at most ' ? 'max' : null
  const size = tolerance === undefined ? null : Number(tolerance)
  return {
    text,
    number,
    unit,
    dimension,
    bound,
    low: bound === 'min' ? number : null,
    high: bound === 'max' ? number : null,
    si: (number + offset.toNumber()) * factor.toNumber(),
    siLow: null,
    siHigh: null,
    plus: size,
    minus: size,
    approximate: lead === 'about ',
    rounding: 0.5 * 10 ** -decimals.length,
    exact: { number: digits, low: null, high: null },
    numberText: digits,
    thread: null,
    group: null,
    whole: null,
  }
}

export const subject = (kind: ThingKind, id: string): Subject => ({ kind, id })

function property(of: Subject, key: string, value: FactValue, more: Partial<PropertyFact> = {}): Said {
  return {
    type: 'property',
    subject: of,
    key,
    value,
    figure: null,
    observed: false,
    with: null,
    note: null,
    supersedes: false,
    bare: false,
    ...more,
  }
}

/** `fuel-tank/length` measured, its kind left open unless one is written: `circuit:fuel-pump/load`. */
export function measured(path: string, text: string, more: Partial<PropertyFact> = {}): Said {
  const [thing = '', key = ''] = path.split('/')
  const [id = '', kind] = thing.split(':').reverse()
  const of = subject((kind ?? (id === 'vehicle' ? 'vehicle' : 'part')) as ThingKind, id)
  return property(
    of,
    key,
    { type: 'quantity', quantity: figure(text) },
    { observed: true, bare: kind === undefined && id !== 'vehicle', ...more },
  )
}

/** A statement in words, or of a figure where the value holds one. */
export function said(
  of: Subject,
  key: string,
  value: string | Quantity | null,
  more: Partial<PropertyFact> = {},
): Said {
  if (value === null) return property(of, key, { type: 'nothing' }, more)
  return property(
    of,
    key,
    typeof value === 'string' ? { type: 'words', words: words(value) } : { type: 'quantity', quantity: value },
    more,
  )
}

interface Deeds {
  readonly action?: Action
  readonly cost?: string
  readonly qty?: string
  readonly from?: string
  readonly replaces?: string
  readonly fits?: MentionFact['fits']
  readonly why?: string
}

const here = placeAt('', 1, 1)

const price = (cost: string | undefined): SpendFact['cost'] => {
  if (cost === undefined) return null
  const [amount = '', currency = 'GBP'] = cost.split(' ')
  return { amount: { amount, currency }, place: here, figure: null }
}

/** A part named in a note; its places are filled in with the note's. */
export function part(id: string, deeds: Deeds = {}): Said {
  const { action, cost, qty, from, replaces, fits = null, why } = deeds
  return {
    type: 'mention',
    part: id,
    fits,
    action: action === undefined ? null : { word: action, place: here },
    cost: price(cost),
    qty: qty === undefined ? null : { amount: qty, place: here },
    from: from === undefined ? null : { words: words(from), place: here },
    replaces: replaces === undefined ? null : { id: replaces, place: here },
    why: why === undefined ? null : { words: words(why), place: here },
  }
}

export const spend = (what: string, cost: string, more: Partial<SpendFact> = {}): Said => ({
  type: 'spend',
  what: words(what),
  cost: price(cost),
  qty: null,
  system: null,
  from: null,
  ...more,
})

export const donor = (id: string, cost?: string): Said => ({ type: 'donor', id, name: null, cost: price(cost) })

export const job = (text: string, more: Partial<JobFact> = {}): Said => ({
  type: 'job',
  id: text.toLowerCase().replace(/[^a-z0-9]+/g, '-'),
  explicit: false,
  words: words(text),
  done: false,
  before: null,
  ...more,
})

export const reference = (
  to: ReferenceFact['to'],
  name: string,
  strictness: ReferenceFact['strictness'] = 'must-exist',
): Said => ({ type: 'reference', to, name, strictness })

/** Gives each fact of a note its own line, from 3 on, and the note's session. */
function placed(file: string, session: string | null, facts: readonly Said[]): Fact[] {
  return facts.map((fact, at) => {
    const [keyPlace, place] = [placeAt(file, at + 3, 3), placeAt(file, at + 3, 11)]
    const own = Object.entries(fact).map(([key, value]) => [key, isPlaced(value) ? { ...value, place } : value])
    return { ...Object.fromEntries(own), session, keyPlace, place } as Fact
  })
}

const isPlaced = (value: unknown): value is { place: Place } =>
  typeof value === 'object' && value !== null && 'place' in value

const noBody = { type: 'root' as const, children: [] }

/** A session note of that date; its name is the date and a word. */
export function session(name: string, facts: readonly Said[], folder = 'content/sessions/'): StatedNote {
  const file = `${folder}${name}.md`
  const date = /^\d{4}-\d{2}-\d{2}/.exec(name)?.[0] ?? null
  const head = {
    id: name,
    file,
    fence: placeAt(file, 1, 1),
    title: words(name),
    date,
    datePlace: placeAt(file, 2, 7),
    by: null,
    hours: null,
  }
  return { session: head, build: null, facts: placed(file, name, facts), figures: [], body: noBody, findings: [] }
}

export function build(facts: readonly Said[] = [], head: Partial<BuildHead> = {}): StatedNote {
  const file = 'content/build.md'
  const whole: BuildHead = {
    file,
    fence: placeAt(file, 1, 1),
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
  return { session: null, build: whole, facts: placed(file, null, facts), figures: [], body: noBody, findings: [] }
}

/** Folds made notes; `today` and the photos as given, one check known. */
export function fold(
  sessions: readonly StatedNote[],
  { of = build(), today = null, photos = [] }: { of?: StatedNote; today?: string | null; photos?: string[] } = {},
) {
  return foldFacts({ build: of, sessions, inspection: null }, { photos, today, checks: ['voltage-drop'] })
}

/** `rule file:line:column message | mend`, with the file's folder left out. */
export const told = (findings: ReturnType<typeof fold>['findings']): string[] =>
  findings.map(
    ({ rule, file, line, column, message, mend }) =>
      `${rule} ${file.split('/').at(-1)}:${line}:${column} ${message}${mend === null ? '' : ` | ${mend}`}`,
  )

export type { DonorFact, Said }
