import { findThing, resolvePath } from '../../record/lookups.ts'
import type { Input } from '../input.ts'
import { targetOf } from '../look-up.ts'
import { senseOf } from '../sense.ts'
import { figureAt } from './value.ts'

/** What the record holds of the path that build.md requires something of, in the dimension of what is required. */
export function requiredValue(symbol: string): Input<number> {
  return {
    symbol,
    meaning: 'what the record holds',
    dimension: null,
    reads: ['path'],
    read: scope => {
      const { requirement, id } = scope.subject
      const found = resolvePath(scope.record, id)
      const thing = found === null ? null : findThing(scope.record, found.subject)
      const target = found === null || thing === null ? null : targetOf(thing, found.property)
      if (target?.held == null || requirement === null) {
        scope.notebook.need(target?.path ?? id, 'it was not measured')
        return null
      }
      const { dimension, unit } = requirement.value
      const sense = senseOf(target.path, requirement.value) === 'more' ? 'more' : 'any' // a free property may be negative: an offset
      return figureAt(target, { symbol, meaning: target.path, dimension, unit, sense }, scope)
    },
  }
}
