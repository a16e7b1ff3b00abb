import type { Thing } from '../../record/record.ts'
import type { Found, Input } from '../input.ts'
import { statedLeaf } from '../leaf.ts'
import { isLive, usedWords, wordsOf } from '../look-up.ts'
import type { Scope } from '../scope.ts'
import { groupingFactors, groupingSource } from '../tables/cable-rating.ts'
import { hasCableReturn } from './circuit-graph.ts'

/** The share of its rating that a cable carries beside the other loaded cables of its loom: one a live circuit, two where its return is a cable in it. */
export function groupingFactor(of: 'circuit/cable' | 'circuit/return', symbol: string): Input<number> {
  return {
    symbol,
    meaning: 'factor for the loaded cables in the loom',
    dimension: 'ratio',
    reads: ['circuit/loom', 'circuit/return.loom'],
    tables: [groupingSource],
    read: scope => readFactor(of, symbol, scope),
  }
}

function readFactor(of: 'circuit/cable' | 'circuit/return', symbol: string, scope: Scope): Found {
  const loom = scope.subject.thing === null ? null : loomOf(scope.subject.thing, of)
  if (loom === null) {
    scope.notebook.assume('alone, in no loom')
    return {
      type: 'figure',
      term: statedLeaf('assumed', { symbol, meaning: 'factor for a cable alone, in no loom', value: 1, unit: '1' }),
    }
  }
  const circuits = scope.record.circuits.filter(circuit => isLive(circuit) && cablesIn(circuit, loom) > 0)
  for (const circuit of circuits) useLoom(circuit, scope)
  const count = circuits.reduce((total, circuit) => total + cablesIn(circuit, loom), 0)
  const factor = groupingFactors.find(([from]) => count >= from)?.[1] ?? 1
  scope.notebook.look({
    table: 'Grouping',
    row: `${count} loaded cable${count === 1 ? '' : 's'} in ${loom}: × ${factor}`,
    source: groupingSource,
  })
  return {
    type: 'figure',
    term: statedLeaf('table', { symbol, meaning: `factor for ${count} loaded in ${loom}`, value: factor, unit: '1' }),
  }
}

function loomOf(circuit: Thing, of: 'circuit/cable' | 'circuit/return'): string | null {
  const own = wordsOf(circuit, 'loom')
  return of === 'circuit/return' ? (wordsOf(circuit, 'return.loom') ?? own) : own
}

/** How many of a circuit's cables run in a loom. */
function cablesIn(circuit: Thing, loom: string): number {
  const out = loomOf(circuit, 'circuit/cable') === loom ? 1 : 0
  const back = hasCableReturn(circuit) && loomOf(circuit, 'circuit/return') === loom ? 1 : 0
  return out + back
}

function useLoom(circuit: Thing, scope: Scope): void {
  for (const key of ['loom', 'return.loom']) usedWords(scope, circuit, key)
}
