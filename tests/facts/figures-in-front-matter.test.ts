import { describe, expect, test } from 'vitest'
import { plainReading } from '../../src/quantities/quantity.ts'
import { properties, statedFront, told } from './stated.ts'

const measured = (line: string) => statedFront(`measurements:\n  fuel-tank:\n    ${line}`)

describe('a figure in front matter', () => {
  test.each([
    ['length: 860 mm', 'part:fuel-tank length = 860 mm (length)'],
    ['length: "7-3/8\\""', 'part:fuel-tank length = 7-3/8" (length)'],
    ['length: about 860 mm', 'part:fuel-tank length = about 860 mm (length)'],
    ['length: 850 to 870 mm', 'part:fuel-tank length = 850 to 870 mm (length)'],
    ['filled-volume: 92 L', 'part:fuel-tank filled-volume = 92 L (volume)'],
    ['count: 4', 'part:fuel-tank count = 4 (ratio)'],
    ['ratio: 4.30', 'part:fuel-tank ratio = 4.30 (ratio)'],
    ['max-speed: 4500', 'part:fuel-tank max-speed = 4500 (frequency)'],
    ['max-speed: 4500 rpm', 'part:fuel-tank max-speed = 4500 rpm (frequency)'],
    ['consumption: 8 L/100km', 'part:fuel-tank consumption = 8 L/100km (consumption)'],
    ['consumption: 11 L/h', 'part:fuel-tank consumption = 11 L/h (flow)'],
    ['thread: M8 × 1.25', 'part:fuel-tank thread = M8 × 1.25 (thread)'],
    ['contents: petrol', 'part:fuel-tank contents = petrol'],
    ['length: ~', 'part:fuel-tank length = nothing'],
    ['sight-holes: 3', 'part:fuel-tank sight-holes = 3 (ratio)'],
    ['lip-depth: 12 mm', 'part:fuel-tank lip-depth = 12 mm (length)'],
    ['length: { value: 860 mm, with: steel tape, supersedes: true }', 'part:fuel-tank length = 860 mm (length)'],
  ])('`%s` is read', (line, property) => {
    const note = measured(line)
    expect(told(note)).toEqual([])
    expect(properties(note)).toEqual([property])
  })

  test.each([
    [
      'length: 7 litres',
      '6:13-21 dimension Unexpected `7 litres` for `fuel-tank/length`, expected a length such as `860 mm`',
    ],
    [
      'length: long',
      '6:13-17 not-a-quantity Unexpected `long` for `fuel-tank/length`, expected a length such as `860 mm`',
    ],
    [
      'length: 860',
      '6:13-16 not-a-quantity Unexpected `860` for `fuel-tank/length`, expected a length such as `860 mm`',
    ],
    [
      'length: 860 mm or more like 870 mm',
      '6:13-39 not-a-quantity Unexpected `860 mm or more like 870 mm` for `fuel-tank/length`, expected a length such as `860 mm`',
    ],
    [
      'length: [860 mm, 870 mm]',
      '6:13-29 not-a-quantity Unexpected a list for `fuel-tank/length`, expected a length such as `860 mm`',
    ],
    [
      'load: 7 mm',
      '6:11-15 dimension Unexpected `7 mm` for `fuel-tank/load`, expected a force such as `850 N` or a mass such as `11.5 kg` or a current such as `7 A` or a power such as `84 W`',
    ],
    [
      'lip-depth: 12',
      '6:16-18 not-a-quantity Unexpected `12` for `fuel-tank/lip-depth`, expected a length such as `860 mm`',
    ],
    [
      'sight-holes: a few',
      '6:18-23 not-a-quantity Unexpected `a few` for `fuel-tank/sight-holes`, expected a number with its unit such as `860 mm`',
    ],
    [
      'length: { with: steel tape }',
      '6:5-11 not-a-quantity Unexpected nothing for `fuel-tank/length`, expected a length such as `860 mm`',
    ],
    [
      'length: { value: 860 mm, wiht: steel tape }',
      '6:30-34 unknown-key Unexpected key `wiht` in `fuel-tank/length`, expected `with` → with',
    ],
    [
      'length: ":private[860 mm]{as=identity}"',
      '6:14-43 not-a-quantity Unexpected a text with a private mark for `fuel-tank/length`, expected a length such as `860 mm`',
    ],
    ['lenght: 860 mm', '6:5-11 near-name Unexpected property `lenght` of `fuel-tank`, expected `length` → length'],
  ])('`%s` is told', (line, finding) => {
    expect(told(measured(line))).toEqual([finding])
  })

  test('a figure of another dimension is no measurement, and is kept as a figure that nobody named', () => {
    const note = measured('length: 7 litres')
    expect(properties(note)).toEqual([])
    expect(note.figures).toMatchObject([
      { id: 'q-1', role: 'prose', path: null, quantity: { text: '7 litres', dimension: 'volume' } },
    ])
  })

  test.each([
    ['filled-volume: 3 gal', {}, 'ambiguous-unit'],
    ['length: 12,5 mm', {}, 'decimal-mark'],
    ['length: 12.5 mm', { decimal: 'comma' }, 'decimal-mark'],
  ] as const)('`%s` under %j is the doubt `%s`, and nothing is read', (line, options, rule) => {
    const note = statedFront(`measurements:\n  fuel-tank:\n    ${line}`, {
      ...plainReading,
      approximate: 0.05,
      ...options,
    })
    expect(note.findings.map(found => [found.rule, found.line])).toEqual([[rule, 6]])
    expect(properties(note)).toEqual([])
  })

  test.each([
    ['filled-volume: 3 gal', { gallon: 'imperial' }, 'part:fuel-tank filled-volume = 3 gal (volume)'],
    ['length: 12,5 mm', { decimal: 'comma' }, 'part:fuel-tank length = 12,5 mm (length)'],
  ] as const)('`%s` under %j is read', (line, options, property) => {
    const note = statedFront(`measurements:\n  fuel-tank:\n    ${line}`, {
      ...plainReading,
      approximate: 0.05,
      ...options,
    })
    expect(told(note)).toEqual([])
    expect(properties(note)).toEqual([property])
  })
})

describe('what is measured', () => {
  test.each([
    ['circuit:fuel-pump: { load: 6.8 A }', 'circuit:fuel-pump load = 6.8 A (current)'],
    ['vehicle: { wheelbase: 2210 mm }', 'vehicle:vehicle wheelbase = 2210 mm (length)'],
    ['fuel-tank/length: 860 mm', 'part:fuel-tank length = 860 mm (length)'],
    ['earth-point:left-rear: { resistance: 2 mΩ }', 'earth-point:left-rear resistance = 2 mΩ (resistance)'],
  ])('`%s` names its thing', (line, property) => {
    const note = statedFront(`measurements:\n  ${line}`)
    expect(told(note)).toEqual([])
    expect(properties(note)).toEqual([property])
  })

  test.each([
    [
      'fuel-tank: 860 mm',
      '5:14-20 not-a-quantity Unexpected `860 mm` for `fuel-tank`, expected which of its properties that is, such as `{ length: 860 mm }` → fuel-tank: { length: 860 mm }',
    ],
    [
      'Fuel Tank: { length: 860 mm }',
      '5:3-12 unknown-key Unexpected name `Fuel Tank`, expected lower-case words joined by hyphens such as `fuel-tank`',
    ],
    [
      'circuit:fuel-pump: { load: 4 mm }',
      '5:30-34 dimension Unexpected `4 mm` for `circuit:fuel-pump/load`, expected a current such as `7 A` or a power such as `84 W`',
    ],
  ])('`%s` is told', (line, finding) => {
    const note = statedFront(`measurements:\n  ${line}`)
    expect(told(note)).toEqual([finding])
    expect(properties(note)).toEqual([])
  })
})
