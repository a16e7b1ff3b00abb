import type { TextDirective } from 'mdast-util-directive'
import { attributePositions } from '../tree/directive-source.ts'
import { type Source, spanOf } from '../tree/source.ts'
import type { MeasureNode } from './node.ts'

/** The same mark as a `measure` node; the label stays as it is. */
export function toMeasure(directive: TextDirective, source: Source): MeasureNode {
  const span = spanOf(directive)
  const attributes = directive.attributes ?? {}
  return {
    type: 'measure',
    of: attributes.of ?? null,
    with: attributes.with ?? null,
    note: attributes.note ?? null,
    supersedes: attributes.supersedes === '' || attributes.supersedes === 'true',
    children: directive.children,
    attributePositions: span === null ? {} : attributePositions(source, span),
    ...(directive.position && { position: directive.position }),
  }
}
