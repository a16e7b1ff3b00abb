import { latest, quantityAt } from '../../record/lookups.ts'
import type { AsBuiltRecord, Thing } from '../../record/record.ts'
import type { Found, Input } from '../input.ts'
import { value } from '../inputs/value.ts'
import { statedLeaf } from '../leaf.ts'
import { isLive, lookUp, usedWords, wordsOf } from '../look-up.ts'
import type { Scope } from '../scope.ts'
import { parts, type Selector, type SubjectSource, subjectOf } from '../subjects.ts'
import {
  type LoadKind,
  loadKindOfPart,
  loadKindOfUse,
  soundsLoud,
  switchFactors,
  switchFactorsSource,
} from '../tables/switch-factors.ts'
import { workOut } from '../term.ts'
import { nominalVoltage } from './circuit-current.ts'

/** Each relay or switch through which a live circuit goes. */
export function contactsInUse(): SubjectSource {
  const source = parts(['relay', 'switch'], 'each relay or switch that a live circuit goes through')
  return {
    ...source,
    find: record =>
      source.find(record).map(candidate => ({
        ...candidate,
        isCurrent: candidate.isCurrent && circuitsThrough(record, candidate.subject.id).length > 0,
      })),
  }
}

/** The live circuits that go through the relay or switch that is asked about. */
export const throughSubject: Selector = ({ record, subject }) =>
  circuitsThrough(record, subject.id).map(circuit => subjectOf('circuit', circuit))

function circuitsThrough(record: AsBuiltRecord, id: string): Thing[] {
  return record.circuits.filter(circuit => isLive(circuit) && namedIn(circuit).includes(id))
}

function namedIn(circuit: Thing): string[] {
  const value = latest(circuit, 'through')?.value
  if (value?.type === 'list') return value.entries.map(({ words }) => words.text.trim())
  return value?.type === 'words' ? [value.words.text.trim()] : []
}

/** How many times its running current each load asks of the contact; once where the maker rates the contact for that kind of load. */
export function inrushFactors(symbol: string): Input<readonly number[]> {
  return {
    symbol,
    meaning: 'factor of each load for its inrush',
    dimension: 'ratio',
    reads: ['circuit/use', 'circuit/feeds', 'part/lamp-rating', 'part/motor-rating', 'build/nominal'],
    tables: [switchFactorsSource],
    read: scope => {
      const kinds = loadKinds(scope)
      sayIfCoilOnly(scope)
      if (makersRating(scope, kinds) !== null)
        return { type: 'figures', terms: kinds.map(() => factorLeaf(symbol, 1, "by the maker's own rating")) }
      const row = rowOfTable(scope)
      if (row === null) return null
      for (const kind of new Set(kinds))
        scope.notebook.look({
          table: 'Switch derating',
          row: `${row.named}, ${kind}: × ${row.factors[kind]}`,
          source: switchFactorsSource,
        })
      return { type: 'figures', terms: kinds.map(kind => factorLeaf(symbol, row.factors[kind], kind)) }
    },
  }
}

/** A switch and a relay on one way: whether the switch carries the load or the relay's coil, no note tells. */
function sayIfCoilOnly(scope: Scope): void {
  const { record, subject, notebook } = scope
  if (subject.kind !== 'switch') return
  for (const circuit of circuitsThrough(record, subject.id)) {
    const relay = record.parts.find(part => part.partKind === 'relay' && namedIn(circuit).includes(part.id))
    if (relay === undefined) continue
    const coil = quantityAt(relay, 'coil-current')?.value.text ?? 'the current of its coil'
    notebook.note(
      `${circuit.id} goes through ${relay.id} as well, and its load is counted whole on both. If ${subject.id} only works the coil it carries ${coil}: take it out of \`through\`.`,
    )
  }
}

const factorLeaf = (symbol: string, factor: number, meaning: string) =>
  statedLeaf('table', { symbol, meaning: `factor, ${meaning}`, value: factor, unit: '1' })

function rowOfTable(scope: Scope): (typeof switchFactors)[number] | null {
  const nominal = nominalVoltage().read(scope)
  if (nominal?.type !== 'figure') return null
  const volts = workOut(nominal.term)
  const row = switchFactors.find(({ from, to }) => volts >= from && volts <= to)
  if (row === undefined)
    scope.notebook.need(lookUp(scope, 'build/nominal').path, `${switchFactorsSource}, has no row for ${volts} V`)
  return row ?? null
}

/** What each load is: by the circuit's use, else by the part that it feeds; one that neither tells is taken as inductive, and that is said. */
function loadKinds(scope: Scope): LoadKind[] {
  return throughSubject(scope).map(({ thing, id }) => {
    const use = thing === null ? null : usedWords(scope, thing, 'use')
    const fed = thing === null ? null : wordsOf(thing, 'feeds')
    if (use === 'signal' && soundsLoud.test(`${id} ${thing?.name ?? ''} ${fed ?? ''}`)) return 'inductive'
    const known = use === null ? undefined : loadKindOfUse[use]
    if (known !== undefined) return known
    const part = scope.record.parts.find(one => one.id === fed)
    const kind = part?.partKind == null ? undefined : loadKindOfPart[part.partKind]
    scope.notebook.assume(`load of ${id} ${kind ?? 'inductive'}`)
    return kind ?? 'inductive'
  })
}

/** The key of the maker's own rating, where all loads are of the kind that it is for. */
function makersRating(scope: Scope, kinds: readonly LoadKind[]): 'part/lamp-rating' | 'part/motor-rating' | null {
  const isGiven = (kind: LoadKind, of: string): boolean =>
    kinds.every(one => one === kind) && lookUp(scope, of).held !== null
  if (isGiven('lamp', 'part/lamp-rating')) return 'part/lamp-rating'
  return isGiven('motor', 'part/motor-rating') ? 'part/motor-rating' : null
}

/** What the contact may carry: the maker's rating for that kind of load, else the plain one. */
export function contactRating(symbol: string): Input<number> {
  const spec = { symbol, meaning: 'rating of the contact', dimension: 'current', unit: 'A', exact: true } as const
  const plain = value({ of: 'part/rating', ...spec })
  return {
    ...plain,
    reads: ['part/rating', 'part/lamp-rating', 'part/motor-rating'],
    read: (scope): Found | null => {
      const own = makersRating(scope, loadKinds(scope))
      return (own === null ? plain : value({ of: own, ...spec })).read(scope)
    },
  }
}
