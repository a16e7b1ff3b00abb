import { describe, expect, test } from 'vitest'
import { factsOf, figures, properties, references, stated, told } from './stated.ts'

/** A body under two lines of front matter; its first line is line 4 of the file. */
const body = (text: string) => stated(`---\ntitle: Tank\n---\n${text}\n`)

describe('tables', () => {
  test('a row of a measurement table is a named measurement', () => {
    const note = body(
      '| Measurement | Value | With | Note | Shelf |\n|-|-|-|-|-|\n| fuel-tank/length | 860 mm | steel tape | along the top, 3 mm off the edge | A |\n| rear-axle/ratio | 4.30 | | | |\n| fuel-tank/width | | | | |',
    )
    expect(told(note)).toEqual([])
    expect(
      factsOf(note, 'property').map(({ subject, key, value, with: how, note: said }) => [
        subject.id,
        key,
        value.type,
        how?.text ?? null,
        said?.text ?? null,
      ]),
    ).toEqual([
      ['fuel-tank', 'length', 'quantity', 'steel tape', 'along the top, 3 mm off the edge'],
      ['rear-axle', 'ratio', 'quantity', null, null],
    ])
    expect(figures(note)).toEqual([
      'q-1 860 mm (measurement fuel-tank/length)',
      'q-2 3 mm (prose)',
      'q-3 4.30 (measurement rear-axle/ratio)',
    ])
  })

  test.each([
    [
      'fuel-tank/length | 7 litres',
      '6:22-30 dimension Unexpected `7 litres` for `fuel-tank/length`, expected a length such as `860 mm`',
    ],
    [
      'fuel-tank/length | long',
      '6:22-26 not-a-quantity Unexpected `long` for `fuel-tank/length`, expected a length such as `860 mm`',
    ],
    [
      'The tank, long side | 860 mm',
      '6:3-22 unknown-target Unexpected `The tank, long side` as what was measured, expected a path such as `fuel-tank/length`',
    ],
    [
      'fuel-tank/length | 860 mm, 870 mm',
      '6:22-36 not-a-quantity Unexpected `860 mm, 870 mm` for `fuel-tank/length`, expected a length such as `860 mm`',
    ],
  ])('the row `%s` is told', (row, finding) => {
    expect(told(body(`| Measurement | Value |\n|-|-|\n| ${row} |`))).toEqual([finding])
  })

  test('a row of a part table is a part', () => {
    const note = body(
      '| Part | Cost | Qty | From | Action | System | Kind |\n|-|-|-|-|-|-|-|\n| Fuel filter | £6.20 | 2 | corvane | fitted | fuel | hose |\n| washer | | | | | | |',
    )
    expect(told(note)).toEqual([])
    expect(factsOf(note, 'mention')).toMatchObject([
      {
        part: 'fuel-filter',
        action: { word: 'fitted' },
        cost: { amount: { amount: '6.20', currency: 'GBP' }, figure: 'q-1' },
        qty: { amount: '2' },
        from: { words: { text: 'corvane' } },
      },
      { part: 'washer', action: null, cost: null, qty: null, from: null },
    ])
    expect(properties(note)).toEqual([
      'part:fuel-filter name = Fuel filter',
      'part:fuel-filter system = fuel',
      'part:fuel-filter kind = hose',
    ])
    expect(references(note)).toEqual(['donor corvane (near-only)', 'system fuel (must-exist)'])
    expect(figures(note)).toEqual(['q-1 £6.20 (price fuel-filter/cost)'])
  })

  test.each([
    [
      'Filter | cheap | 1 | fitted',
      '6:12-17 not-a-quantity Unexpected `cheap` for `filter/cost`, expected an amount of money such as `£184`',
    ],
    [
      'Filter | 12 mm | 1 | fitted',
      '6:12-17 dimension Unexpected `12 mm` for `filter/cost`, expected an amount of money such as `£184`',
    ],
    [
      'Filter | £4 | some | fitted',
      '6:17-21 not-a-quantity Unexpected `some` for `filter/qty`, expected a number such as `2`',
    ],
    [
      'Filter | £4 | 1 | fited',
      '6:21-26 unknown-action Unexpected `fited` for `filter/action`, expected `ordered`, `received`, `made`, `modified`, `trial-fitted`, `fitted`, `removed`, `rejected`, `returned`, `sold` or `scrapped` → fitted',
    ],
    [
      'Filter | £4 | 1 | returned',
      '6:3-9 rejected-without-why Unexpected `returned` part `filter` without a reason, expected `why:` → why: …',
    ],
  ])('the part row `%s` is told', (row, finding) => {
    expect(told(body(`| Part | Cost | Qty | Action |\n|-|-|-|-|\n| ${row} |`))).toEqual([finding])
  })

  test('a pin table inside a connector is its pins', () => {
    const note = body(
      ':::connector{#stalk-switch mates="column-loom" name="Stalk switch" rating="10 A"}\n| Pin | Wire | To | Carries | Circuit | Meets |\n|-|-|-|-|-|-|\n| 31b | 0.75 mm² white/black | light-switch/2 | side lamps | side-lamps | 5 |\n| 2 | gr | | | | |\n:::',
    )
    expect(told(note)).toEqual([
      '8:7-9 ambiguous-colour Unexpected `gr` in the colour `gr`, expected `green` or `grey`',
    ])
    expect(properties(note).map(property => property.replace('connector:stalk-switch ', ''))).toEqual([
      'mates = column-loom',
      'name = Stalk switch',
      'rating = 10 A (current)',
      'pins.31b.wire.area = 0.75 mm² (area)',
      'pins.31b.wire.colour = white/black',
      'pins.31b.to = light-switch/2',
      'pins.31b.carries = side lamps',
      'pins.31b.circuit = side-lamps',
      'pins.31b.meets = 5',
      'pins.2.wire.colour = gr',
    ])
    expect(figures(note)).toEqual([
      'q-1 10 A (pin connector:stalk-switch/rating)',
      'q-2 0.75 mm² (pin connector:stalk-switch/pins.31b.wire.area)',
    ])
    expect(references(note)).toEqual(['connector column-loom (must-exist)', 'circuit side-lamps (must-exist)'])
  })
})
