import type { Figure } from '../facts/stated-note.ts'
import { resolvePath } from '../record/lookups.ts'
import type { Measurement } from '../record/record.ts'
import { type Desk, type Entry, inWords, type LinkedThing, type NoteSentences, type Said } from './entry.ts'
import { linkedThing } from './linked-thing.ts'

interface Named {
  readonly thing: LinkedThing
  readonly property: string
}

interface Standing {
  readonly said: Said
  readonly mark: { readonly start: number; readonly end: number } | null
}

/** Every figure of every note, front matter included: named ones are measurements, the rest quantities. */
export function figureEntries(desk: Desk): Entry[] {
  const named = new Map<string, Named>()
  const measured = new Map(desk.record.measurements.map(one => [`${one.session ?? ''}#${one.figure}`, one]))
  const nameOf = (path: string): Named => {
    const found = named.get(path) ?? namedBy(desk, path)
    named.set(path, found)
    return found
  }
  const figures = new Map([desk.record.build, ...desk.record.sessions].map(note => [note.file, note.figures]))
  return desk.notes.flatMap(note => {
    const standing = standingsOf(note)
    const heads = new Map<string, Said>()
    return (figures.get(note.file) ?? []).map(figure =>
      entryOf(desk, figure, {
        note,
        heads,
        standing: standing.get(figure.id) ?? null,
        named: figure.path === null ? null : nameOf(figure.path),
        measurement: measured.get(`${note.session ?? ''}#${figure.id}`) ?? null,
      }),
    )
  })
}

function standingsOf({ sentences }: NoteSentences): Map<string, Standing> {
  return new Map(
    sentences.flatMap(({ said, figures }) => figures.map(({ id, start, end }) => [id, { said, mark: { start, end } }])),
  )
}

/** A volume's own sizes are those of its part. A name that leads nowhere is taken for a part's. */
function namedBy(desk: Desk, path: string): Named {
  const bare = path.replace(/^volume:/, '')
  const [id = '', ...rest] = bare.split('/')
  const meant = resolvePath(desk.record, bare) ?? { subject: { kind: 'part' as const, id }, property: rest.join('/') }
  return { thing: linkedThing(desk, meant.subject), property: inWords(meant.property) }
}

interface Around {
  readonly note: NoteSentences
  /** By line and text: figures written together share what they say. */
  readonly heads: Map<string, Said>
  readonly standing: Standing | null
  readonly named: Named | null
  readonly measurement: Measurement | null
}

function entryOf(desk: Desk, { id, place, quantity, path, role }: Figure, around: Around): Entry {
  const { note, named, measurement } = around
  const { said, mark } = around.standing ?? composed({ quantity, place }, around)
  return {
    kind: path === null ? 'quantity' : 'measurement',
    path: measurement?.path ?? path,
    label: named === null ? null : labelOf(named, measurement),
    name: named === null ? null : `${inWords(named.thing.id)} ${named.property}`.trim(),
    said,
    mark,
    place,
    session: note.session,
    address: desk.addresses.note(note.session),
    anchor: id,
    thing: named?.thing ?? null,
    figure: quantity,
    isAside: role === 'price' || measurement?.superseded === true,
  }
}

function labelOf({ thing, property }: Named, measurement: Measurement | null): Said {
  const means = [measurement?.with, measurement?.note].filter(words => typeof words === 'string')
  const text = property === '' ? thing.name : `${thing.name}: ${property}`
  return { text, also: means.join(' ') }
}

/** A figure of the front matter stands in no sentence: its key and what was written with it are one. */
function composed({ quantity, place }: Pick<Figure, 'quantity' | 'place'>, around: Around): Standing {
  const { text, whole } = quantity
  const { named, measurement, heads } = around
  const lead = named === null || named.property === '' ? '' : `${named.property}: `
  const shown = whole?.includes(text) === true ? whole : text
  const start = lead.length + shown.indexOf(text)
  const means = typeof measurement?.with === 'string' ? `, with ${measurement.with}` : ''
  const note = typeof measurement?.note === 'string' ? `; ${measurement.note}` : ''
  const words = `${lead}${shown}${means}${note}`
  const said = heads.get(`${place.line} ${words}`) ?? { text: words, also: '' }
  heads.set(`${place.line} ${words}`, said)
  return { said, mark: { start, end: start + text.length } }
}
