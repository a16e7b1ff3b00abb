import type { Connector } from '../../record/record.ts'
import type { CheckSubject, Scope } from '../scope.ts'
import { subjectOf } from '../subjects.ts'

/** The ways of the connector that is asked about; their keys are `pin/wire.area`, `pin/to`, `pin/carries`, `pin/circuit`, `pin/meets`. */
export function pinsOfSubject(scope: Scope): readonly CheckSubject[] {
  const own = connectorNamed(scope, scope.subject.id)
  return own === undefined ? [] : pinsOf(own)
}

/** The ways of the half that it plugs into; none where it names no half, or the half is not in the record. */
export function pinsOfMate(scope: Scope): readonly CheckSubject[] {
  const own = connectorNamed(scope, scope.subject.id)
  const mate = own?.mates == null ? undefined : connectorNamed(scope, own.mates)
  return mate === undefined ? [] : pinsOf(mate)
}

const connectorNamed = ({ record }: Scope, id: string): Connector | undefined =>
  record.connectors.find(connector => connector.id === id)

function pinsOf(connector: Connector): CheckSubject[] {
  return connector.pins.map(({ pin, place }) => ({
    ...subjectOf('pin', connector),
    id: `${connector.id}/${pin}`,
    name: pin,
    place,
    prefix: `pins.${pin}.`,
  }))
}
