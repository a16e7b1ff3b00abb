import type { Subject } from '../facts/fact.ts'

/** Everything that a property can be of. */
export const subjectKinds: readonly Subject['kind'][] = [
  'part',
  'circuit',
  'connector',
  'loom',
  'donor',
  'system',
  'earth-point',
  'volume',
  'vehicle',
  'build',
]
