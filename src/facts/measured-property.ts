import type { Place } from '../findings/place.ts'
import type { Dimension } from '../quantities/quantity.ts'
import type { Subject } from './fact.ts'
import type { Fields } from './fields.ts'
import { printPath } from './identifier.ts'
import { dimensionsOf, propertiesOf } from './kinds.ts'
import { isNear } from './near-words.ts'
import { properties } from './properties.ts'
import { report, type Sheet } from './sheet.ts'
import { circuitKeys, connectorKeys } from './wiring-keys.ts'

/** A property of a thing that was measured; `kind` is the part's kind where the same note says it. */
export interface MeasuredProperty {
  readonly subject: Subject
  readonly bare: boolean
  readonly property: string
  readonly kind: string | null
  readonly keyPlace: Place
}

/** The figures that a circuit or a connector states, which may be measured too. */
function fieldsOf({ subject }: MeasuredProperty): Fields {
  return subject.kind === 'circuit' ? circuitKeys : subject.kind === 'connector' ? connectorKeys : {}
}

/** The dimensions that a measured property may have; none where any will do. */
export function dimensionsMeasured(measured: MeasuredProperty): readonly Dimension[] {
  const { property, kind } = measured
  const fields = fieldsOf(measured)
  const field = Object.hasOwn(fields, property) ? fields[property] : undefined
  return field?.holds === 'figure' ? field.dimensions : dimensionsOf(property, kind)
}

/** Warns of a property one letter away from one that the kind has. */
export function reportNearProperty(sheet: Sheet, measured: MeasuredProperty): void {
  const { property, subject } = measured
  if (Object.hasOwn(properties, property) || dimensionsMeasured(measured).length > 0) return
  const figures = Object.entries(fieldsOf(measured)).flatMap(([key, field]) => (field.holds === 'figure' ? [key] : []))
  const near = [...figures, ...propertiesOf(measured.kind)].find(known => isNear(property, known))
  if (near === undefined) return
  const message = `Unexpected property \`${property}\` of \`${printPath(subject, null)}\`, expected \`${near}\``
  report(sheet, 'near-name', { place: measured.keyPlace, message, mend: near, about: [printPath(subject, property)] })
}
