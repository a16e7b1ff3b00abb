import type { Input } from '../input.ts'
import { endsOfRequirement } from '../limit-end.ts'
import { lookUp } from '../look-up.ts'
import type { Scope } from '../scope.ts'
import { quantityHeld, type ValueSpec } from './value.ts'

/** One end of what a figure of the record allows: `890 mm to 902 mm`, `at least 36 mm`; a bare figure allows half of its last digit. */
export function figureEnd(spec: ValueSpec, side: 'min' | 'max'): Input<number> {
  return {
    symbol: spec.symbol,
    meaning: spec.meaning,
    dimension: spec.dimension,
    reads: [spec.of],
    isOptional: true,
    read: scope => readEnd(spec, side, scope),
  }
}

function readEnd({ of, meaning, dimension, symbol }: ValueSpec, side: 'min' | 'max', scope: Scope) {
  const target = lookUp(scope, of)
  const held = quantityHeld(target)
  if (target.held === null) return { type: 'none' } as const
  if (held === null || held.value.dimension !== dimension) {
    scope.notebook.need(target.path, `${meaning} is no ${dimension}`)
    return null
  }
  const end = endsOfRequirement(held, scope.record.build.approximateShare)[side]
  if (end === null || end.term.type !== 'leaf') return { type: 'none' } as const
  const { session, figure } = held
  const { quantity, text } = end.term
  const unit = held.value.unit
  const leaf = {
    ...end.term,
    id: `${target.path} ${side}`,
    path: target.path,
    origin: 'record',
    symbol,
    meaning,
  } as const
  scope.notebook.see({ ...leaf, session, figure })
  return { type: 'figure', term: { ...leaf, session, figure, quantity, text, unit } } as const
}
