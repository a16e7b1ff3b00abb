import type { Subject } from '../facts/fact.ts'
import { findThing } from '../record/lookups.ts'
import type { AsBuiltRecord } from '../record/record.ts'
import { type Desk, inWords, type LinkedThing } from './entry.ts'

/** The thing of a subject with its page; a volume is its part. What was only measured has its name and no page. */
export function linkedThing({ record, addresses }: Desk, { kind, id }: Subject): LinkedThing {
  const subject: Subject = { kind: kind === 'volume' ? 'part' : kind, id }
  const found = findThing(record, subject)
  if (found === null) return { ...subject, name: inWords(id), address: '' }
  const isUndeclared = record.measured.includes(found)
  return { ...subject, name: found.name, address: isUndeclared ? '' : addresses.thing(subject) }
}

const kinds = ['part', 'circuit', 'connector', 'loom', 'donor', 'system', 'earth-point'] as const

/** What a link of a note calls the thing that it leads to; its path as words where there is no such thing. */
export function linkedName(record: AsBuiltRecord, scheme: string, path: string): string {
  if (scheme === 'session')
    return record.sessions.find(({ id, date }) => id === path || date === path)?.title.text ?? path
  if (scheme === 'job') return record.jobs.find(({ id }) => id === path)?.text ?? path
  const kind = kinds.find(known => known === scheme)
  const found = kind === undefined ? null : findThing(record, { kind, id: path })
  return found?.name ?? inWords(path)
}
