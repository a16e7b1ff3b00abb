import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { PublishableRecord } from '../../src/editions/publishable.ts'
import { tableCsv } from '../../src/exports/csv.ts'
import { wiringTables } from '../../src/exports/tables/wiring-tables.ts'
import { cutLength, listCuts, sumDrums } from '../../src/wiring/cut-list.ts'
import { readWiring } from '../../src/wiring/wiring.ts'
import { anyVehicle, foldVehicle, type MadeCircuit } from './vehicle.ts'

const cutsOf = (circuits: Record<string, MadeCircuit>) =>
  readWiring(foldVehicle({ circuits })).looms.flatMap(({ cuts }) => cuts)

describe('what a wire is cut to', () => {
  // Worked by hand from the allowance as it is printed: 3 % for the lay, 100 mm an end, 100 mm a join, up to the next 10 mm.
  test.each([
    [1, 0, 1.23],
    [4.6, 1, 5.04],
    [0.6, 0, 0.82],
    [5.1, 0, 5.46],
    [0, 0, 0.2],
    [100, 2, 103.4],
  ])('%d m with %d joins is cut to %d m', (length, joins, expected) => {
    expect(cutLength(length, joins)).toBe(expected)
  })

  test('is never short of the length, whatever it is, and never more than a step over the allowance', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 200, noNaN: true }), fc.nat(5), (length, joins) => {
        const exact = length * 1.03 + 0.2 + joins * 0.1
        expect(cutLength(length, joins)).toBeGreaterThanOrEqual(exact - 1e-6)
        expect(cutLength(length, joins)).toBeLessThan(exact + 0.0101)
      }),
    )
  })

  test.each<[string, MadeCircuit, (number | null)[]]>([
    ['in feet as in metres', { length: '12 ft' }, [3.97]],
    ['by the longer end of its tolerance', { length: '2300 mm ± 50 mm' }, [2.63]],
    ['not at all where nobody measured it', { area: '1 mm²' }, [null]],
    ['there and back', { area: '1 mm²', length: '1 m', back: '2.5 mm²', backLength: '0.6 m' }, [1.23, 0.82]],
    ['not when it was taken out', { length: '1 m', state: 'removed' }, []],
    ['when it is planned', { length: '1 m', state: 'planned' }, [1.23]],
  ])('%s', (_, circuit, expected) => {
    expect(cutsOf({ one: { loom: 'left-loom', ...circuit } }).map(({ cutM }) => cutM)).toEqual(expected)
  })
})

describe('the drums of a cut list', () => {
  test('of two wires of one drum are one line, thinner cable first', () => {
    const cuts = cutsOf({
      a: { loom: 'left-loom', area: '2.5 mm²', colour: 'red', length: '1 m' },
      b: { loom: 'left-loom', area: '1 mm²', colour: 'red', length: '2 m' },
      c: { loom: 'left-loom', area: '2.5 mm²', colour: 'red', length: '3 m' },
      d: { loom: 'left-loom', area: '1 mm²', colour: 'red' },
    })
    expect(sumDrums(cuts)).toEqual([
      { size: '1 mm²', colour: 'red', count: 2, totalM: 2.26, unmeasured: 1 },
      { size: '2.5 mm²', colour: 'red', count: 2, totalM: 4.52, unmeasured: 0 },
    ])
  })

  test('add up to the wires, in whole steps, and every wire is in one loom or in none', () => {
    fc.assert(
      fc.property(anyVehicle, vehicle => {
        const { circuits, looms, loose } = readWiring(foldVehicle(vehicle))
        const all = [...looms.flatMap(({ cuts }) => cuts), ...loose]
        const steps = (metres: number): number => Math.round(metres * 100)
        expect(sumDrums(all).reduce((sum, { totalM }) => sum + steps(totalM), 0)).toBe(
          all.reduce((sum, { cutM }) => sum + steps(cutM ?? 0), 0),
        )
        expect(sumDrums(all).reduce((sum, { count }) => sum + count, 0)).toBe(all.length)
        expect(all.map(({ wire }) => wire.number).sort()).toEqual(
          listCuts(circuits)
            .map(({ wire }) => wire.number)
            .sort(),
        )
      }),
      { numRuns: 40, seed: 4 },
    )
  })
})

describe('the tables of the wiring as CSV', () => {
  // Read back by csv-parse, which keeps to RFC 4180.
  const read = (name: string, circuits: Record<string, MadeCircuit>): Record<string, string>[] => {
    const record = foldVehicle({
      circuits,
      connectors: { plug: { pins: { 1: { wire: 'red, thick', to: '=HYPERLINK("x")' } } } },
    })
    const table = wiringTables(record as PublishableRecord).find(known => known.name === name)
    if (table === undefined) throw new Error(`Unexpected \`${name}\`, expected the name of a table`)
    return parse(tableCsv(table), { bom: true, columns: true })
  }

  test('are one set, each once', () => {
    expect(wiringTables(foldVehicle({ circuits: {} }) as PublishableRecord).map(({ name }) => name)).toEqual([
      'circuits',
      'connectors',
      'pins',
      'cut-list',
      'fuse-ways',
      'looms',
      'earth-points',
      'volumes',
    ])
  })

  test('hold a row for each circuit, wire and way', () => {
    const circuits = {
      lamp: {
        feeds: 'a "lamp", rear',
        loom: 'left-loom',
        area: '1 mm²',
        colour: 'GNYE',
        length: '1 m',
        back: '1 mm²',
        backLength: '0.5 m',
      },
    }
    expect(
      read('circuits', circuits).map(row => [row.wire, row.feeds, row['cable area'], row['colour code'], row.length]),
    ).toEqual([['W1', 'a "lamp", rear', '1 mm²', 'GNYE', '1 m']])
    expect(read('cut-list', circuits).map(row => [row.loom, row.wire, row['length m'], row['cut to m']])).toEqual([
      ['Left loom', 'W1R', '0.5', '0.72'],
      ['Left loom', 'W1', '1', '1.23'],
    ])
    expect(
      read('pins', circuits).map(row => [row.wire, row.connector, row.pin, row['wire colour'], row.stands]),
    ).toEqual([['X1/1', 'plug', '1', 'red, thick', 'unmated']])
  })

  test('defuse what a spreadsheet would take for a formula', () => {
    expect(read('circuits', { lamp: { feeds: '=1+1' } })[0]?.feeds).toBe("'=1+1")
    expect(read('pins', {})[0]?.to).toBe('\'=HYPERLINK("x")')
  })
})
