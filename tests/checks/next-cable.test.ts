import { describe, expect, test } from 'vitest'
import voltageDrop from '../../src/checks/voltage-drop.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from './answer-to.ts'

const base: Given = {
  'circuit/load': '1 A ± 0',
  'circuit/length': '2 m ± 0',
  'circuit/cable.area': '4 mm²',
  'circuit/return': 'chassis',
  'circuit/joints': '0 Ω ± 0',
  'build/nominal': '12 V',
  'build/ambient': '20 °C ± 0',
}

describe('the next cable', () => {
  const given = { ...base, 'circuit/use': 'pump', 'circuit/load': '20 A ± 0', 'circuit/length': '5 m ± 0' }

  test('where the drop is too much, the sizes next to what is fitted are tried', () => {
    const { working } = answerTo(voltageDrop, { given })
    expect(
      working.alternatives.map(({ said, isFitted, verdict, result }) => [
        said,
        isFitted,
        verdict,
        Number(result?.value.toFixed(4)),
      ]),
    ).toEqual([
      ['2.5 mm²', false, 'fail', 0.798],
      ['4 mm²', true, 'fail', 0.495],
      ['6 mm²', false, 'pass', 0.33],
      ['10 mm²', false, 'pass', 0.191],
    ])
  })

  test('the return cable changes with it, gauges among gauges', () => {
    const { 'circuit/return': _, ...without }: Given = given
    const { working } = answerTo(voltageDrop, {
      given: { ...without, 'circuit/cable.area': '12 AWG', 'circuit/return.area': '12 AWG' },
    })
    expect(working.alternatives.map(({ said, isFitted }) => [said, isFitted])).toEqual([
      ['14 AWG', false],
      ['12 AWG', true],
      ['10 AWG', false],
      ['8 AWG', false],
    ])
    const [smaller, fitted] = working.alternatives.map(({ result }) => result?.value ?? Number.NaN)
    expect((smaller ?? 0) / (fitted ?? 1)).toBeCloseTo(92 ** (4 / 39), 9) // areas by ASTM B258, two gauges apart
  })

  test('where it passes, none is tried', () => {
    expect(answerTo(voltageDrop, { given: base }).working.alternatives).toEqual([])
  })
})
