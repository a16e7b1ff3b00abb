import { posix } from 'node:path'
import type { ReferenceFact, ThingKind } from '../facts/fact.ts'
import type { DeclaredNames } from './declared-names.ts'
import { findThing, latest, resolvePath } from './lookups.ts'
import { sameWords } from './open-items.ts'
import type { AsBuiltRecord, Connector, Thing } from './record.ts'
import { pathText } from './resolve-name.ts'

export interface Target {
  /** `the name of a part`: what was expected. */
  readonly expected: string
  /** The kind as a reader says it. */
  readonly kind: string
  readonly known: readonly string[]
  readonly leads: (name: string, from: string) => boolean
}

interface TargetGround {
  readonly record: AsBuiltRecord
  readonly names: DeclaredNames
  readonly photos: readonly string[]
  readonly checks: readonly string[]
}

type Targets = Readonly<Record<ReferenceFact['to'], Target>>

/** For each kind of reference, the names that lead somewhere. */
export function findTargets(ground: TargetGround): Targets {
  const { record, names } = ground
  const thing = (kind: ThingKind): Target => among(kind.replace('-', ' '), [...names.of(kind).keys()])
  const paths = listPaths(record)
  const path = (kind: string): Target => ({
    ...among(kind, paths),
    expected: `the path of a ${kind}`,
    leads: name => leadsToProperty(record, name),
  })
  return {
    part: thing('part'),
    circuit: thing('circuit'),
    connector: thing('connector'),
    loom: thing('loom'),
    donor: thing('donor'),
    system: thing('system'),
    'earth-point': { ...thing('earth-point'), expected: 'the name of an earth point' },
    measurement: path('measurement'),
    path: path('property'),
    ...settingsAndBoxes(record),
    ...wholeNotes(ground),
  }
}

function settingsAndBoxes({ settings, parts }: AsBuiltRecord): Pick<Targets, 'zone' | 'fuse-box'> {
  const zones = Object.keys(settings.properties).filter(
    key => key.startsWith('zones.') && latest(settings, key) !== null,
  )
  const boxes = parts.filter(({ partKind }) => partKind === 'fuse-box').map(({ id }) => id)
  return {
    zone: {
      ...among(
        'zone',
        zones.map(key => key.slice('zones.'.length)),
      ),
      expected: 'the name of a zone in build.md',
    },
    'fuse-box': { ...among('fuse box', boxes), expected: 'the name of a part of kind `fuse-box`' },
  }
}

function among(kind: string, known: readonly string[]): Target {
  const names = new Set(known)
  return { expected: `the name of a ${kind}`, kind, known, leads: name => names.has(name) }
}

function wholeNotes({
  record,
  photos,
  checks,
}: TargetGround): Record<'session' | 'job' | 'check' | 'test' | 'photo' | 'note', Target> {
  const { sessions, jobs, tests } = record
  const files = [record.build.file, ...sessions.map(({ file }) => file)]
  return {
    session: {
      ...among(
        'session',
        sessions.map(({ id }) => id),
      ),
      expected: 'the name of a session, or a date that one session has',
      leads: name =>
        sessions.some(({ id }) => id === name) || sessions.filter(({ date }) => date === name).length === 1,
    },
    job: {
      ...among(
        'job',
        jobs.map(({ id }) => id),
      ),
      leads: name => jobs.some(({ id, text }) => id === name || sameWords(text, name)),
    },
    check: { ...among('check', checks), leads: name => checks.includes(name.split('/')[0] ?? '') },
    test: {
      ...among(
        'test',
        tests.map(({ what }) => what),
      ),
      expected: 'the words of a test',
      leads: name => tests.some(({ what }) => sameWords(what, name)),
    },
    photo: {
      ...among('picture', photos.map(inContent)),
      expected: 'a picture under `content/`',
      leads: name => photos.some(file => inContent(file) === inContent(name) || file.endsWith(`/photos/${name}`)),
    },
    note: {
      ...among('note', files),
      expected: 'the file of a note',
      leads: (name, from) =>
        [name, posix.join('content', name), posix.join(posix.dirname(from), name)].some(file => files.includes(file)),
    },
  }
}

const inContent = (file: string): string => (file.startsWith('content/') ? file.slice('content/'.length) : file)

/** A path leads somewhere where its thing has that property, or that pin; a thing alone will do. */
export function leadsToProperty(record: AsBuiltRecord, path: string): boolean {
  const found = resolvePath(record, path)
  const thing = found === null ? null : findThing(record, found.subject)
  if (found === null || thing === null) return false
  return found.property === '' || latest(thing, found.property) !== null || isPin(thing, found.property)
}

const isPin = (thing: Thing, name: string): boolean =>
  Object.keys(thing.properties).some(key => key === `pins.${name}` || key.startsWith(`pins.${name}.`))

function listPaths(record: AsBuiltRecord): string[] {
  const things = [
    record.vehicle,
    record.settings,
    ...record.parts,
    ...record.circuits,
    ...record.measured,
    ...record.looms,
    ...record.earthPoints,
  ]
  const own = things.flatMap(thing => Object.keys(thing.properties).map(key => pathText(thing, key)))
  const pins = record.connectors.flatMap((connector: Connector) =>
    connector.pins.map(({ pin }) => `${connector.id}/${pin}`),
  )
  return [...own, ...pins]
}
