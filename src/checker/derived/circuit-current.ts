import type { Input } from '../input.ts'
import { byDimension } from '../inputs/choose.ts'
import { derived } from '../inputs/derived.ts'
import { each } from '../inputs/each.ts'
import { value } from '../inputs/value.ts'
import { boxFedBy, drawingFromBox } from './circuit-graph.ts'

/** The build's nominal voltage. */
export function nominalVoltage(symbol = 'U_n'): Input<number> {
  return value({
    of: 'build/nominal',
    symbol,
    meaning: 'nominal voltage',
    dimension: 'voltage',
    unit: 'V',
    exact: true,
  })
}

/** What a circuit draws: its load, in amperes or in watts over the nominal voltage; a circuit that feeds a fuse box, the sum of its box's loads. */
export function circuitCurrent(symbol = 'I'): Input<number> {
  const own = loadAsWritten(symbol)
  return {
    ...own,
    read: scope => {
      const box = boxFedBy(scope, scope.subject.id)
      return (box === null ? own : sumOfBox(symbol, box)).read(scope)
    },
  }
}

/** A circuit's own load in amperes; watts are divided by the nominal voltage. */
export function loadAsWritten(symbol: string): Input<number> {
  const spec = { symbol, meaning: 'load', dimension: 'current' } as const
  const amperes = value({ of: 'circuit/load', ...spec, unit: 'A' })
  const watts = derived({
    ...spec,
    inputs: {
      power: value({ of: 'circuit/load', symbol: 'P', meaning: 'load', dimension: 'power', unit: 'W' }),
      nominal: nominalVoltage(),
    },
    formula: [{ line: `${symbol} = P / U_n`, unit: 'A', says: 'the load in watts over the nominal voltage' }],
  })
  return byDimension({ ...spec, of: 'circuit/load' }, { power: watts }, amperes)
}

const deepest = 4 // boxes in a row; more is a feed that leads back to itself

/** The loads of a box's circuits together. One of them may feed another box in its turn. */
export function sumOfBox(symbol: string, box: string, depth = 0): Input<number> {
  const one: Input<number> = {
    ...loadAsWritten('I_i'),
    read: scope => {
      const next = boxFedBy(scope, scope.subject.id)
      if (next === null) return loadAsWritten('I_i').read(scope)
      if (depth < deepest) return sumOfBox('I_i', next, depth + 1).read(scope)
      scope.notebook.need(`${next}/feed`, `${next} is fed by way of itself`)
      return null
    },
  }
  const loads = each(
    {
      symbol: 'I_i',
      meaning: 'loads of the box',
      dimension: 'current',
      of: scope => drawingFromBox(scope, box),
      wanted: `circuits in ${box}`,
    },
    one,
  )
  return derived({
    symbol,
    meaning: `loads of ${box} together`,
    dimension: 'current',
    inputs: { loads },
    formula: [{ line: `${symbol} = sum(I_i)`, unit: 'A', says: `the loads of ${box} together` }],
  })
}
