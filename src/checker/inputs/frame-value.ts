import type { Input } from '../input.ts'
import { firstGiven } from './choose.ts'
import { type ValueSpec, value } from './value.ts'

/** A figure of the whole vehicle, `wheelbase`: measured of it, else of its chassis, hull or body. */
export function frameValue(key: string, spec: Omit<ValueSpec, 'of'>): Input<number> {
  const of = (kind: string): Input<number> => value({ ...spec, of: `${kind}/${key}` })
  return firstGiven(spec, of('vehicle'), of('chassis'), of('hull'), of('body'), of('vehicle'))
}
