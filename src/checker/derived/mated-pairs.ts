import type { Connector } from '../../record/record.ts'
import { type SubjectSource, things } from '../subjects.ts'

/** Each connector that plugs into another; where both halves name each other, the first by name. */
export function matedPairs(): SubjectSource {
  const source = things(
    'connector',
    'each connector that names its other half; where both name each other, the first by name',
  )
  return {
    ...source,
    find: record => {
      const first = new Set(record.connectors.filter(one => isFirst(one, record.connectors)).map(({ id }) => id))
      return source.find(record).filter(({ subject }) => first.has(subject.id))
    },
  }
}

function isFirst({ id, mates }: Connector, all: readonly Connector[]): boolean {
  if (mates === null) return false
  const isMutual = all.some(other => other.id === mates && other.mates === id)
  return !isMutual || id < mates
}
