import type { Verdict } from '../checker/verdict.ts'
import type { FactValue, Subject, Words } from '../facts/fact.ts'
import type { AsBuiltRecord, Held, Thing } from '../record/record.ts'
import { relativeHref } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { Balloon, Inline, Leader, Mark } from './cells.ts'
import { look, plain } from './inline.ts'
import { subjectAddress, verdictAddress, wordsAddress } from './thing-addresses.ts'
import { figureColumns } from './typeset.ts'

export interface Origin {
  readonly session: string | null
  readonly figure: string | null
}

/** What one page needs to lead elsewhere: every address that it gives is relative to that page. */
export interface PageScope {
  readonly atlas: Atlas
  readonly record: AsBuiltRecord
  readonly address: string
  readonly to: (address: string) => string
  readonly link: (text: string, address: string) => Inline
  /** The name of a thing, leading to its page; its bare name where it has none. */
  readonly thing: (subject: Subject) => Inline
  readonly balloon: (session: string | null) => Balloon
  /** A figure as written, its line leading to its words. */
  readonly leader: (text: string, origin: Origin) => Leader
  readonly mark: (verdict: Verdict, text?: string) => Mark
}

/** Opens a page at its address. */
export function pageScope(atlas: Atlas, address: string): PageScope {
  const to = (goal: string): string => relativeHref(address, goal)
  const balloon = (session: string | null): Balloon => balloonOf(atlas, session)
  return {
    atlas,
    record: atlas.record,
    address,
    to,
    link: (text, goal) => plain(text, to(goal)),
    thing: subject => {
      const found = findThing(atlas.record, subject)
      return found === null ? plain(spaced(subject.id)) : plain(found.name, to(subjectAddress(subject)))
    },
    balloon,
    leader: (text, origin) => ({
      ...figureColumns(text),
      line: 'written',
      href: to(wordsAddress(origin)),
      balloon: balloon(origin.session),
    }),
    mark: (verdict, text) => ({
      verdict: verdict.verdict,
      text: text ?? checkWords(verdict),
      href: to(verdictAddress(verdict)),
    }),
  }
}

function balloonOf(atlas: Atlas, session: string | null): Balloon {
  if (session === null) return { text: 'build', says: 'build note', square: true }
  const number = String(atlas.sessions.get(session)?.number ?? '?')
  return { text: number, says: `session ${number}`, square: false }
}

/** `voltage drop`, with its aspect where it has one. */
export function checkWords({ check, aspect }: Pick<Verdict, 'check' | 'aspect'>): string {
  return aspect === null ? spaced(check) : `${spaced(check)}, ${spaced(aspect)}`
}

/** An identifier as words. */
export function spaced(id: string): string {
  return id.replaceAll('-', ' ')
}

/** The thing itself, null where the record has none of that name. */
export function findThing(record: AsBuiltRecord, { kind, id }: Subject): Thing | null {
  const lists: Readonly<Record<Subject['kind'], readonly Thing[]>> = {
    part: record.parts,
    volume: record.parts,
    circuit: record.circuits,
    connector: record.connectors,
    loom: record.looms,
    donor: record.donors,
    system: record.systems,
    'earth-point': record.earthPoints,
    vehicle: [record.vehicle],
    build: [record.settings],
  }
  return lists[kind].find(thing => thing.id === id) ?? null
}

/** What stands of a property now; null where nothing was said or it was taken back. */
export function standing(properties: Thing['properties'], key: string): Held<FactValue> | null {
  const held = properties[key]?.at(-1) ?? null
  return held === null || held.value.type === 'nothing' ? null : held
}

/** A value as one line of text, as written. */
export function valueText(value: FactValue): string {
  switch (value.type) {
    case 'quantity':
      return value.quantity.text
    case 'words':
      return value.words.text
    case 'list':
      return value.entries.map(entry => entry.words.text).join(', ')
    case 'shapes':
      return value.shapes.map(shape => shape.text).join(', ')
    case 'nothing':
      return ''
  }
}

/** The builder's words; what they marked as private is set apart, so that a reader of the full edition sees what others do not. */
export function saidWords({ text, marks }: Words): Inline[] {
  const runs: Inline[] = []
  let from = 0
  for (const { start, end } of marks) {
    if (start > from) runs.push(plain(text.slice(from, start)))
    runs.push(look('muted', text.slice(start, end)))
    from = end
  }
  if (from < text.length) runs.push(plain(text.slice(from)))
  return runs
}

/** Where a part came from: the donor of that name, else the words as written. */
export function sourceWords(scope: PageScope, words: Words): Inline[] {
  const donor = scope.record.donors.find(({ id }) => id === words.text.trim())
  return donor === undefined ? saidWords(words) : [scope.thing({ kind: 'donor', id: donor.id })]
}
