import { latest } from '../../record/lookups.ts'
import type { Thing } from '../../record/record.ts'
import { byName } from '../by-name.ts'
import { isChecked, isLive, usedWords, wordsOf } from '../look-up.ts'
import type { CheckSubject, Scope } from '../scope.ts'
import { subjectOf } from '../subjects.ts'

/** The circuits fused in a box that draw from it: live, continuous or intermittent. */
export function drawingFromBox(scope: Scope, box: string): readonly CheckSubject[] {
  return scope.record.circuits
    .filter(circuit => wordsOf(circuit, 'fuse.box') === box && isDrawing(circuit))
    .map(circuit => subjectOf('circuit', circuit))
}

/** Live, and neither for starting nor standing: what draws while the vehicle runs. */
function isDrawing(circuit: Thing): boolean {
  return isLive(circuit) && !['starting', 'standing'].includes(wordsOf(circuit, 'duty') ?? 'continuous')
}

/** The box that a circuit feeds; null for a circuit that feeds none. */
export function boxFedBy(scope: Scope, circuit: string): string | null {
  const boxes = byName(scope.record).partsByKind.get('fuse-box') ?? []
  return boxes.find(part => isChecked(part) && wordsOf(part, 'feed') === circuit)?.id ?? null
}

/** The circuit that feeds the box in which the subject is fused; none where the box names no feed. */
export function feedOfSubject(scope: Scope): readonly CheckSubject[] {
  const { record, subject } = scope
  const box = subject.thing === null ? null : usedWords(scope, subject.thing, 'fuse.box')
  const { parts, circuits } = byName(record)
  const part = parts.get(box ?? '')
  const feed = part?.partKind === 'fuse-box' ? usedWords(scope, part, 'feed') : null
  const circuit = circuits.get(feed ?? '')
  if (circuit !== undefined && circuit.id !== subject.id) return [subjectOf('circuit', circuit)]
  if (box !== null) scope.notebook.note(`The feed of the box ${box} is not named, so nothing is added for it.`)
  return []
}

/** True where a circuit's return is a cable of its own. */
export function hasCableReturn(circuit: Thing): boolean {
  return latest(circuit, 'return.area') !== null
}
