import type { Input } from '../input.ts'
import { derived } from '../inputs/derived.ts'
import { constant, value } from '../inputs/value.ts'
import { lookUp } from '../look-up.ts'
import type { Scope } from '../scope.ts'
import { workOut } from '../term.ts'
import { insulation } from './cable-insulation.ts'

const softened = 160 // °C, PVC at the end of a short circuit, IEC 60364-5-54 annex A

/** The section of a circuit's cable, which is what it is sold as. */
export const cableSection = (): Input<number> =>
  value({
    of: 'circuit/cable.area',
    symbol: 'S',
    meaning: 'section of the cable',
    dimension: 'area',
    unit: 'mm2',
    exact: true,
  })

/** What a cable withstands without its insulation ending above 160 °C: k²S², from its insulation's temperature on. */
export function cableWithstand(symbol: string): Input<number> {
  const whole = derived({
    symbol,
    meaning: 'what the cable withstands, k²S²',
    dimension: 'let-through',
    inputs: {
      area: cableSection(),
      start: insulation('circuit/cable', 'theta_i'),
      end: finalTemperature(),
    },
    formula: [
      {
        line: 'k_S = 226 * sqrt(ln((234.5 + (theta_f - 0 degC)) / (234.5 + (theta_i - 0 degC))))',
        unit: '1',
        says: 'k of copper in A·√s/mm², from the one temperature to the other',
      },
      { line: `${symbol} = (k_S * 1 A * S / 1 mm2)^2 * 1 s`, unit: 'A2s', says: 'what the cable withstands' },
    ],
  })
  return { ...whole, read: scope => (isPastEnd(scope) ? null : whole.read(scope)) }
}

function finalTemperature(): Input<number> {
  const end = constant({
    symbol: 'theta_f',
    meaning: 'temperature of PVC at the end',
    dimension: 'temperature',
    value: softened,
    unit: 'degC',
  })
  return {
    ...end,
    read: scope => {
      scope.notebook.assume('PVC insulation, 160 °C at the end')
      return end.read(scope)
    },
  }
}

/** Insulation that is hotter than that from the start is no PVC, and its own end temperature is not known. */
function isPastEnd(scope: Scope): boolean {
  const { path, held } = lookUp(scope, 'circuit/cable.insulation')
  if (held === null) return false
  const found = insulation('circuit/cable', 'theta_i').read(scope)
  if (found?.type !== 'figure' || workOut(found.term) < softened + 273.15) return false
  scope.notebook.need(path, 'an insulation of 160 °C and more is no PVC, and no end temperature is known for it')
  return true
}
