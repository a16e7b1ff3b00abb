import { describe, expect, test } from 'vitest'
import { doubtfulColour, readColour } from '../../src/facts/colour.ts'

/** The two-letter codes of IEC 60757:2021, from memory; that several stand without a mark between is read in its clause 5.1. */
const iec60757 = [
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
] as const

describe('colours of wires', () => {
  test.each(iec60757)('the code %s of IEC 60757 is %s', (code, colour) => {
    expect(readColour(code)).toEqual({ colours: [colour] })
    expect(doubtfulColour(code)).toBeNull()
  })

  test.each([
    ['green/purple', ['green', 'violet']],
    ['gn/vt', ['green', 'violet']],
    ['GN-VT', ['green', 'violet']],
    ['GNYE', ['green', 'yellow']],
    ['RDBU', ['red', 'blue']],
    ['brown with white tracer', ['brown', 'white']],
    ['brown with a white stripe', ['brown', 'white']],
    ['white and black', ['white', 'black']],
    ['light green/black', ['light green', 'black']],
    ['gray', ['grey']],
    ['r/w', ['red', 'white']],
    ['slate', ['grey']],
  ])('`%s` is read as %j', (written, colours) => {
    expect(readColour(written)).toEqual({ colours })
  })

  test.each(['burgundy', '', 'light', 'the thick one', 'constructor'])('`%s` is no colour that is known', written => {
    expect(readColour(written)).toBeNull()
  })

  test.each([
    ['b/w', 'b', ['black', 'blue', 'brown']],
    ['GR', 'gr', ['green', 'grey']],
    ['red/bl', 'bl', ['black', 'blue']],
    ['p', 'p', ['pink', 'purple']],
  ])('the letter in `%s` may be two colours', (written, letters, may) => {
    expect(doubtfulColour(written)).toEqual({ letters, may })
    expect(readColour(written)).toBeNull()
  })

  test.each(['green/purple', 'r/w', 'plan b', 'grey'])('`%s` leaves no doubt', written => {
    expect(doubtfulColour(written)).toBeNull()
  })
})
