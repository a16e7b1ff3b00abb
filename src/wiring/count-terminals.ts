import type { Cut } from './cut-list.ts'
import type { PinWire } from './pair-connectors.ts'

/** How many terminals of one sort go on wires of one size. */
export interface TerminalCount {
  /** In the builder's words; null: no note tells. */
  readonly terminal: string | null
  readonly size: string | null
  readonly count: number
}

/** The terminals that a cut list takes: two for each run, two more where it is cut, one for each way of a connector that its circuits meet. */
export function countTerminals(cuts: readonly Cut[], pins: readonly PinWire[]): TerminalCount[] {
  const ends = cuts.flatMap(endsOf)
  const circuits = new Set(cuts.map(({ circuit }) => circuit.id))
  const met = pins
    .filter(({ circuit }) => circuit !== null && circuits.has(circuit))
    .map(({ terminal, area }) => ({ terminal, size: area?.value.text ?? null }))
  const found = new Map<string, TerminalCount>()
  for (const end of [...ends, ...met]) {
    const key = JSON.stringify([end.terminal, end.size])
    found.set(key, { ...end, count: (found.get(key)?.count ?? 0) + 1 })
  }
  return [...found.values()].sort(byName)
}

function endsOf({ wire, circuit }: Cut): Pick<TerminalCount, 'terminal' | 'size'>[] {
  const size = wire.area?.value.text ?? null
  const cut = wire === circuit.feed ? circuit.through.flatMap(({ terminal }) => [terminal, terminal]) : []
  return [wire.terminals.from, wire.terminals.to, ...cut].map(terminal => ({ terminal, size }))
}

/** By name, those of which no note tells last. */
function byName(one: TerminalCount, other: TerminalCount): number {
  const key = ({ terminal, size }: TerminalCount): string => `${terminal === null ? 1 : 0} ${terminal} ${size}`
  return key(one) < key(other) ? -1 : 1
}
