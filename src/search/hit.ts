import { type HitKind, hitKinds, type SearchIndex } from './search-index.ts'
import { wordsIn } from './words-in.ts'

/** Words and the places in them that answer, UTF-16 units, in order and apart. */
export interface MarkedWords {
  readonly text: string
  readonly marks: readonly { readonly start: number; readonly end: number }[]
}

/** One answer: what it is, the words that hold it, where they are written and where they are published. */
export interface Hit {
  readonly kind: HitKind
  readonly path: string | null
  readonly text: string
  readonly value: number | null
  readonly unit: string | null
  readonly file: string
  readonly line: number
  readonly column: number
  readonly url: string
  readonly session: string | null
  /** Null where no session wrote it. */
  readonly number: number | null
  readonly date: string
  /** Of the note. */
  readonly title: string
  /** What it is called, null for words without a name. */
  readonly label: MarkedWords | null
  readonly said: MarkedWords
  readonly thing: { readonly name: string; readonly address: string } | null
}

interface Meant {
  readonly words: ReadonlySet<string>
  readonly hasQuantity: boolean
}

/** An entry of the index as a hit. */
export function hitOf(index: SearchIndex, entry: number, meant: Meant): Hit {
  const { entries } = index
  const at = (column: readonly number[]): number => column[entry] ?? -1
  const note = index.notes[at(entries.note)]
  const label = index.labels[at(entries.label)] ?? null
  const said = index.saids[at(entries.said)] ?? ''
  const figure = entries.text[entry] ?? ''
  const kind = hitKinds[at(entries.kind)] ?? 'text'
  const anchor = entries.anchor[entry] ?? ''
  return {
    kind,
    path: index.paths[at(entries.path)] ?? null,
    text: figure !== '' ? figure : (label ?? said),
    value: entries.value[entry] ?? null,
    unit: index.units[at(entries.unit)] ?? null,
    file: note?.file ?? '',
    line: at(entries.line),
    column: at(entries.column),
    url: `${index.addresses[at(entries.address)] ?? ''}${anchor === '' ? '' : `#${encodeURIComponent(anchor)}`}`,
    session: note?.session ?? null,
    number: note?.number ?? null,
    date: note?.date ?? '',
    title: note?.title ?? '',
    label: label === null ? null : { text: label, marks: marksIn(label, meant.words) },
    said: { text: said, marks: withFigure(marksIn(said, meant.words), figureMark(index, entry, meant)) },
    thing: index.things[at(entries.thing)] ?? null,
  }
}

function figureMark({ entries }: SearchIndex, entry: number, { hasQuantity }: Meant): MarkedWords['marks'] {
  const [start = 0, end = 0] = [entries.start[entry], entries.end[entry]]
  return hasQuantity && end > start ? [{ start, end }] : []
}

function marksIn(text: string, words: ReadonlySet<string>): MarkedWords['marks'] {
  if (words.size === 0) return []
  return wordsIn(text).flatMap(({ word, start, end }) => (words.has(word) ? [{ start, end }] : []))
}

function withFigure(marks: MarkedWords['marks'], figure: MarkedWords['marks']): MarkedWords['marks'] {
  const apart = marks.filter(({ start, end }) => figure.every(own => end <= own.start || start >= own.end))
  return [...apart, ...figure].sort((a, b) => a.start - b.start)
}
