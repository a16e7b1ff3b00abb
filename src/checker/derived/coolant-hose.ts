import { latest } from '../../record/lookups.ts'
import type { Part } from '../../record/record.ts'
import { partsOfKind } from '../look-up.ts'
import type { CheckSubject, Scope } from '../scope.ts'
import { partSubject } from '../subjects.ts'

const otherTrade = /fuel|petrol|diesel|brake|clutch|vent|breather|oil|vacuum|air|wash/i

/** The hoses that carry coolant: of the cooling system, or of no named system and by no word another's. */
export function coolantHoses(scope: Scope): readonly CheckSubject[] {
  return partsOfKind(scope.record, ['hose', 'pipe'])
    .filter(part => isCoolant(part) && latest(part, 'bore') !== null)
    .map(partSubject)
}

function isCoolant({ system, id, name }: Part): boolean {
  if (system !== null) return /cool/i.test(system)
  return !otherTrade.test(`${id} ${name}`)
}
