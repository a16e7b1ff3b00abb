import type { AsBuiltRecord, Thing } from '../record/record.ts'
import { circuitCurrent, nominalVoltage } from './derived/circuit-current.ts'
import { feedDrop } from './derived/loop-drop.ts'
import { jointsResistance, outwardResistance, returnResistance } from './derived/loop-resistance.ts'
import type { Input } from './input.ts'
import { Notebook } from './notebook.ts'
import { subjectOf } from './subjects.ts'
import { workOut } from './term.ts'

/** What is lost where, with the load on, in volts: the figures of the voltage-drop working, laid along the way. */
export interface CircuitVoltages {
  readonly nominal: number
  /** Amperes. */
  readonly current: number
  /** On the way from the battery to the fuse box, there and back; 0 where the box names no feed. */
  readonly feed: number
  readonly out: number
  readonly back: number
  /** In all joints of the loop together. */
  readonly joints: number
  /** What the working assumed, as it says it. */
  readonly assumed: readonly string[]
}

/** Null where a figure is missing, or where the circuit starts the engine and so sees no nominal voltage. */
export function circuitVoltages(record: AsBuiltRecord, circuit: Thing): CircuitVoltages | null {
  const notebook = new Notebook()
  const scope = { record, subject: subjectOf('circuit', circuit), notebook }
  const figure = (input: Input): number | null => {
    const found = input.read(scope)
    if (found?.type === 'none') return 0
    const value = found?.type === 'figure' ? workOut(found.term) : Number.NaN
    return Number.isFinite(value) ? value : null
  }
  const [nominal, current, feed] = [figure(nominalVoltage()), figure(circuitCurrent()), figure(feedDrop())]
  const ohms = [outwardResistance(), returnResistance(), jointsResistance()].map(figure)
  const [out, back, joints] = ohms
  if (nominal === null || current === null || feed === null || out == null || back == null || joints == null)
    return null
  return {
    nominal,
    current,
    feed,
    out: current * out,
    back: current * back,
    joints: current * joints,
    assumed: notebook.assumed,
  }
}
