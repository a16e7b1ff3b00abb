import type { FactValue, PlacedShape } from '../facts/fact.ts'
import type { Held } from './held.ts'
import { compareText } from './order-sessions.ts'
import type { PropertyStore } from './property-store.ts'
import type { Volume } from './record.ts'

/** The volumes that were stated, by part: outside, cut-outs and the part's wall, each as it stands. */
export function listVolumes(parts: Iterable<string>, store: PropertyStore): Volume[] {
  return [...new Set(parts)].sort(compareText).map(part => {
    const subject = { kind: 'volume', id: part } as const
    const wall = store.history({ kind: 'part', id: part }, 'wall').at(-1)
    const { properties } = store.thing(subject, subject, nowhere)
    return {
      part,
      outside: shapesAt(store.history(subject, 'outside'))[0] ?? null,
      less: shapesAt(store.history(subject, 'less')),
      wall: wall?.value.type === 'quantity' ? { ...wall, value: wall.value.quantity } : null,
      properties,
    }
  })
}

const nowhere = { file: '', line: 1, column: 1, endLine: 1, endColumn: 1 }

function shapesAt(history: readonly Held<FactValue>[]): Held<PlacedShape>[] {
  const held = history.at(-1)
  if (held?.value.type !== 'shapes') return []
  return held.value.shapes.map(shape => ({
    value: shape,
    place: shape.place,
    session: held.session,
    figure: shape.figures[0] ?? held.figure,
  }))
}
