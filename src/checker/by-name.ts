import type { AsBuiltRecord, Part, Thing } from '../record/record.ts'

interface Names {
  readonly parts: ReadonlyMap<string, Part>
  readonly circuits: ReadonlyMap<string, Thing>
  readonly partsByKind: ReadonlyMap<string, readonly Part[]>
}

const known = new WeakMap<AsBuiltRecord, Names>()

/** The parts and circuits of a record by name and by kind, laid out once: a check is asked of each of a thousand circuits. */
export function byName(record: AsBuiltRecord): Names {
  const found = known.get(record) ?? layOut(record)
  known.set(record, found)
  return found
}

function layOut({ parts, circuits }: AsBuiltRecord): Names {
  const partsByKind = new Map<string, Part[]>()
  for (const part of parts) {
    if (part.partKind === null) continue
    const alike = partsByKind.get(part.partKind)
    if (alike === undefined) partsByKind.set(part.partKind, [part])
    else alike.push(part)
  }
  return {
    parts: new Map(parts.map(part => [part.id, part])),
    circuits: new Map(circuits.map(one => [one.id, one])),
    partsByKind,
  }
}
