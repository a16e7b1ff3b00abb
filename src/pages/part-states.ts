import type { PartState } from '../record/record.ts'
import type { Cell, Inline } from './cells.ts'

/** Which square is drawn for a state: full, notched, half, empty, dashed or crossed. */
const shapes: Readonly<Record<PartState, string>> = {
  ordered: 'ordered',
  received: 'have',
  made: 'have',
  modified: 'modified',
  'trial-fitted': 'trial-fitted',
  fitted: 'fitted',
  removed: 'gone',
  rejected: 'gone',
  returned: 'gone',
  sold: 'gone',
  scrapped: 'gone',
}

/** A part's state: its square and its word. */
export function stateCell(state: PartState, after = '', sub: readonly Inline[] = []): Cell {
  return { kind: 'state', state: shapes[state], text: `${state}${after}`, sub }
}

/** Whether a part of this state has left, or never will be on, the vehicle. */
export function isGone(state: PartState): boolean {
  return shapes[state] === 'gone'
}
