import type { Subject, ThingKind } from './fact.ts'

/** Lower-case words joined by hyphens. */
export const isIdentifier = (text: string): boolean => /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(text)

/** Words as an identifier: marks removed, lower case, every run of other letters one hyphen, ends trimmed. */
export function identifierOf(words: string): string {
  const plain = words.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase()
  return plain.replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '')
}

const thingKinds: readonly ThingKind[] = [
  'part',
  'circuit',
  'connector',
  'loom',
  'donor',
  'system',
  'earth-point',
  'volume',
  'vehicle',
]

export interface ThingPath {
  readonly subject: Subject
  /** No kind was written: a part of that name goes first, then the one other thing that bears it. */
  readonly bare: boolean
  /** What follows the first slash; null where there is none. */
  readonly property: string | null
}

/** `fuel-tank/length`, `circuit:fuel-pump/load`, `vehicle/wheelbase`; null for what is no path. */
export function readPath(text: string): ThingPath | null {
  const match = /^(?:([a-z-]+):)?([^/:\s]+)(?:\/(\S+))?$/.exec(text.trim())
  if (match === null) return null
  const [, scheme, id = '', property = null] = match
  if (!isIdentifier(id)) return null
  if (scheme === undefined)
    return { subject: { kind: id === 'vehicle' ? 'vehicle' : 'part', id }, bare: id !== 'vehicle', property }
  const kind = thingKinds.find(known => known === scheme)
  return kind === undefined ? null : { subject: { kind, id }, bare: false, property }
}

/** A path as the record prints it: the kind in front where it is no part. */
export function printPath(subject: Subject, property: string | null): string {
  const thing = subject.kind === 'part' || subject.kind === 'vehicle' ? subject.id : `${subject.kind}:${subject.id}`
  return property === null ? thing : `${thing}/${property}`
}
