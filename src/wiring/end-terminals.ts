import type { AsBuiltRecord, Thing } from '../record/record.ts'
import { partOf, textAt } from './standing.ts'

/** What is crimped on the ends of a circuit's wires. */
export interface EndTerminals {
  readonly from: string | null
  readonly to: string | null
  /** Where its return ends. */
  readonly earth: string | null
}

/** As the circuit says; else what its fuse box, the part that it feeds and its earth point ask for. */
export function endTerminals(record: AsBuiltRecord, circuit: Thing): EndTerminals {
  const ofPart = (key: string): string | null => terminalOf(partOf(record, textAt(circuit, key)))
  const point = record.earthPoints.find(({ id }) => id === textAt(circuit, 'earth')) ?? null
  return {
    from: textAt(circuit, 'terminals.from') ?? ofPart('fuse.box'),
    to: textAt(circuit, 'terminals.to') ?? ofPart('feeds'),
    earth: textAt(circuit, 'terminals.earth') ?? terminalOf(point),
  }
}

/** The terminal that a thing asks for; null where no note tells. */
export const terminalOf = (thing: Pick<Thing, 'properties'> | null): string | null =>
  thing === null ? null : textAt(thing, 'terminal')
