import { describe, expect, test } from 'vitest'
import { factsOf, figures, properties, sessionFile, stated, told } from './stated.ts'

/** A body under two lines of front matter; its first line is line 4 of the file. */
const body = (text: string) => stated(`---\ntitle: Tank\n---\n${text}\n`)

describe('figures named in prose', () => {
  test.each([
    [':measure[860 mm ± 2 mm]{of="fuel-tank/length"}', ['part:fuel-tank length = 860 mm ± 2 mm (length)']],
    [':measure[4.30]{of="rear-axle/ratio"}', ['part:rear-axle ratio = 4.30 (ratio)']],
    [':measure[6.8 A]{of="circuit:fuel-pump/load"}', ['circuit:fuel-pump load = 6.8 A (current)']],
    [':measure[2210 mm]{of="vehicle/wheelbase"}', ['vehicle:vehicle wheelbase = 2210 mm (length)']],
    [':measure[about **64 L**]{of="fuel-tank/usable-volume"}', ['part:fuel-tank usable-volume = about 64 L (volume)']],
  ])('`%s` is a measurement', (text, expected) => {
    const note = body(text)
    expect(told(note)).toEqual([])
    expect(properties(note)).toEqual(expected)
  })

  test('how it was measured goes with it', () => {
    const [fact] = factsOf(
      body(':measure[860 mm]{of="fuel-tank/length" with="steel tape" note="along the top" supersedes}'),
      'property',
    )
    expect(fact).toMatchObject({
      observed: true,
      bare: true,
      supersedes: true,
      with: { text: 'steel tape' },
      note: { text: 'along the top' },
      figure: 'q-1',
    })
  })

  test.each([
    [
      ':measure[860 mm]{with="steel tape"}',
      '4:1-36 directive Unexpected `:measure` without `of`, expected a path such as `of="fuel-tank/length"`',
    ],
    [
      ':measure[860 mm]{of="fuel-tank"}',
      '4:22-31 unknown-target Unexpected `fuel-tank` as what was measured, expected a path such as `fuel-tank/length`',
    ],
    [
      ':measure[860 mm]{of="the tank"}',
      '4:22-30 unknown-target Unexpected `the tank` as what was measured, expected a path such as `fuel-tank/length`',
    ],
    [
      ':measure[7 litres]{of="fuel-tank/length"}',
      '4:10-18 dimension Unexpected `7 litres` for `fuel-tank/length`, expected a length such as `860 mm`',
    ],
    [
      ':measure[860]{of="fuel-tank/length"}',
      '4:10-13 not-a-quantity Unexpected `860` for `fuel-tank/length`, expected a length such as `860 mm`',
    ],
    [
      ':measure[860 mm]{of="fuel-tank/lenght"}',
      '4:22-38 near-name Unexpected property `lenght` of `fuel-tank`, expected `length` → length',
    ],
  ])('`%s` is told once', (text, finding) => {
    expect(told(body(text))).toEqual([finding])
  })

  test.each([
    ':measure[quite long]{of="fuel-tank/length"}',
    ':measure[860 mm or 870 mm or 880 mm]{of="fuel-tank/length"}',
    ':measure[3 gal]{of="fuel-tank/length"}',
  ])('`%s`, which the reader of the body reports, is not reported again', text => {
    const note = body(text)
    expect(note.findings).toHaveLength(1)
    expect(properties(note)).toEqual([])
  })

  test('a figure that nobody named keeps its place in the count', () => {
    const note = body(
      'Holds about 64 litres, :measure[860 mm]{of="fuel-tank/length"} long.\n\n## Cut 20 mm off\n\n> Paid £4 for it.',
    )
    expect(figures(note)).toEqual([
      'q-1 about 64 litres (prose)',
      'q-2 860 mm (measurement fuel-tank/length)',
      'q-3 20 mm (prose)',
      'q-4 £4 (prose)',
    ])
  })

  test('each figure of the body has the name of its node, and the note that was read is left alone', () => {
    const note = body('About 64 litres, :measure[4.30]{of="rear-axle/ratio"}.')
    expect(JSON.stringify(note.body).match(/"id":"q-\d"/g)).toEqual(['"id":"q-1"', '"id":"q-2"'])
  })
})

test('stating the same note twice gives the same, byte for byte', () => {
  const text = '---\ntitle: Tank\nparts: { pump: { cost: £4, why: 3 mm short } }\n---\nHolds 64 L.\n'
  expect(JSON.stringify(stated(text, sessionFile))).toBe(JSON.stringify(stated(text, sessionFile)))
})
