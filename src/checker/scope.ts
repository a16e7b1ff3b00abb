import type { Place } from '../findings/place.ts'
import type { Quantity } from '../quantities/quantity.ts'
import type { AsBuiltRecord, Requirement, Thing } from '../record/record.ts'
import type { Notebook } from './notebook.ts'

/** What a check is asked of. */
export interface CheckSubject {
  /** `circuit`, a part's kind such as `tank`, `connector`, `loom`, `way`, `path`, `vehicle`. */
  readonly kind: string
  /** As OUTPUT prints it: `fuel-pump`, `aux-fuses/3`, `fuel-tank/length`, `vehicle`. */
  readonly id: string
  /** Words for a reader. */
  readonly name: string
  /** The thing whose properties its inputs are; null where it has none of its own. */
  readonly thing: Thing | null
  /** Where it was first named. */
  readonly place: Place | null
  /** Of kind `path`: what build.md asks of it. */
  readonly requirement: Requirement | null
  /** Before each of its keys: a pin is `pins.31b.` of its connector. */
  readonly prefix: string
}

/** Where an input is read: the record, the subject of the moment, and the notebook of the verdict. Checks never see it. */
export interface Scope {
  readonly record: AsBuiltRecord
  readonly subject: CheckSubject
  readonly notebook: Notebook
  /** Figures by path that stand in place of what the record holds, where it is asked what if. */
  readonly instead?: ReadonlyMap<string, Quantity>
  /** What is missing of a sum or a list is left out, where it is asked whether what is known fails already. */
  readonly leavesOut?: true
}

/** The same place to read with another subject: the circuit that feeds this one. */
export function withSubject(scope: Scope, subject: CheckSubject): Scope {
  return { ...scope, subject }
}

/** The same subject with another notebook, for an attempt that may come to nothing. */
export function withNotebook(scope: Scope, notebook: Notebook): Scope {
  return { ...scope, notebook }
}
