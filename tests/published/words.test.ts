import { describe, expect, test } from 'vitest'
import { fitsContact, socketStandard } from '../../src/checker/tables/trailer-sockets.ts'
import trailerSocket from '../../src/checks/trailer-socket.ts'
import { readColour } from '../../src/facts/colour.ts'
import type { Given } from '../checker/record-maker.ts'
import { answersTo } from '../checks/answer-to.ts'

type Row = readonly [contact: string, carries: string, section: number | null]

const seven: readonly Row[] = [
  ['1', 'left direction indicator', 1.5],
  ['2', 'rear fog lamp', 1.5],
  ['3', 'common return', 2.5],
  ['4', 'right direction indicator', 1.5],
  ['5', 'right rear position and plate lamp', 1.5],
  ['6', 'stop lamps', 1.5],
  ['7', 'left rear position and plate lamp', 1.5],
] // ISO 1724:2003, as trade pages print it
const thirteen: readonly Row[] = [
  ...seven.filter(([contact]) => contact !== '3'),
  ['3', 'common return for contacts 1 to 8', 2.5],
  ['8', 'reversing lamp', 1.5],
  ['9', 'permanent supply', 2.5],
  ['10', 'ignition-controlled supply', 2.5],
  ['11', 'return for contact 10', 2.5],
  ['12', 'reserved', null],
  ['13', 'return for contact 9', 2.5],
] // ISO 11446-1:2012, as a connector maker prints it

const socket = (standard: string, rows: readonly Row[]): Given =>
  Object.fromEntries([
    ['trailer-socket/standard', standard],
    ...rows.flatMap(([way, carries, section]) => [
      [`connector/pins.${way}.carries`, carries],
      ...(section === null ? [] : [[`connector/pins.${way}.wire.area`, `${section} mm²`]]),
    ]),
  ])
const offenders = (given: Given): (number | undefined)[] =>
  answersTo(trailerSocket, given).map(({ result }) => result?.value)

const standards = [
  ['ISO 1724', seven],
  ['ISO 11446', thirteen],
] as const

describe.each(standards)('%s', (standard, rows) => {
  const contacts = socketStandard(standard)?.contacts ?? []

  test.each(rows)('contact %s: %s, %s mm²', (contact, carries, section) => {
    const own = contacts.find(one => one.contact === contact)
    expect([own?.section, own !== undefined && fitsContact(own, carries)]).toEqual([section, true])
  })

  test('has no further contact', () => {
    expect(contacts).toHaveLength(rows.length)
  })

  test('a socket wired so has no fault', () => {
    expect(offenders(socket(standard, rows))).toEqual([0])
  })

  test.each(rows.filter(([contact]) => contact !== '12'))(
    'contact %s that carries the wash pump in place of the %s is a fault',
    (contact, _, section) => {
      const wrong = rows.map((row): Row => (row[0] === contact ? [contact, 'wash pump', section] : row))
      expect(offenders(socket(standard, wrong))).toEqual([1])
    },
  )

  test('a thinner wire than the standard is a fault', () => {
    const thin = rows.map((row): Row => (row[0] === '6' ? ['6', row[1], 1] : row))
    expect(offenders(socket(standard, thin))).toEqual([1])
  })
})

test('ISO 1724: a reversing lamp on contact 2, as one trade page has it, is a fault; 12 V is not', () => {
  const second = (carries: string): Given =>
    socket(
      'ISO 1724',
      seven.map((row): Row => (row[0] === '2' ? ['2', carries, 1.5] : row)),
    )
  expect([offenders(second('reversing lamp')), offenders(second('12 V supply'))]).toEqual([[1], [0]])
})

// Informative: a cable by ISO 11446-1:2012 as a connector maker prints it, by ISO 1724:2003 and ISO 3732 as trade pages do.
describe('the cores of a trailer cable, told beside the answer and asked of nobody', () => {
  const coresOf = (standard: string, rows: readonly Row[]): string | undefined =>
    answersTo(trailerSocket, socket(standard, rows))[0]?.working.tables[0]?.row.split('informative: ')[1]

  test.each([
    ['ISO 1724', seven, '1 yellow, 2 blue, 3 white, 4 green, 5 brown, 6 red, 7 black'],
    [
      'ISO 11446',
      thirteen,
      '1 yellow, 2 blue, 3 white, 4 green, 5 brown, 6 red, 7 black, 8 pink, 9 orange, 10 grey, 11 white/black, 13 white/red',
    ],
    ['ISO 3732', seven, '1 yellow, 2 blue, 3 white, 4 green, 5 brown, 6 red, 7 black'],
  ] as const)('%s', (standard, rows, cores) => {
    expect(coresOf(standard, rows)).toBe(cores)
  })
})

// ISO 3732 as two trade pages print its functions; a cable maker's table has 4 × 1.5 and 3 × 2.5 mm².
describe('ISO 3732, the second socket of a caravan', () => {
  const second: readonly Row[] = [
    ['1', 'reversing lamp', 1.5],
    ['2', 'ignition-on supply, battery charge', 2.5],
    ['3', 'return for 2 and 4', 2.5],
    ['4', 'permanent +12 V', 2.5],
    ['5', 'spare', 1.5],
    ['6', 'ignition-on supply for refrigerator', 1.5],
    ['7', 'return for 6', 1.5],
  ]
  const contacts = socketStandard('12S')?.contacts ?? []
  const with_ = (way: string, carries: string): readonly Row[] =>
    second.map((row): Row => (row[0] === way ? [way, carries, row[2]] : row))

  test.each(second)('contact %s: %s fits', (contact, carries) => {
    const own = contacts.find(one => one.contact === contact)
    expect(own !== undefined && fitsContact(own, carries)).toBe(true)
  })

  test('a socket wired so has no fault, in 4 × 1.5 and 3 × 2.5 mm²', () => {
    expect(offenders(socket('ISO 3732', second))).toEqual([0])
    expect(contacts).toHaveLength(7)
  })

  test.each(['1', '3', '4', '6'])('contact %s that carries the wash pump is a fault', way => {
    expect(offenders(socket('12S', with_(way, 'wash pump')))).toEqual([1])
  })

  test.each(['2', '5', '7'])('contact %s, which differs by market, is told and is no fault', way => {
    const [answer] = answersTo(trailerSocket, socket('12S', with_(way, 'wash pump')))
    expect(answer?.result?.value).toBe(0)
    expect(answer?.working.notes).toContainEqual(
      expect.stringMatching(new RegExp(`^Contact ${way} carries .wash pump.; trade pages have: `)),
    )
  })

  test('the allocation of ISO 1724 under the name of ISO 3732, as one shop prints it, has faults', () => {
    expect(offenders(socket('ISO 3732', seven))).toEqual([3])
  })
})

describe('IEC 60757: colours by their codes', () => {
  test.each([
    ['BK', 'black'],
    ['BN', 'brown'],
    ['RD', 'red'],
    ['OG', 'orange'],
    ['YE', 'yellow'],
    ['GN', 'green'],
    ['BU', 'blue'],
    ['VT', 'violet'],
    ['GY', 'grey'],
    ['WH', 'white'],
    ['PK', 'pink'],
    ['GD', 'gold'],
    ['TQ', 'turquoise'],
    ['SR', 'silver'],
  ])('%s is %s', (code, colour) => {
    expect(readColour(code)).toEqual({ colours: [colour] })
  })

  test.each([
    ['GNYE', ['green', 'yellow']],
    ['RDBU', ['red', 'blue']],
  ])('5.1: %s is both, the first first', (code, colours) => {
    expect(readColour(code)).toEqual({ colours })
  })
})
