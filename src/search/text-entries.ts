import type { Words } from '../facts/fact.ts'
import type { Place } from '../findings/place.ts'
import type { Job, Session, Temporary } from '../record/record.ts'
import type { Desk, Entry, NoteSentences } from './entry.ts'

/** What a note says in words: its sentences, its title, its jobs and fixes, and the words of its front matter. */
export function textEntries(desk: Desk): Entry[] {
  const { record } = desk
  return [
    ...desk.notes.flatMap(note => sentenceEntries(desk, note)),
    ...record.sessions.map(session => sessionEntry(desk, session)),
    ...record.jobs.map(job => jobEntry(desk, job)),
    ...record.temporary.map(fix => fixEntry(desk, fix)),
    ...headEntries(desk),
  ]
}

interface Wording {
  readonly kind: 'text' | 'job' | 'session'
  readonly words: string
  readonly place: Pick<Place, 'file' | 'line' | 'column'>
  readonly session: string | null
  readonly path?: string
  readonly anchor?: string
  readonly also?: string
}

function entryOf({ addresses }: Desk, wording: Wording): Entry {
  const { kind, place, session } = wording
  const said = { text: wording.words.replace(/\s+/gu, ' ').trim(), also: wording.also ?? '' }
  const rest = {
    mark: null,
    thing: null,
    figure: null,
    isAside: false,
    label: null,
    name: null,
    address: addresses.note(session),
  }
  return { ...rest, kind, said, place, session, path: wording.path ?? null, anchor: wording.anchor ?? '' }
}

/** The words of a job are found as that job; what a later note says besides is text. */
function sentenceEntries(desk: Desk, { session, file, sentences }: NoteSentences): Entry[] {
  const jobs = new Map(desk.record.jobs.map(({ id, text }) => [id, text]))
  return sentences
    .filter(({ job, text }) => job === null || jobs.get(job)?.includes(text) !== true)
    .map(({ said, line, column, anchor: own, figures }) => {
      const anchor = figures[0]?.id ?? own
      return { ...entryOf(desk, { kind: 'text', words: '', place: { file, line, column }, session, anchor }), said }
    })
}

function sessionEntry(desk: Desk, { id, number, title, file }: Session): Entry {
  const also = `session ${number} ${id}`
  return entryOf(desk, {
    kind: 'session',
    words: title.text,
    place: { file, line: 1, column: 1 },
    session: id,
    path: id,
    also,
  })
}

function jobEntry(desk: Desk, { id, text, place, session }: Job): Entry {
  return entryOf(desk, { kind: 'job', words: text, place, session, path: id, anchor: `j-${id}`, also: id })
}

function fixEntry(desk: Desk, { id, what, until, place, session }: Temporary): Entry {
  const words = until === null ? what : `${what}, until ${until.text}`
  return entryOf(desk, { kind: 'job', words, place, session, path: id, anchor: `f-${id}`, also: `${id} temporary fix` })
}

/** Words of the front matter, of build.md and of inspection.yaml that stand in no body. */
function headEntries(desk: Desk): Entry[] {
  const { build, parts, tests, spend, limits, inspection } = desk.record
  const text = (words: Words | null, place: Wording['place'], session: string | null): Entry[] =>
    words === null ? [] : [entryOf(desk, { kind: 'text', words: words.text, place, session })]
  const points = inspection.points.flatMap(({ ask, place }) => text(ask, place, null))
  return [
    ...text(build.summary, build.fence, null),
    ...parts.flatMap(({ events }) =>
      events.flatMap(({ why }) => (why === null ? [] : text(why.value, why.place, why.session))),
    ),
    ...tests.flatMap(({ words, note, place, session }) => [
      ...text(words, place, session).map(entry => ({
        ...entry,
        said: { text: note === null ? entry.said.text : `${entry.said.text}: ${note.text}`, also: 'test' },
      })),
    ]),
    ...spend.flatMap(({ what, place, session }) => text(what, place, session)),
    ...limits.flatMap(({ whyWords, place }) => text(whyWords, place, null)),
    ...points.map(entry => ({ ...entry, address: desk.addresses.inspection })),
  ]
}
