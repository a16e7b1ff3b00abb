import type { ThingTarget } from '../../plugins/things/node.ts'
import type { Subject } from '../facts/fact.ts'
import { anchorName, pageAddress } from './addresses.ts'
import { figureKey } from './atlas.ts'
import { jobState } from './job-state.ts'
import type { Link, NoteContext, Picture } from './note-context.ts'
import type { PageScope } from './page-scope.ts'
import { findThing, spaced } from './page-scope.ts'
import { pictureSources } from './picture-sources.ts'
import { beside, findPhoto } from './shown-photos.ts'
import { noteAddress, subjectAddress } from './thing-addresses.ts'

interface Note {
  readonly session: string | null
  readonly file: string
}

/** What the body of one note may lead to, from the page on which it is printed. */
export function noteContext(scope: PageScope, { session, file }: Note): NoteContext {
  const { atlas } = scope
  return {
    thing: target => thingLink(scope, target),
    address: url => addressOf(scope, file, url),
    picture: url => pictureOf(scope, file, url),
    use: id => {
      const uses = atlas.uses.get(figureKey(session, id)) ?? []
      return uses[0] === undefined ? null : scope.to(uses[0].address)
    },
    job: id => {
      const job = atlas.record.jobs.find(known => known.id === id)
      return job === undefined || session === null ? null : jobState(atlas, job, session)
    },
  }
}

const kinds: readonly string[] = [
  'part',
  'circuit',
  'connector',
  'loom',
  'donor',
  'system',
  'earth-point',
] satisfies readonly Subject['kind'][]

function thingLink(scope: PageScope, { scheme, path }: ThingTarget): Link | null {
  const { record, extras } = scope.atlas
  if (kinds.includes(scheme)) return subjectLink(scope, { kind: scheme as Subject['kind'], id: path })
  switch (scheme) {
    case 'measurement':
      return linkIf(
        record.measurements.some(known => known.path === path || known.path === `part:${path}`),
        path,
        scope.to(measurementAddress(path)),
      )
    case 'session':
      return sessionLink(scope, path)
    case 'job':
      return linkIf(
        record.jobs.some(job => job.id === path),
        record.jobs.find(job => job.id === path)?.text ?? path,
        scope.to(`${pageAddress('jobs')}#${anchorName('j', path)}`),
      )
    case 'check':
      return linkIf(
        extras.checks.some(check => check.id === path),
        spaced(path),
        scope.to(pageAddress('checks', path)),
      )
    case 'test':
      return linkIf(
        record.tests.some(test => test.what === path),
        path,
        scope.to(pageAddress('inspection')),
      )
    default:
      return null
  }
}

function linkIf(exists: boolean, text: string, href: string): Link | null {
  return exists ? { text, href } : null
}

function measurementAddress(path: string): string {
  return `${pageAddress('measurements')}#${anchorName('m', path)}`
}

function subjectLink(scope: PageScope, subject: Subject): Link | null {
  const found = findThing(scope.record, subject)
  return found === null ? null : { text: found.name, href: scope.to(subjectAddress(subject)) }
}

/** A session by its identifier, or by a date that only one has. */
function sessionLink(scope: PageScope, name: string): Link | null {
  const dated = scope.record.sessions.filter(session => session.date === name)
  const session = scope.record.sessions.find(known => known.id === name) ?? (dated.length === 1 ? dated[0] : undefined)
  return session === undefined ? null : { text: session.title.text, href: scope.to(noteAddress(session.id)) }
}

/** The world's addresses stay; a note's file leads to its page, a photo to the published one, `#heading` to our anchor of it. */
function addressOf(scope: PageScope, file: string, url: string): string | null {
  if (/^(https?|mailto|tel):/i.test(url)) return url
  if (url.startsWith('#')) return url.length > 1 ? `#h-${url.slice(1)}` : null
  if (/^[a-z][a-z0-9+.-]*:|^\/\//i.test(url)) return null
  const goal = beside(file, url.split('#', 1)[0] ?? '')
  const session = scope.record.sessions.find(known => known.file === goal)
  if (session !== undefined) return scope.to(noteAddress(session.id))
  if (goal === scope.record.build.file) return scope.to(noteAddress(null))
  return photoAddress(scope, file, url)
}

function pictureOf(scope: PageScope, file: string, url: string): Picture | null {
  const photo = findPhoto(scope.atlas, file, url)
  if (photo === null) return null
  const { address, width, height } = photo
  return { href: scope.to(address), width, height, sources: pictureSources(photo, scope.to, 'text') }
}

function photoAddress(scope: PageScope, file: string, url: string): string | null {
  const photo = findPhoto(scope.atlas, file, url)
  return photo === null ? null : scope.to(photo.address)
}
