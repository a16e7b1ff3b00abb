import type { Verdict } from '../checker/verdict.ts'
import type { AsBuiltRecord, Held } from '../record/record.ts'
import { anchorName, pageAddress } from './addresses.ts'
import { subjectAddress, verdictAddress } from './thing-addresses.ts'

/** What used a figure: a table or a check. */
export interface FigureUse {
  /** What it is there: `fuel-tank/length`, `voltage drop, fuel pump`. */
  readonly words: string
  readonly address: string
  readonly verdict: Verdict['verdict'] | null
  /** With what it was measured, as written. */
  readonly with: string | null
  /** Of a check: its subject, and its words without the subject. */
  readonly of: { readonly subject: string; readonly words: string } | null
}

type Add = (at: { session: string | null; figure: string | null }, use: FigureUse) => void

/** For each figure, by its key: what used it, tables first, then checks in their order. */
export function figureUses(record: AsBuiltRecord, verdicts: readonly Verdict[]): Map<string, FigureUse[]> {
  const uses = new Map<string, FigureUse[]>()
  const add: Add = ({ session, figure }, use) => {
    if (figure === null) return
    const key = `${session ?? ''}#${figure}`
    const list = uses.get(key) ?? []
    if (!list.some(known => known.address === use.address && known.words === use.words)) list.push(use)
    uses.set(key, list)
  }
  addTables(record, add)
  for (const verdict of verdicts) addVerdict(verdict, add)
  return uses
}

function addTables(record: AsBuiltRecord, add: Add): void {
  for (const measurement of record.measurements) {
    const address = `${pageAddress('measurements')}#${anchorName('m', measurement.path)}`
    add(measurement, { words: measurement.path, address, verdict: null, with: measurement.with, of: null })
  }
  for (const circuit of record.circuits)
    addThing(circuit.properties, subjectUse('circuit', circuit.id, circuit.name), add)
  for (const connector of record.connectors) {
    const use = subjectUse('connector', connector.id, connector.name)
    addThing(connector.properties, use, add)
    for (const pin of connector.pins) addThing(pin.properties, use, add)
  }
  for (const part of record.parts) {
    for (const event of part.events) if (event.cost !== null) add(event.cost, subjectUse('part', part.id, part.name))
  }
  for (const line of record.ledger.lines) {
    if (line.of !== 'part')
      add(line, { words: 'cost and hours', address: pageAddress('cost'), verdict: null, with: null, of: null })
  }
}

function subjectUse(kind: 'circuit' | 'connector' | 'part', id: string, name: string): FigureUse {
  return { words: name, address: subjectAddress({ kind, id }), verdict: null, with: null, of: null }
}

function addThing(properties: Readonly<Record<string, readonly Held<unknown>[]>>, use: FigureUse, add: Add): void {
  for (const history of Object.values(properties)) for (const held of history) add(held, use)
}

function addVerdict(verdict: Verdict, add: Add): void {
  const { title, subject, values } = verdict.working
  const aspect = verdict.aspect === null ? '' : `, ${verdict.aspect}`
  const name = title.toLowerCase()
  const of = { subject: verdict.subject, words: `${name}${aspect}` }
  const use = {
    words: `${name}, ${subject.name}${aspect}`,
    address: verdictAddress(verdict),
    verdict: verdict.verdict,
    with: null,
    of,
  }
  for (const value of values) add(value, use)
}
