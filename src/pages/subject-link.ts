import type { Verdict } from '../checker/verdict.ts'
import type { Subject } from '../facts/fact.ts'
import { anchorName, pageAddress } from './addresses.ts'
import type { Inline } from './cells.ts'
import { plain } from './inline.ts'
import type { PageScope } from './page-scope.ts'
import { findThing } from './page-scope.ts'

const kinds: readonly Subject['kind'][] = ['part', 'circuit', 'connector', 'loom', 'earth-point', 'donor', 'system']

/** A check's subject, leading to its own page. */
export function subjectLink(scope: PageScope, { subject, working }: Pick<Verdict, 'subject' | 'working'>): Inline {
  const name = working.subject.name
  if (subject === 'vehicle') return scope.link(name, 'index.html')
  const [id = '', rest] = subject.split('/', 2)
  if (working.subject.kind === 'way') return scope.link(name, `${pageAddress('wiring')}#${anchorName('f', id)}`)
  if (working.subject.kind === 'path' && scope.record.measurements.some(({ path }) => path === subject))
    return scope.link(name, `${pageAddress('measurements')}#${anchorName('m', subject)}`)
  const kind = kindOf(scope, working.subject.kind, id)
  return kind === undefined || (rest !== undefined && working.subject.kind !== 'path')
    ? plain(name)
    : { ...scope.thing({ kind, id }), text: name }
}

function kindOf(scope: PageScope, said: string, id: string): Subject['kind'] | undefined {
  const named = kinds.find(kind => kind === said)
  if (named !== undefined && findThing(scope.record, { kind: named, id }) !== null) return named
  return kinds.find(kind => findThing(scope.record, { kind, id }) !== null)
}
