import type { Subject } from '../facts/fact.ts'
import { printPath, readPath } from '../facts/identifier.ts'
import { otherKinds } from './declared-names.ts'

interface WrittenPath {
  readonly subject: Subject
  /** No kind was written, so `subject` is what it would be as a part. */
  readonly bare: boolean
  /** Empty where the path ends at the thing. */
  readonly property: string
}

/** What a bare name may mean: nothing, one thing, or several between which only the kind decides. */
export function resolveName(id: string, bears: (subject: Subject) => boolean): readonly Subject[] {
  if (id === 'vehicle') return [{ kind: 'vehicle', id }]
  const part: Subject = { kind: 'part', id }
  if (bears(part)) return [part]
  return otherKinds.map((kind): Subject => ({ kind, id })).filter(bears)
}

/** Takes `circuit:fuel-pump/fuse.rating` or `build:electrical/nominal` apart; null for what is no path. */
export function splitPath(path: string): WrittenPath | null {
  const setting = /^build:([a-z-]+)\/(\S+)$/.exec(path)
  if (setting !== null)
    return { subject: { kind: 'build', id: setting[1] ?? '' }, bare: false, property: setting[2] ?? '' }
  const read = readPath(path)
  return read === null ? null : { subject: read.subject, bare: read.bare, property: read.property ?? '' }
}

/** As paths are written: bare for parts and the vehicle, else with the kind in front. */
export function pathText(subject: Subject, property: string): string {
  return printPath(subject, property)
}
