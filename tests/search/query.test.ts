import { describe, expect, test } from 'vitest'
import { answer, found, told } from './workshop.ts'

// Which figures are equal follows from exact factors: 1 in is 25.4 mm, 1 imperial gallon is 4.546 09 L (NIST SP 811, appendix B.8);
// 14 AWG is 2.081 mm2 by the definition of ASTM B258. What comes first is our own choice.

const newest = 'measurement fuel-tank/length: 862 mm ± 2 mm'
const length = 'measurement fuel-tank/length: 860 mm ± 2 mm'
const litres = ['quantity 64 litres', 'quantity sixty-four litres or so']

describe('a quantity finds', () => {
  test.each<[string, string, readonly string[]]>([
    ['33.86 in', 'its equal in another unit', [length]],
    ['64 l', 'its equal in words, the newest first', litres],
    ['14 imp gal', 'its equal by the roundings that were written', litres],
    ['14 gal', 'what either gallon may mean', litres],
    ['14 AWG', 'a conductor of that area', ['measurement circuit:radiator-fan/cable.area: 2.08 mm²']],
    ['M8', 'threads of any pitch', ['measurement tank-bolts/thread: M8 x 1.25', 'quantity M8']],
    ['M8 x 1', 'threads of that pitch and of none', ['quantity M8']],
    ['£184', 'money', ['measurement fuel-tank/cost: £184']],
    ['840..880 mm', 'what lies in a range', [newest, length]],
    ['60..70 L', 'what lies in a range in words', litres],
    ['about 4 ft', 'what lies within the share that the build gives *about*', ['quantity 1.2 m']],
    ['862 mm ± 2 mm', 'what lies within a tolerance', [newest, length]],
    ['>861 mm', 'what is above', [newest, 'quantity 1.2 m']],
    ['over 862 mm', 'what is above and not what is just that', ['quantity 1.2 m']],
    ['≥ 862 mm', 'what is just that too', [newest, 'quantity 1.2 m']],
    [
      '8 inches',
      'the nearest first',
      [
        'quantity about 8 in',
        'measurement hatch/ground-clearance: 205 mm',
        'measurement fuel-tank/ground-clearance: at least 200 mm',
      ],
    ],
  ])('%s: %s', (asked, _why, expected) => {
    expect(told(asked)).toEqual(expected)
  })

  test.each(['33.7 in', '14 mm²', 'M10', '63 L', '£184.50', '841..859 mm', 'about 3 ft', '>1.3 m', '1260 kg'])(
    '%s finds nothing',
    asked => {
      expect(answer(asked)).toMatchObject({ hits: [], total: 0, isPartial: false })
    },
  )
})

describe('words find', () => {
  test.each<[string, readonly string[]]>([
    ['fuel tank length', [newest, length]],
    ['lenght', [newest, length]],
    ['fuses', ['measurement circuit:radiator-fan/fuse.rating: 25 A']],
    ['battery', ['text The batteries stand under the seat, clipped with M8 studs.']],
    ['battreies', ['text The batteries stand under the seat, clipped with M8 studs.']],
    ['hatch seal', ['job seal-hatch: seal the engine hatch']],
    ['roll bar', ['text the corner fouls the roll bar foot']],
    ['sheet-metal', ['part fuel-tank: Stainless tank, made to a drawing']],
    ['purple', ['circuit circuit:radiator-fan: radiator fan']],
    ['carries fan return', ['connector connector:fan-plug/31b: Fan plug: pin 31b']],
    ['session 2', ['session 2026-03-14-second: Second look at the tank']],
    ['2026-03-14', ['session 2026-03-14-second: Second look at the tank']],
    ['where was the drawer', ['text A 25 A breaker lies in the drawer.']],
  ])('%s', (asked, expected) => {
    expect(told(asked)).toEqual(expected)
  })

  test('things before what was measured of them, the newest before what it replaced, prices and sentences after', () => {
    expect(told('fuel tank')).toEqual([
      'part fuel-tank: Stainless tank, made to a drawing',
      newest,
      'measurement fuel-tank/width: 380 mm ± 2 mm',
      'measurement fuel-tank/cost: £184',
      length,
      'measurement fuel-tank/ground-clearance: at least 200 mm',
    ])
  })

  test('nothing is told as such; of several words that nothing holds together, all but one may do', () => {
    expect(answer('zebra')).toMatchObject({ hits: [], total: 0, isPartial: false })
    expect(answer('hatch zebra')).toMatchObject({ total: 3, isPartial: true })
    expect(answer('')).toMatchObject({ hits: [], total: 0, isPartial: false })
  })
})

describe('words and a quantity', () => {
  test.each<[string, readonly string[]]>([
    ['25 A fuse', ['measurement circuit:radiator-fan/fuse.rating: 25 A']],
    ['breaker 25 A', ['quantity 25 A']],
    ['tank 64 l', ['quantity sixty-four litres or so']],
    ['862 mm tank', [newest]],
    ['hatch 1.2 m', ['quantity 1.2 m']],
    ['clearance under 204 mm', ['measurement fuel-tank/ground-clearance: at least 200 mm']],
    [
      '25 A 15 A',
      ['measurement circuit:radiator-fan/load: 15 A', 'measurement circuit:radiator-fan/fuse.rating: 25 A'],
    ],
  ])('must both hold: %s', (asked, expected) => {
    expect(told(asked)).toEqual(expected)
  })

  test.each(['30 A fuse', 'tank 205 mm', '25 A 16 A', 'zebra 64 l'])('find nothing where one does not: %s', asked => {
    expect(answer(asked)).toMatchObject({ hits: [], total: 0, isPartial: false })
  })
})

describe('a hit', () => {
  test('of a figure in prose is the sentence with the figure marked, its session, its place and its anchor', () => {
    expect(found('14 imp gal')[1]).toEqual({
      kind: 'quantity',
      path: null,
      text: 'sixty-four litres or so',
      value: 64,
      unit: 'L',
      file: 'content/sessions/2026-03-07-tank.md',
      line: 14,
      column: 106,
      url: 'sessions/2026-03-07-tank/index.html#q-9',
      session: '2026-03-07-tank',
      number: 1,
      date: '2026-03-07',
      title: 'Tank in for size',
      label: null,
      said: {
        text: 'The tank is 860 mm ± 2 mm long, and the new tank took sixty-four litres or so.',
        marks: [{ start: 54, end: 77 }],
      },
      thing: null,
    })
  })

  test('of a named figure in front matter has its path, its name and the page of its thing', () => {
    expect(found('25 A fuse')[0]).toMatchObject({
      path: 'circuit:radiator-fan/fuse.rating',
      label: { text: 'radiator fan: fuse rating', marks: [{ start: 14, end: 18 }] },
      said: {
        text: 'fuse rating: 25 A',
        marks: [
          { start: 0, end: 4 },
          { start: 13, end: 17 },
        ],
      },
      thing: { name: 'radiator fan', address: 'circuits/radiator-fan/index.html' },
      line: 10,
    })
  })

  test('of a sentence without a figure leads to its block, with the line in which it begins', () => {
    expect(found('nothing else touched')[0]).toMatchObject({
      kind: 'text',
      said: {
        text: 'Nothing else was touched.',
        marks: [
          { start: 0, end: 7 },
          { start: 8, end: 12 },
          { start: 17, end: 24 },
        ],
      },
      line: 17,
      column: 26,
      url: 'sessions/2026-03-07-tank/index.html#b-17',
    })
  })

  test.each([
    ['odd corners', 'text Odd corners', 'b-14'],
    ['sparks', 'text A loose one sparks.', 'n-fn-why'],
    ['dust', 'text Dust, mostly.', 'b-14'],
  ])('of a heading leads below it, of a footnote to the foot: %s', (asked, expected, anchor) => {
    expect(told(asked)).toEqual([expected])
    expect(found(asked)[0]?.url).toBe(`sessions/2026-03-14-second/index.html#${anchor}`)
  })

  test('of a job leads to the job', () => {
    expect(found('seal hatch')[0]?.url).toBe('sessions/2026-03-07-tank/index.html#j-seal-hatch')
  })

  test('is one of the best where fewer are wanted than there are', () => {
    expect(answer('tank', 2).hits).toEqual(found('tank').slice(0, 2))
    expect(answer('tank', 2).total).toBe(found('tank').length)
  })
})
