import type { Input } from '../input.ts'
import { statedLeaf } from '../leaf.ts'
import { isLive, lookUp, targetOf, wordsOf } from '../look-up.ts'
import type { Scope } from '../scope.ts'
import { type SubjectSource, subjectOf } from '../subjects.ts'

/** Each circuit that starts the engine: of duty `starting`, or of that use where no duty is said. */
export function startingCircuits(): SubjectSource {
  return {
    kind: 'circuit',
    meaning: 'each circuit that is live and starts the engine',
    find: ({ circuits }) =>
      circuits
        .filter(circuit => (wordsOf(circuit, 'duty') ?? wordsOf(circuit, 'use')) === 'starting')
        .map(circuit => ({ subject: subjectOf('circuit', circuit), isCurrent: isLive(circuit) })),
  }
}

/** A drop that was published for 12 V; at another voltage it is borrowed, and that is said. */
export function publishedDrop(symbol: string, volts: number): Input<number> {
  const meaning = 'drop published for 12 V'
  return {
    symbol,
    meaning,
    dimension: 'voltage',
    reads: ['build/nominal'],
    read: scope => {
      sayIfBorrowed(scope)
      return { type: 'figure', term: statedLeaf('constant', { symbol, meaning, value: volts, unit: 'V' }) }
    },
  }
}

function sayIfBorrowed(scope: Scope): void {
  const { held } = lookUp(scope, 'build/nominal')
  if (held?.value.type !== 'quantity') {
    scope.notebook.note(
      `The limit was published for 12 V; ${targetOf(scope.record.settings, 'nominal').path} is not written.`,
    )
    return
  }
  const { si, text } = held.value.quantity
  if (si !== null && Math.abs(si - 12) > 2) scope.notebook.assume(`limit published for 12 V, borrowed at ${text}`)
}
