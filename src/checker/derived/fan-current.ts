import type { Found, Input } from '../input.ts'
import { ifGiven } from '../inputs/choose.ts'
import { derived } from '../inputs/derived.ts'
import { value } from '../inputs/value.ts'
import { isLive, usedWords, wordsOf } from '../look-up.ts'
import { type CheckSubject, type Scope, withSubject } from '../scope.ts'
import { subjectOf } from '../subjects.ts'
import { circuitCurrent, nominalVoltage } from './circuit-current.ts'

/** The resistance of a dropping resistor. */
export function droppingResistance(symbol = 'R'): Input<number> {
  return value({
    of: 'resistor/resistance',
    symbol,
    meaning: 'resistance of the resistor',
    dimension: 'resistance',
    unit: 'Ohm',
    sense: 'more',
  })
}

/** The current at the speed of a resistor, measured; else with the fan as a fixed resistance, which is assumed and said. */
export function fanCurrent(symbol: string): Input<number> {
  const spec = { symbol, meaning: 'current at that speed', dimension: 'current' } as const
  const measured = value({ of: 'resistor/current', ...spec, unit: 'A' })
  return ifGiven({ ...spec, of: 'resistor/current' }, measured, asFixedResistance(spec, measured))
}

function asFixedResistance(
  spec: { readonly symbol: string; readonly meaning: string; readonly dimension: 'current' },
  measured: Input<number>,
): Input<number> {
  const worked = derived({
    ...spec,
    inputs: { resistance: droppingResistance(), full: fullCurrent(measured), nominal: nominalVoltage() },
    formula: [
      {
        line: `${spec.symbol} = U_n / (R + U_n / I_full)`,
        unit: 'A',
        says: 'the fan as a fixed resistance, which no motor is',
      },
    ],
  })
  return {
    ...worked,
    read: scope => {
      const found = worked.read(scope)
      if (found !== null) scope.notebook.assume('fan as a fixed resistance')
      return found
    },
  }
}

/** What the fan draws at full speed: the load of the circuit that feeds it. */
function fullCurrent(measured: Input<number>): Input<number> {
  const load = circuitCurrent('I_full')
  return {
    ...load,
    meaning: 'load of the fan at full speed',
    reads: ['resistor/feeds', 'circuit/feeds', ...load.reads],
    read: (scope): Found | null => {
      const circuit = circuitOfFan(scope)
      return circuit === null ? measured.read(scope) : load.read(withSubject(scope, circuit))
    },
  }
}

/** The live circuit that feeds the same fan, or that the resistor names itself. */
function circuitOfFan(scope: Scope): CheckSubject | null {
  const { subject, record } = scope
  const fan = subject.thing === null ? null : usedWords(scope, subject.thing, 'feeds')
  const circuit = record.circuits.find(
    one => isLive(one) && fan !== null && [one.id, wordsOf(one, 'feeds')].includes(fan),
  )
  if (circuit === undefined) return null
  usedWords(scope, circuit, 'feeds')
  return subjectOf('circuit', circuit)
}
