import { columnsOf } from './columns-of.ts'
import type { Addresses, Desk, EditedRecord, Entry, NoteSentences } from './entry.ts'
import { figureEntries } from './figure-entries.ts'
import { figureGroups } from './figure-groups.ts'
import { linkedName } from './linked-thing.ts'
import { noteSentences } from './note-sentences.ts'
import type { NameOf } from './pieces-of.ts'
import { hitKinds, type IndexedNote, type SearchIndex } from './search-index.ts'
import { textEntries } from './text-entries.ts'
import { thingEntries } from './thing-entries.ts'
import { wordTable } from './word-table.ts'

/** What can be found in a record, as plain JSON: each entry with the words that hold it and the address of those words. */
export function indexRecord(record: EditedRecord, addresses: Addresses): SearchIndex {
  const desk: Desk = { record, addresses: onceEach(addresses), notes: notesOf(record) }
  const notes = indexedNotes(record)
  const found = [...thingEntries(desk), ...figureEntries(desk), ...textEntries(desk)]
  const entries = inOrder(found.filter(isFindable), notes)
  const tables = columnsOf(entries, notes)
  return {
    format: 'oddleg-search/1',
    approximate: record.build.approximateShare,
    reading: record.build.reading,
    notes,
    ...tables.shown,
    figures: figureGroups(entries.map(({ figure }) => figure)),
    ...wordTable(tables.labels, tables.saids),
  }
}

/** A note's address is asked for by each sentence of it. */
function onceEach(addresses: Addresses): Addresses {
  const known = new Map<string | null, string>()
  const note = (session: string | null): string => {
    const address = known.get(session) ?? addresses.note(session)
    known.set(session, address)
    return address
  }
  return { ...addresses, note }
}

const isFindable = ({ said, label }: Entry): boolean => said.text !== '' || label !== null

function notesOf(record: EditedRecord): NoteSentences[] {
  const nameOf: NameOf = (scheme, path) => linkedName(record, scheme, path)
  const notes = [{ id: null, file: record.build.file, body: record.build.body }, ...record.sessions]
  return notes.map(({ id, file, body }) => ({
    session: id,
    file,
    sentences: noteSentences(body, nameOf).map(sentence => ({ ...sentence, said: { text: sentence.text, also: '' } })),
  }))
}

function indexedNotes(record: EditedRecord): IndexedNote[] {
  const { build } = record
  const none = { session: null, number: null, date: '' }
  const points = record.inspection.points.map(({ place }) => place.file)
  return [
    { ...none, title: build.title.text, file: build.file },
    ...record.sessions.map(({ id, number, date, title, file }) => ({
      session: id,
      number,
      date,
      title: title.text,
      file,
    })),
    ...[...new Set(points)].map(file => ({ ...none, title: record.inspection.ruleWords?.text ?? '', file })),
  ]
}

/** Among equals: by kind, prices and what was replaced last, the newest session first, then as written. */
function inOrder(entries: readonly Entry[], notes: readonly IndexedNote[]): Entry[] {
  const numbers = new Map(notes.map(({ file, number }) => [file, number ?? 0]))
  const rank = ({ kind, isAside }: Entry): number => hitKinds.indexOf(kind) + (isAside ? hitKinds.length : 0)
  const ranked = entries.map(entry => ({ entry, rank: rank(entry), number: numbers.get(entry.place.file) ?? 0 }))
  ranked.sort((a, b) => a.rank - b.rank || b.number - a.number || byPlace(a.entry, b.entry))
  return ranked.map(({ entry }) => entry)
}

function byPlace({ place: a }: Entry, { place: b }: Entry): number {
  if (a.file !== b.file) return a.file < b.file ? -1 : 1
  return a.line - b.line || a.column - b.column
}
