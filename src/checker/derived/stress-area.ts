import type { Quantity } from '../../quantities/quantity.ts'
import { metricCoarse } from '../../quantities/thread-table.ts'
import type { Held } from '../../record/record.ts'
import { workFormula } from '../formula.ts'
import type { Found, Input } from '../input.ts'
import { ifGiven } from '../inputs/choose.ts'
import { quantityHeld, value } from '../inputs/value.ts'
import { statedLeaf } from '../leaf.ts'
import { lookUp } from '../look-up.ts'
import type { Scope } from '../scope.ts'
import type { Leaf } from '../term.ts'

/** The area of a bolt's thread that carries its load: as written, else by its thread. */
export function stressArea(symbol = 'A_s'): Input<number> {
  const spec = { symbol, meaning: 'stress area of the thread', dimension: 'area' } as const
  const written = value({ of: 'bolt/stress-area', ...spec, unit: 'mm2', exact: true })
  const byThread: Input<number> = {
    ...spec,
    reads: ['bolt/thread'],
    formula: [{ line: `${symbol} = pi / 4 * (d - 0.9382 * P)^2`, unit: 'mm2', says: 'stress area of the thread' }],
    read: scope => areaOfThread(symbol, scope),
  }
  return ifGiven({ ...spec, of: 'bolt/stress-area' }, written, byThread)
}

/** The outside diameter of a bolt's thread. */
export function threadDiameter(symbol = 'd'): Input<number> {
  return {
    symbol,
    meaning: 'outside diameter of the thread',
    dimension: 'length',
    reads: ['bolt/thread'],
    read: scope => {
      const thread = threadAt(scope)
      return thread === null ? null : { type: 'figure', term: thread.diameter }
    },
  }
}

function areaOfThread(symbol: string, scope: Scope): Found | null {
  const thread = threadAt(scope)
  if (thread === null) return null
  const { diameter, pitch, isInch } = thread
  // 0.9382 P: ISO 898-1, 9.1.6.1; 0.9743 P for unified threads: ASME B1.1, from memory.
  const share = isInch ? '0.9743' : '0.9382'
  const line = `${symbol} = pi / 4 * (d - ${share} * P)^2`
  const says = 'stress area of the thread'
  return { type: 'figure', term: workFormula([{ line, unit: 'mm2', says }], { d: diameter, P: pitch }) }
}

interface Thread {
  readonly diameter: Leaf
  readonly pitch: Leaf
  readonly isInch: boolean
}

function threadAt(scope: Scope): Thread | null {
  const target = lookUp(scope, 'bolt/thread')
  const held = quantityHeld(target)
  const size = held?.value.thread ?? null
  const pitch = size?.pitch ?? (size === null ? null : (metricCoarse.get(size.diameter) ?? null))
  if (held === null || size === null || pitch === null) {
    scope.notebook.need(target.path, 'the thread is not written, such as M8 × 1.25')
    return null
  }
  if (size.pitch === null) scope.notebook.assume(`coarse thread: pitch ${pitch} mm (ISO 261)`)
  const leaf = (symbol: string, meaning: string, millimetres: number): Leaf =>
    threadLeaf({ path: target.path, held }, { symbol, meaning, millimetres })
  const diameter = leaf('d', 'outside diameter of the thread', size.diameter)
  scope.notebook.see(diameter)
  return { diameter, pitch: leaf('P', 'pitch of the thread', pitch), isInch: /UN/i.test(held.value.text) }
}

function threadLeaf(
  { path, held }: { readonly path: string; readonly held: Held<Quantity> },
  { symbol, meaning, millimetres }: { readonly symbol: string; readonly meaning: string; readonly millimetres: number },
): Leaf {
  const leaf = statedLeaf('record', { symbol, meaning, value: millimetres, unit: 'mm' })
  const { place, session, figure } = held
  const isDiameter = symbol === 'd'
  return { ...leaf, id: isDiameter ? path : `${path}.pitch`, path, quantity: held.value, place, session, figure }
}
