import type { AsBuiltRecord } from '../../record/record.ts'
import { statedLeaf } from '../leaf.ts'
import { Notebook } from '../notebook.ts'
import { partSubject } from '../subjects.ts'
import { workOut } from '../term.ts'
import { fillableTank } from './level-volume.ts'

/** One mark of a dip stick: its height above the inside of the bottom, and what the tank then holds. */
export interface DipMark {
  readonly heightMm: number
  readonly litres: number
}

/** What a tank holds by the height of the level, every `stepMm`, the brim last; empty where its shape is not whole in the record. */
export function dipTable(record: AsBuiltRecord, tank: string, stepMm: number): DipMark[] {
  const part = record.parts.find(({ id }) => id === tank)
  const shape =
    part === undefined ? null : fillableTank({ record, subject: partSubject(part), notebook: new Notebook() })
  if (shape === null || !(stepMm > 0)) return []
  const brimMm = shape.heightMetres * 1000
  const count = Math.ceil(brimMm / stepMm - 1e-9)
  const heights = Array.from({ length: count }, (_, at) => at * stepMm)
  return [...heights, brimMm].map(heightMm => ({ heightMm, litres: litresAt(shape.upTo, heightMm) }))
}

function litresAt(upTo: NonNullable<ReturnType<typeof fillableTank>>['upTo'], heightMm: number): number {
  const height = statedLeaf('constant', { symbol: 'h', meaning: 'height of the level', value: heightMm, unit: 'mm' })
  return workOut(upTo(height, 'V_h')) * 1000
}
