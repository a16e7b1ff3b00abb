import type { ReferenceFact } from './fact.ts'
import { addFact, type Sheet } from './sheet.ts'

/** Says that a name must lead somewhere, or that a near name is worth a warning. */
export function addReference(sheet: Sheet, reference: Omit<ReferenceFact, 'type' | 'session'>): void {
  addFact(sheet, { type: 'reference', ...reference })
}
