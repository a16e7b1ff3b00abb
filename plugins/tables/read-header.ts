import type { Table } from 'mdast'
import { lineOf } from '../tree/text-of.ts'
import type { TableReading } from './node.ts'

/** What a table holds by the words of its header, in any case and order; the first column of a name counts. */
export function readHeader(table: Table): TableReading | null {
  const at = new Map<string, number>()
  for (const [column, cell] of (table.children[0]?.children ?? []).entries()) {
    const word = lineOf(cell).toLowerCase()
    if (!at.has(word)) at.set(word, column)
  }
  return measurements(at) ?? pins(at) ?? parts(at)
}

type Columns = ReadonlyMap<string, number>

function measurements(at: Columns): TableReading | null {
  const measurement = at.get('measurement')
  const value = at.get('value')
  if (measurement === undefined || value === undefined) return null
  return { holds: 'measurements', columns: { measurement, value, ...those(at, ['with', 'note']) } }
}

function pins(at: Columns): TableReading | null {
  const pin = at.get('pin')
  const others = those(at, ['wire', 'to', 'carries', 'circuit', 'meets', 'terminal'])
  return pin === undefined || Object.keys(others).length === 0 ? null : { holds: 'pins', columns: { pin, ...others } }
}

function parts(at: Columns): TableReading | null {
  const part = at.get('part')
  const cost = at.get('cost')
  if (part === undefined || cost === undefined) return null
  return { holds: 'parts', columns: { part, cost, ...those(at, ['qty', 'from', 'action', 'system', 'kind']) } }
}

/** The columns that are there. */
function those<Name extends string>(at: Columns, names: readonly Name[]): Partial<Record<Name, number>> {
  const found: Partial<Record<Name, number>> = {}
  for (const name of names) {
    const column = at.get(name)
    if (column !== undefined) found[name] = column
  }
  return found
}
