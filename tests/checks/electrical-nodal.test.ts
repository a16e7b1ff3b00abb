import { lusolve } from 'mathjs'
import { describe, expect, test } from 'vitest'
import faultClears from '../../src/checks/fault-clears.ts'
import seriesResistor from '../../src/checks/series-resistor.ts'
import startingDrop from '../../src/checks/starting-drop.ts'
import voltageDrop from '../../src/checks/voltage-drop.ts'
import { answerTo } from './answer-to.ts'

/** A resistance in Ω between two nodes; node 0 is the battery's negative. */
type Branch = readonly [from: number, to: number, ohms: number]
/** A voltage in V that holds a node, or a current in A that is drawn from one node into another. */
interface Network {
  readonly branches: readonly Branch[]
  readonly held: Readonly<Record<number, number>>
  readonly drawn?: readonly (readonly [from: number, to: number, amperes: number])[]
}

/** Voltages of nodes 1 to n against node 0, by Kirchhoff's junction rule at each: mathjs solves the equations. */
function solve(nodes: number, { branches, held, drawn = [] }: Network): number[] {
  const rows = Array.from({ length: nodes }, (_, at) => equation(at + 1, nodes, branches))
  const right = Array.from({ length: nodes }, (_, at) => {
    const out = drawn.filter(([from]) => from === at + 1).reduce((total, [, , amperes]) => total - amperes, 0)
    return drawn.filter(([, to]) => to === at + 1).reduce((total, [, , amperes]) => total + amperes, out)
  })
  for (const [node, volts] of Object.entries(held)) {
    rows[Number(node) - 1] = Array.from({ length: nodes }, (_, at) => (at === Number(node) - 1 ? 1 : 0))
    right[Number(node) - 1] = volts
  }
  return (lusolve(rows, right) as number[][]).map(([volts]) => volts ?? Number.NaN)
}

function equation(node: number, nodes: number, branches: readonly Branch[]): number[] {
  const row = new Array<number>(nodes).fill(0)
  for (const [from, to, ohms] of branches.filter(([one, other]) => one === node || other === node)) {
    const other = from === node ? to : from
    row[node - 1] = (row[node - 1] ?? 0) + 1 / ohms
    if (other > 0) row[other - 1] = (row[other - 1] ?? 0) - 1 / ohms
  }
  return row
}

// The solver itself, before anything is held against it.
describe('the nodal solution solves what OpenStax College Physics prints', () => {
  test('21.1: 1.00, 6.00 and 13.0 Ω side by side on 12.0 V take 14.92 A and are 0.8041 Ω', () => {
    const [far = Number.NaN] = solve(1, {
      held: {},
      branches: [
        [1, 0, 1],
        [1, 0, 6],
        [1, 0, 13],
      ],
      drawn: [[0, 1, 14.92]],
    })
    expect(far).toBeCloseTo(12, 2)
    expect(far / 14.92).toBeCloseTo(0.8041, 3)
  })

  test('21.1: 1.00 Ω before 6.00 and 13.0 Ω side by side: 2.35 V lost, 15.5 W in the 6.00 Ω, 5.11 Ω in all', () => {
    const [, behind = Number.NaN] = solve(2, {
      held: { 1: 12 },
      branches: [
        [1, 2, 1],
        [2, 0, 6],
        [2, 0, 13],
      ],
    })
    expect(Math.abs(12 - behind - 2.35)).toBeLessThanOrEqual(0.006)
    expect(Math.abs(behind ** 2 / 6 - 15.5)).toBeLessThanOrEqual(0.06)
    expect(Math.abs(12 / (12 - behind) - 5.11)).toBeLessThanOrEqual(0.006)
  })

  test('21.3: 18 V through 3.0 Ω and 45 V through 2.0 Ω feed 6.0 Ω with 4.75 A; −3.50 A come from the first', () => {
    const [, , junction = Number.NaN] = solve(3, {
      held: { 1: 18, 2: 45 },
      branches: [
        [1, 3, 3],
        [2, 3, 2],
        [3, 0, 6],
      ],
    })
    expect(junction / 6).toBeCloseTo(4.75, 9)
    expect((18 - junction) / 3).toBeCloseTo(-3.5, 9)
  })

  test('21.1: a wire of 0.400 Ω that carries 15.0 A dims a lamp of 75 W at 120 V to 67.7 W, and the drop found here says so', () => {
    const [, lamp = Number.NaN] = solve(2, { held: { 1: 120 }, branches: [[1, 2, 0.4]], drawn: [[2, 0, 15]] })
    const { result } = answerTo(voltageDrop, {
      given: {
        'circuit/load': '15 A',
        'circuit/length': '0 m',
        'circuit/cable.area': '2.5 mm²',
        'circuit/joints': '0.4 Ω',
        'circuit/return': 'chassis',
        'build/nominal': '120 V',
        'build/ambient': '20 °C',
      },
    })
    expect(120 - (result?.value ?? Number.NaN)).toBeCloseTo(lamp, 9)
    expect(Math.abs((lamp / 120) ** 2 * 75 - 67.7)).toBeLessThanOrEqual(0.06)
  })
})

describe('an independent nodal solution agrees', () => {
  test.each([
    ['0.8 Ω', 0.8, '16 A', 16],
    ['1.0 Ω', 1, '12 A', 12],
    ['2.2 Ω', 2.2, '9 A', 9],
  ])('a fan of %s and %d Ω that draws %s at full speed, as a fixed resistance', (resistance, ohms, load, amperes) => {
    const [, fan = Number.NaN] = solve(2, {
      held: { 1: 12 },
      branches: [
        [1, 2, ohms],
        [2, 0, 12 / amperes],
      ],
    })
    const { result, working } = answerTo(seriesResistor, {
      given: {
        'resistor/resistance': resistance,
        'resistor/power-rating': '100 W',
        'resistor/feeds': 'cooling-fan',
        'circuit:fan/feeds': 'cooling-fan',
        'circuit:fan/load': load,
        'build/nominal': '12 V',
      },
    })
    expect(result?.value).toBeCloseTo((12 - fan) ** 2 / ohms, 9)
    expect(working.beside.find(({ unit }) => unit === 'V')?.value).toBeCloseTo(fan, 9)
  })

  test('a starter between battery, lead, earth lead and joints', () => {
    const lead = 0.000554 * 2.3 // IEC 60228, class 5, 35 mm², Ω/m at 20 °C
    const earth = 0.000554 * 1.1
    const joints = 0.0008
    const [post = 0, shell = 0] = solve(3, {
      held: { 3: 12 },
      branches: [
        [3, 1, lead + joints / 2],
        [2, 0, earth + joints / 2],
      ],
      drawn: [[1, 2, 160]],
    })
    const given = {
      'circuit/duty': 'starting',
      'circuit/load': '160 A',
      'circuit/cable.area': '35 mm²',
      'circuit/length': '2.3 m',
      'circuit/return': 'cable',
      'circuit/return.area': '35 mm²',
      'circuit/return.length': '1.1 m',
      'circuit/joints': '0.8 mΩ',
      'build/nominal': '12 V',
      'build/ambient': '20 °C',
    }
    const dropOf = (aspect: string): number => answerTo(startingDrop, { given, aspect }).result?.value ?? Number.NaN
    expect(dropOf('supply')).toBeCloseTo(12 - post, 9)
    expect(dropOf('earth')).toBeCloseTo(shell, 9)
    expect(dropOf('both')).toBeCloseTo(12 - (post - shell), 9)
  })

  test('a short behind battery, feed, box, hot cable and chassis', () => {
    const hot = 1 + 0.00393 * 85
    const [battery, feed, cable] = [5.4 / 540, 0.00121 * hot * 2 + 0.0012, 0.00798 * hot * 4.8 + 0.006]
    const [, atBox = 0, atFault = 0] = solve(4, {
      held: { 4: 12 },
      branches: [
        [4, 1, battery],
        [1, 2, feed],
        [2, 3, cable],
        [3, 0, 0.005],
      ],
    })
    const { result } = answerTo(faultClears, {
      given: {
        'circuit/fuse.rating': '15 A',
        'circuit/fuse.box': 'front-box',
        'circuit/cable.area': '2.5 mm²',
        'circuit/cable.insulation': '105 °C',
        'circuit/length': '4.8 m',
        'circuit/joints': '6 mΩ',
        'circuit/return': 'chassis',
        'fuse-box:front-box/feed': 'main-feed',
        'circuit:main-feed/cable.area': '16 mm²',
        'circuit:main-feed/cable.insulation': '105 °C',
        'circuit:main-feed/length': '2.0 m',
        'circuit:main-feed/joints': '1.2 mΩ',
        'circuit:main-feed/return': 'chassis',
        'build/battery.cold-cranking': '540 A',
        'build/nominal': '12 V',
      },
    })
    expect(result?.value).toBeCloseTo((atBox - atFault) / cable, 6)
  })
})
