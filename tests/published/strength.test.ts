import { describe, expect, test } from 'vitest'
import { ways } from '../../src/checker/derived/holder-strength.ts'
import { weakestHolder } from '../../src/checker/derived/restraint.ts'
import bendAllowance from '../../src/checks/bend-allowance.ts'
import boltLoad from '../../src/checks/bolt-load.ts'
import controlCable from '../../src/checks/control-cable.ts'
import filletWeld from '../../src/checks/fillet-weld.ts'
import restraint from '../../src/checks/restraint.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from '../checks/answer-to.ts'
import { mostOf, off, put, resultOf, shareOff } from './put.ts'

/** The whole proof load of a bolt in N: the check's limit is three quarters of it. */
const proofLoad = (of: 'thread' | 'stress-area', written: string, megapascals: number): number =>
  mostOf(boltLoad, { 'bolt/load': '1 N', [`bolt/${of}`]: written, 'bolt/proof-stress': `${megapascals} MPa` }) / 0.75

describe('EN ISO 898-1', () => {
  test.each([
    ['M6', 20.1],
    ['M8', 36.6],
    ['M12', 84.3],
  ])('the stress area of %s is %d mm²', (thread, area) => {
    expect(off(proofLoad('thread', thread, 1), area)).toBeLessThanOrEqual(0.06)
  })

  test.each([
    ['M6', '8.8', 20.1, 580, 11600],
    ['M6', '10.9', 20.1, 830, 16700],
    ['M8', '8.8', 36.6, 580, 21200],
    ['M10', '8.8', 58, 580, 33700],
    ['M10', '10.9', 58, 830, 48100],
    ['M12', '10.9', 84.3, 830, 70000],
  ])('%s of class %s, %d mm² at %d MPa, has a proof load of %d N', (_, __, area, megapascals, newtons) => {
    expect(shareOff(proofLoad('stress-area', `${area} mm²`, megapascals), newtons)).toBeLessThanOrEqual(0.006)
  })

  test.each([
    ['M6', 20.1, 16100],
    ['M8', 36.6, 29200],
    ['M12', 84.3, 67400],
  ])('%s of class 8.8, %d mm² at 800 MPa, breaks at %d N', (_, area, newtons) => {
    expect(shareOff(proofLoad('stress-area', `${area} mm²`, 800), newtons)).toBeLessThanOrEqual(0.006)
  })

  test('a web page takes 600 MPa for M10 of class 8.8; that is for thicker bolts, and would miss the 33 700 N of the table', () => {
    expect(shareOff(proofLoad('thread', 'M10', 600), 33700)).toBeGreaterThan(0.03)
  })
})

describe('a bolt, drawn tight and pulled', () => {
  test('a published calculator: M12 of 8.8 at 70 % of proof, K 0.20, 82 N·m', () => {
    const figures = { K: [0.2, '1'], d: [12, 'mm'], F_p: [0.7 * 580 * 84.3, 'N'] } as const
    expect(off(put(boltLoad.beside?.slice(1), 'Nm', figures), 82)).toBeLessThanOrEqual(0.5)
  })

  test("Shigley's Mechanical Engineering Design, example 8-3: 25 kip on 0.373 in² are 67.02 kpsi", () => {
    const line = { line: `sigma = ${ways.bolt.stress}`, unit: 'MPa', says: ways.bolt.says }
    const found = put([line], 'psi', { F: [25000, 'lbf'], n: [[1, '1']], A_s: [[0.373, 'in2']] })
    expect(off(found / 1000, 67.02)).toBeLessThanOrEqual(0.01)
  })
})

describe('fillet welds of 3/8 in, throat 0.707 of the leg', () => {
  const stress = (pounds: number, inches: number): number =>
    put(filletWeld.formula, 'psi', { F: [pounds, 'lbf'], z: [0.375, 'in'], L: [inches, 'in'] }) / 1000

  test('Faires, Design of Machine Elements, 941: two of 1.18 in each carry 10 kip at 16 ksi', () => {
    expect(shareOff(stress(10000, 2 * 1.18), 16)).toBeLessThanOrEqual(0.005 / 1.18)
  })

  test('Shigley, example 9-2: 4 in of E70 at 21 ksi carry 22.28 kip', () => {
    expect(shareOff(stress(22280, 4), 21)).toBeLessThanOrEqual(0.001)
  })
})

describe('49 CFR 393.102(a): what holds a load of 62.4 kg', () => {
  test.each([
    ['forward', 0.8, 489.5],
    ['rearward', 0.5, 306],
    ['held down, where nothing contains it,', 0.2, 122.4],
  ])('%s at %d of its weight: %d N', (_, share, newtons) => {
    const figures = { m_full: [62.4, 'kg'], a: [share, 'gn'] } as const
    expect(off(put(weakestHolder('stress').formula?.slice(0, 1), 'N', figures), newtons)).toBeLessThanOrEqual(0.1)
  })
})

test('WAC 296-307-42507(3): straps for twice the filled weight of 62.4 kg at a factor of four break at 4895 N or more', () => {
  const figures = { m_full: [62.4, 'kg'], a: [2 * 4, 'gn'] } as const
  expect(off(put(weakestHolder('stress').formula?.slice(0, 1), 'N', figures), 4895)).toBeLessThanOrEqual(0.5)
})

describe('FAA-H-8083-31, a channel of 0.040 in sheet bent round 0.16 in', () => {
  const sheet = { theta: [90, 'deg'], r: [0.16, 'in'], t: [0.04, 'in'], K: [0.447, '1'] } as const
  const allowance = put(bendAllowance.aspects?.allowance?.formula, 'in', sheet)
  const flat = put(bendAllowance.aspects?.flat?.formula, 'in', { ...sheet, a: [1, 'in'], b: [1, 'in'] })
  const setback = (2 + allowance - flat) / 2 // in, of legs of 1.00 in

  test.each([
    ['its setback', 0.2, setback],
    ['what a setback leaves of a leg of 1.00 in', 0.8, 1 - setback],
    ['what two leave of a floor of 2.00 in', 1.6, 2 - 2 * setback],
  ])('%s: %d in', (_, expected, inches) => {
    expect(inches).toBeCloseTo(expected, 9)
  })
})

describe('OpenStax, 9.5: levers, as the travel of a cable', () => {
  test.each([
    ['a nail puller of 45.0 cm and 1.80 cm: 25', '45 cm', 25, 18],
    ['a wheelbarrow of 1.02 m and 7.50 cm: 13.6', '1.02 m', 13.6, 75],
  ])('%s', (_, travel, ratio, millimetres) => {
    const given = { 'control-cable/travel': travel, 'control-cable/lever-ratio': `${ratio}` }
    expect(resultOf(controlCable, given, 'travel')).toBeCloseTo(millimetres, 9)
  })
})

describe('EN 485-2, as a sheet dealer reprints it, O/H111', () => {
  const missingOf = (material: string, more: Given = {}): string =>
    answerTo(restraint, {
      given: {
        'tank/mass': '10 kg',
        'tank/filled-volume': '50 L',
        'tank/contents-density': '0.8 kg/L',
        'strap:tank-straps/width': '30 mm',
        'strap:tank-straps/thickness': '2 mm',
        'strap:tank-straps/material': material,
        ...more,
      },
    })
      .working.needs.map(({ why }) => why)
      .join()
  const plain = 'yield stress of the strap is not written'
  const strap = 'EN 485-2, as a sheet dealer reprints it, has at least'

  test.each([
    ['5083-H111', `${plain}; ${strap} 125 MPa for 5083-O/H111`],
    ['aluminium 5754 O', `${plain}; ${strap} 80 MPa for 5754-O/H111`],
    ['5083', plain],
    ['5083-H32', plain],
    ['stainless', plain],
  ])('a strap of %s without its yield stress is missing it: %s', (material, why) => {
    expect(missingOf(material)).toBe(why)
  })

  test('a yield stress that is written goes before it', () => {
    expect(missingOf('5083-H111', { 'strap:tank-straps/yield-stress': '130 MPa' })).toBe('')
  })

  const radiusOf = (material: string, thickness: string, radius: string): string =>
    answerTo(bendAllowance, {
      given: {
        'bracket/thickness': thickness,
        'bracket/inside-radius': radius,
        'bracket/bend-angle': '90°',
        'bracket/k-factor': '0.42',
        'bracket/material': material,
      },
      aspect: 'allowance',
    }).working.notes.join(' ')

  test.each([
    ['5083-O', '1.0 mm', '1.0 mm', 1, 'no tighter'],
    ['5083-O', '2.0 mm', '1.9 mm', 2, 'tighter and may crack'],
    ['5083-H111', '3.0 mm', '3.0 mm', 3, 'no tighter'],
    ['5083-H111', '8.0 mm', '19 mm', 20, 'tighter and may crack'],
    ['5754-H111', '1.0 mm', '0.5 mm', 0.5, 'no tighter'],
    ['5754-O', '2.0 mm', '1.5 mm', 2, 'tighter and may crack'],
    ['5754-O', '8.0 mm', '16 mm', 16, 'no tighter'],
  ])('%s of %s bent at 90° round %s, at least %d mm: %s', (material, thickness, radius, least, says) => {
    const said = radiusOf(material, thickness, radius)
    expect(said).toContain(
      `has at least ${least} mm inside a bend of 90° in ${Number.parseFloat(thickness)} mm of ${material.slice(0, 4)}-O/H111; this bend is ${says}.`,
    )
  })

  test.each([
    ['5083-O', '4.0 mm'],
    ['6061-T6', '2.0 mm'],
  ])('of %s of %s no row was read, and nothing is said', (material, thickness) => {
    expect(radiusOf(material, thickness, '0.5 mm')).not.toContain('at least')
  })
})

test('a weld in aluminium is given no allowable stress (EN 1999-1-1, from memory: weaker beside the bead): without one it is missing', () => {
  const given = { 'weld/load': '1 kN', 'weld/leg-size': '3 mm', 'weld/length': '50 mm', 'weld/material': '5083-H111' }
  const { verdict, missing, assumed } = answerTo(filletWeld, { given })
  expect([verdict, missing, assumed]).toEqual(['missing', ['example/allowable-stress'], []])
})

test('a torque is only an estimate: K moves it by half, from 0.20 of zinc to 0.30 of plain thread', () => {
  const torque = (finish: string): number =>
    answerTo(boltLoad, {
      given: { 'bolt/load': '1 kN', 'bolt/thread': 'M10', 'bolt/proof-stress': '580 MPa', 'bolt/finish': finish },
    }).working.beside.at(-1)?.value ?? Number.NaN
  expect(torque('plain') / torque('zinc')).toBeCloseTo(1.5, 9)
  expect(torque('oiled') / torque('zinc')).toBeCloseTo(0.9, 9)
})

test('14 CFR 23.689(c) and FAA AC 43.13-1B, 7-149: a fairlead turns a wire by at most 3°', () => {
  expect(controlCable.notes?.join(' ')).toContain('aircraft allow it to turn by 3°')
})
