import { describe, expect, test } from 'vitest'
import { factsOf, figures, properties, references, statedFront, told } from './stated.ts'

const part = (line: string) => statedFront(`parts:\n  pump:\n    ${line}`)

describe('a part', () => {
  test('every mention is stated, with nothing else said of it', () => {
    const note = statedFront('parts:\n  pump:\n  fuel-tank: {}')
    expect(told(note)).toEqual([])
    expect(factsOf(note, 'mention').map(({ part: id, action, cost, qty }) => ({ id, action, cost, qty }))).toEqual([
      { id: 'pump', action: null, cost: null, qty: null },
      { id: 'fuel-tank', action: null, cost: null, qty: null },
    ])
  })

  test.each([
    ['mass: 1.2 kg', 'part:pump mass = 1.2 kg (mass)'],
    ['inlet: 8 mm', 'part:pump inlet = 8 mm (length)'],
    ['teeth: 43', 'part:pump teeth = 43 (ratio)'],
    ['flow: { value: 110 L/h, with: stop watch }', 'part:pump flow = 110 L/h (flow)'],
    ['material: die-cast', 'part:pump material = die-cast'],
    ['mass: ~', 'part:pump mass = nothing'],
  ])('`%s` is a property of it', (line, property) => {
    expect(told(part(line))).toEqual([])
    expect(properties(part(line))).toEqual([property])
  })

  test.each([
    ['mass: heavy', '6:11-16 not-a-quantity Unexpected `heavy` for `pump/mass`, expected a mass such as `11.5 kg`'],
    ['mass: 12 mm', '6:11-16 dimension Unexpected `12 mm` for `pump/mass`, expected a mass such as `11.5 kg`'],
    [
      'inlet: wide',
      '6:5-10 unknown-key Unexpected key `inlet` in `pump`, expected a key such as `name`, `kind` or `cost`, or a figure with its unit',
    ],
    ['lenght: 210 mm', '6:5-11 near-name Unexpected property `lenght` of `pump`, expected `length` → length'],
    ['kind: pmup', '6:11-15 unknown-kind Unexpected kind `pmup` of `pump`, expected `pump` → pump'],
    [
      'kind: winch',
      '6:11-16 unknown-kind Unexpected kind `winch` of `pump`, expected a kind whose properties are known, such as `tank` or `pump`',
    ],
    [
      'cost: cheap',
      '6:11-16 not-a-quantity Unexpected `cheap` for `pump/cost`, expected an amount of money such as `£184`',
    ],
    [
      'cost: 184',
      '6:11-14 not-a-quantity Unexpected `184` for `pump/cost`, expected an amount of money such as `£184`',
    ],
    [
      'cost: £5 to £7',
      '6:11-19 not-a-quantity Unexpected `£5 to £7` for `pump/cost`, expected one amount of money such as `£184`',
    ],
    ['cost: 11 kg', '6:11-16 dimension Unexpected `11 kg` for `pump/cost`, expected an amount of money such as `£184`'],
    ['qty: some', '6:10-14 not-a-quantity Unexpected `some` for `pump/qty`, expected a number such as `2`'],
    ['qty: 0', '6:10-11 not-a-quantity Unexpected `0` for `pump/qty`, expected a number such as `2`'],
    [
      'qty: 2 m',
      '6:10-13 not-a-quantity Unexpected `2 m` for `pump/qty`, expected `2` alone, with the cost and the mass of 1 m → 2',
    ],
    [
      'action: rejected',
      '5:3-7 rejected-without-why Unexpected `rejected` part `pump` without a reason, expected `why:` → why: …',
    ],
    [
      'action: returned',
      '5:3-7 rejected-without-why Unexpected `returned` part `pump` without a reason, expected `why:` → why: …',
    ],
    ['colour: b', '6:13-14 ambiguous-colour Unexpected `b` in the colour `b`, expected `black`, `blue` or `brown`'],
  ])('`%s` is told once', (line, finding) => {
    expect(told(part(line))).toEqual([finding])
  })

  test.each([
    'action: rejected\n    why: 12 mm too long',
    'action: removed',
    'kind: pump',
    'cost: €12.50',
    'cost: 85 GBP',
    'qty: 2',
    'qty: 1.5',
    'qty: two',
  ])('`%s` is in order', line => {
    expect(told(part(line))).toEqual([])
  })

  test.each([
    ['cost: £184', { amount: '184.00', currency: 'GBP' }],
    ['cost: £1,184.50', { amount: '1184.50', currency: 'GBP' }],
    ['cost: €12.5', { amount: '12.50', currency: 'EUR' }],
    ['cost: 9 USD', { amount: '9.00', currency: 'USD' }],
  ])('`%s` is %j, exactly', (line, amount) => {
    expect(factsOf(part(line), 'mention')[0]?.cost?.amount).toEqual(amount)
  })

  test('a reason is prose: its figures count, and stand under no path', () => {
    expect(figures(part('why: 12 mm too long, and £4 dearer'))).toEqual(['q-1 12 mm (prose)', 'q-2 £4 (prose)'])
  })

  test('names, numbers and sources are not searched for figures', () => {
    expect(
      figures(
        part(
          '{ name: 12 V pump, number: 5 mm, serial: 3 L, from: 24 V breakers }'.slice(1, -1).split(', ').join('\n    '),
        ),
      ),
    ).toEqual([])
  })

  test.each([
    ['from: corvane', ['donor corvane (near-only)']],
    ['system: fuel', ['system fuel (must-exist)']],
    ['receipt: ../photos/pump.jpg', ['photo photos/pump.jpg (must-exist)']],
    ['photos: [photos/a.jpg, photos/b.jpg]', ['photo photos/a.jpg (must-exist)', 'photo photos/b.jpg (must-exist)']],
    ['replaces: old-pump', ['part old-pump (must-exist)']],
    ['feed: aux-feed', ['circuit aux-feed (must-exist)']],
  ])('`%s` refers to %j', (line, expected) => {
    expect(references(part(line))).toEqual(expected)
  })

  test('a name in capitals is mended, and the part is kept under the mended one', () => {
    const note = statedFront('parts: { Fuel Pump: { mass: 2 kg } }')
    expect(told(note)).toEqual([
      '4:10-19 unknown-key Unexpected name `Fuel Pump`, expected lower-case words joined by hyphens such as `fuel-pump` → fuel-pump',
    ])
    expect(properties(note)).toEqual(['part:fuel-pump mass = 2 kg (mass)'])
  })

  test('the kind that a note gives a part holds for what the note measures of it', () => {
    const lines = 'parts:\n  rear-axle: { kind: axle }\nmeasurements:\n  rear-axle: { load: 410 N }'
    expect(told(statedFront(lines))).toEqual([
      '7:22-27 dimension Unexpected `410 N` for `rear-axle/load`, expected a mass such as `11.5 kg`',
    ])
  })

  test('what is taken back of a part is said', () => {
    expect(properties(part('cost: ~'))).toEqual(['part:pump cost = nothing'])
  })
})

describe('words with private marks', () => {
  test('a mark is taken off and its span is kept', () => {
    const [mention] = factsOf(part('from: "yard of :private[Ada Quill]{as=people}"'), 'mention')
    expect(mention?.from?.words).toEqual({ text: 'yard of Ada Quill', marks: [{ start: 8, end: 17, as: 'people' }] })
  })

  test('a figure behind a mark stands where it was written', () => {
    const note = part('why: ":private[Ada]{as=people} measured 12 mm"')
    expect(note.figures).toMatchObject([{ quantity: { text: '12 mm' }, place: { line: 6, column: 45, endColumn: 50 } }])
  })

  test('a mark that does not parse is told at its colon, and the words are for the full edition only', () => {
    const note = part('why: "bought from :private[Ada]"')
    expect(told(note)).toEqual([
      '6:23-24 directive Unexpected private mark that does not parse, expected one such as `:private[the plate]{as=identity}`',
    ])
    expect(factsOf(note, 'mention')[0]?.why?.words.marks.map(({ as }) => as)).toEqual([
      'cost',
      'source',
      'people',
      'place',
      'identity',
    ])
  })
})
