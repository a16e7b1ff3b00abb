import type { Subject } from '../facts/fact.ts'
import type { AsBuiltRecord } from '../record/record.ts'
import { subjectKinds } from '../record/subject-kinds.ts'

interface ReadPath {
  readonly subject: Subject
  readonly property: string
}

/** `circuit:fuel-pump/fuse.rating` as its thing and its property; a bare name is a part, or the vehicle, or a setting. */
export function readPath(record: AsBuiltRecord, path: string): ReadPath {
  const [, scheme, rest = path] = /^([a-z-]+):(.+)$/s.exec(path) ?? []
  const slash = rest.indexOf('/')
  const id = slash < 0 ? rest : rest.slice(0, slash)
  const property = slash < 0 ? '' : rest.slice(slash + 1)
  const kind = subjectKinds.find(known => known === scheme) ?? bareKind(record, id)
  return { subject: { kind, id }, property }
}

function bareKind(record: AsBuiltRecord, id: string): Subject['kind'] {
  if (id === 'vehicle') return 'vehicle'
  if (record.parts.some(part => part.id === id)) return 'part'
  if (record.circuits.some(circuit => circuit.id === id)) return 'circuit'
  return record.connectors.some(connector => connector.id === id) ? 'connector' : 'part'
}
