import { describe, expect, test } from 'vitest'
import { aircraftBundle, aircraftProtection } from '../../src/checker/tables/aircraft-wire.ts'
import cableRating from '../../src/checks/cable-rating.ts'
import { plainReading } from '../../src/quantities/quantity.ts'
import { readOneQuantity } from '../../src/quantities/read-one-quantity.ts'
import { fuseColour } from '../../src/wiring/fuse-colours.ts'
import { terminalMeanings } from '../../src/wiring/terminal-numbers.ts'
import { answerTo } from '../checks/answer-to.ts'

// DIN 72552 as three public lists print it (a dealer in electrics, an encyclopaedia, a workshop supplier), in their words.
describe('DIN 72552', () => {
  test.each([
    ['1', /ignition coil.*distributor.*low voltage/],
    ['4', /ignition.*high voltage/],
    ['15', /switched positive.*ignition switch/],
    ['15a', /output.*ballast resistor/],
    ['17', /glow.*start/],
    ['19', /glow.*preheat/],
    ['30', /battery positive.*direct/],
    ['31', /battery negative/],
    ['31b', /earth.*switch or relay/],
    ['32', /return of a motor/],
    ['33', /main connection of a motor/],
    ['33a', /self-parking/],
    ['49', /flasher, input/],
    ['49a', /flasher, output/],
    ['50', /starter control/],
    ['53', /wiper.*input/],
    ['53a', /wiper.*self-parking/],
    ['53b', /wiper, shunt winding/],
    ['54', /stop lamps/],
    ['54g', /rear fog.*trailer/],
    ['55', /fog lamps/],
    ['56', /headlamps/],
    ['56a', /main beam.*tell-tale/],
    ['56b', /dipped beam/],
    ['57a', /parking lamps/],
    ['58l', /side lamps, left/],
    ['58r', /side lamps, right.*plate lamp/],
    ['61', /alternator/],
    ['l', /indicators, left/],
    ['r', /indicators, right/],
  ])('terminal %s is for what the lists say', (number, meaning) => {
    expect(terminalMeanings[number]).toMatch(meaning)
  })
})

// A workshop's page on relays by the numbering of DIN 72552 and ISO 7588.
describe('relays', () => {
  test.each([
    ['85', /coil, earth end/],
    ['86', /coil, supply end/],
    ['30', /common contact/],
    ['87', /closes/],
    ['87a', /opens/],
  ])('terminal %s', (number, meaning) => {
    expect(terminalMeanings[number]).toMatch(meaning)
  })
})

const colourOf = (rating: string, type: string | null): string | null => {
  const quantity = readOneQuantity(rating, plainReading)
  return quantity === null ? 'not read' : fuseColour(quantity, type)
}

// DIN 72581-3 and ISO 8820-3 as a public list of blade fuses prints them; maxi by another list.
describe('the colours of blade fuses', () => {
  test.each([
    ['2 A', null, 'grey'],
    ['3 A', null, 'violet'],
    ['4 A', null, 'pink'],
    ['5 A', null, 'tan'],
    ['7.5 A', null, 'brown'],
    ['10 A', null, 'red'],
    ['15 A', null, 'blue'],
    ['20 A', 'blade', 'yellow'],
    ['25 A', 'mini blade', 'clear'], // printed: white/clear
    ['30 A', null, 'green'],
    ['40 A', null, 'orange'],
    ['20 A', 'maxi', 'yellow'],
    ['30 A', 'maxi', 'green'],
    ['40 A', 'maxi', 'orange'],
    ['50 A', 'maxi', 'red'],
    ['60 A', 'maxi', 'blue'],
    ['70 A', 'maxi', 'tan'], // printed: tan/brown
    ['80 A', 'maxi', 'clear'],
    ['10000 mA', null, 'red'],
    ['10 A', 'glass', null],
    ['60 A', null, null],
    ['60 A', 'midi', null],
    ['12 A', null, null],
    ['10 W', null, null],
  ])('%s, type %s: %s', (rating, type, colour) => {
    expect(colourOf(rating, type)).toBe(colour)
  })
})

// FAA AC 43.13-1B, change 1, table 11-3, page 11-15, and table 11-9.
describe('the tables of FAA AC 43.13-1B beside an answer', () => {
  const notesOf = (gauge: string, insulation: string): readonly string[] =>
    answerTo(cableRating, {
      given: {
        'circuit/load': '1 A',
        'circuit/cable.area': `${gauge} AWG`,
        'circuit/cable.insulation': insulation,
        'build/nominal': '12 V',
        'build/ambient': '30 °C',
      },
    }).working.notes.filter(note => note.startsWith('For comparison, FAA'))

  test.each([
    ['18', 10, 10],
    ['16', 15, 10],
    ['14', 20, 15],
    ['12', 30, 20],
    ['10', 40, 30],
    ['8', 50, 50],
    ['6', 80, 70],
    ['4', 100, 70],
    ['2', 125, 100],
    ['1', null, 150],
    ['1/0', null, 150],
  ])('table 11-3, %s AWG: breaker %s A, fuse %s A', (gauge, breaker, fuse) => {
    const or = breaker === null ? '' : ` or a breaker of ${breaker} A`
    expect(notesOf(gauge, '60 °C')).toEqual([
      `For comparison, FAA AC 43.13-1B, table 11-3, puts a fuse of ${fuse} A${or} before ${gauge} AWG.`,
    ])
  })

  test.each([
    ['18', 6, 9, 12],
    ['16', 7, 11, 14],
    ['14', 10, 14, 18],
    ['12', 13, 19, 25],
    ['10', 17, 26, 32],
    ['8', 38, 57, 71],
    ['6', 50, 76, 97],
    ['4', 68, 103, 133],
    ['2', 95, 141, 179],
    ['1', 113, 166, 210],
    ['1/0', 128, 192, 243],
    ['2/0', 147, 222, 285],
    ['3/0', 172, 262, 335],
    ['4/0', 204, 310, 395],
  ])('table 11-9, %s AWG at 105, 150 and 200 °C: %s, %s, %s A, with its conditions', (gauge, ...amperes) => {
    const said = ['105 °C', '150 °C', '200 °C'].map(insulation => notesOf(gauge, insulation)[0] ?? '')
    expect(said).toEqual(
      amperes.map(
        ampere =>
          `For comparison, FAA AC 43.13-1B, table 11-9, gives ${gauge} AWG ${ampere} A (70 °C around, a bundle of 33 wires or more (9 of 8 AWG and thicker), a fifth of it loaded, 60 000 ft).`,
      ),
    )
  })

  // Thinner than 33 CFR rates, so no answer of ours shows them.
  test.each([
    ['24', [2.5, 4, 5], null],
    ['22', [3, 5, 6], [5, 5]],
    ['20', [4, 7, 9], [7.5, 5]],
  ])('%s AWG stands in the tables', (gauge, bundle, protection) => {
    expect(aircraftBundle.find(([known]) => known === gauge)?.slice(1)).toEqual(bundle)
    expect(aircraftProtection.find(([known]) => known === gauge)?.slice(1) ?? null).toEqual(protection)
  })
})
