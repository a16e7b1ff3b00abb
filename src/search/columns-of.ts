import type { Entry, LinkedThing, Said } from './entry.ts'
import { hitKinds, type IndexedNote, type SearchIndex } from './search-index.ts'

interface Tables {
  readonly shown: Pick<SearchIndex, 'entries' | 'things' | 'paths' | 'labels' | 'saids' | 'addresses' | 'units'>
  readonly labels: readonly Said[]
  readonly saids: readonly Said[]
}

/** Values by number, each once. */
class Table<T> {
  readonly values: T[] = []
  readonly #numbers = new Map<unknown, number>()

  numberOf(value: T | null, key: unknown = value): number {
    if (value === null) return -1
    const known = this.#numbers.get(key)
    if (known !== undefined) return known
    this.#numbers.set(key, this.values.length)
    return this.values.push(value) - 1
  }
}

/** Sets entries in columns; what many share stands once in a table. */
export function columnsOf(entries: readonly Entry[], notes: readonly IndexedNote[]): Tables {
  const [paths, addresses, units] = [new Table<string>(), new Table<string>(), new Table<string>()]
  const [labels, saids, things] = [new Table<Said>(), new Table<Said>(), new Table<LinkedThing>()]
  const files = new Map(notes.map(({ file }, index) => [file, index]))
  const column = <T>(value: (entry: Entry) => T): T[] => entries.map(value)
  const columns = {
    kind: column(({ kind }) => hitKinds.indexOf(kind)),
    note: column(({ place }) => files.get(place.file) ?? 0),
    line: column(({ place }) => place.line),
    column: column(({ place }) => place.column),
    path: column(({ path }) => paths.numberOf(path)),
    label: column(({ label }) => labels.numberOf(label, `${label?.text}\n${label?.also}`)),
    name: column(({ name }) => labels.numberOf(name === null ? null : { text: name, also: '' }, `${name}\n`)),
    thing: column(({ thing }) => things.numberOf(thing, `${thing?.kind}:${thing?.id}`)),
    said: column(({ said }) => saids.numberOf(said)),
    start: column(({ mark }) => mark?.start ?? 0),
    end: column(({ mark }) => mark?.end ?? 0),
    address: column(({ address }) => addresses.numberOf(address)),
    anchor: column(({ anchor }) => anchor),
    text: column(({ figure }) => figure?.text ?? ''),
    value: column(({ figure }) => figure?.number ?? null),
    unit: column(({ figure }) => units.numberOf(figure?.unit ?? null)),
  }
  return {
    shown: {
      entries: columns,
      things: things.values.map(({ name, address }) => ({ name, address })),
      paths: paths.values,
      labels: labels.values.map(({ text }) => text),
      saids: saids.values.map(({ text }) => text),
      addresses: addresses.values,
      units: units.values,
    },
    labels: labels.values,
    saids: saids.values,
  }
}
