import { lusolve } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { circuitVoltages } from '../../src/checker/circuit-voltages.ts'
import voltageDrop from '../../src/checks/voltage-drop.ts'
import { meterPoints } from '../../src/wiring/meter-points.ts'
import { readWiring } from '../../src/wiring/wiring.ts'
import { type Given, makeRecord } from '../checker/record-maker.ts'
import { answerTo } from '../checks/answer-to.ts'

const lamp: Given = {
  'circuit/feeds': 'rear lamp',
  'circuit/load': '10 A ± 0 A',
  'circuit/use': 'lighting',
  'circuit/length': '5 m ± 0 m',
  'circuit/cable.area': '2.5 mm²',
  'circuit/joints': '8 mΩ ± 0 mΩ',
  'circuit/return': 'cable',
  'circuit/return.area': '1.5 mm²',
  'circuit/return.length': '2 m ± 0 m',
  'circuit/earth': 'tail',
  'circuit/fuse.box': 'box',
  'circuit/fuse.way': '3',
  'circuit/fuse.rating': '15 A',
  'fuse-box:box/feed': 'main-feed',
  'circuit:main-feed/cable.area': '16 mm²',
  'circuit:main-feed/length': '1 m ± 0 m',
  'circuit:main-feed/return': 'chassis',
  'circuit:main-feed/joints': '0.4 mΩ ± 0 mΩ',
  'build/nominal': '12 V',
  'build/ambient': '20 °C ± 0 °C',
}

const without = (key: string): Given => Object.fromEntries(Object.entries(lamp).filter(([name]) => name !== key))

function readAll(given: Given) {
  const record = makeRecord(given)
  const wiring = readWiring(record)
  const circuit = wiring.circuits.find(({ id }) => id === 'example')
  const thing = record.circuits.find(({ id }) => id === 'example')
  if (circuit === undefined || thing === undefined) throw new Error('Unexpected record without its circuit')
  const losses = circuitVoltages(record, thing)
  return { losses, points: losses === null ? [] : meterPoints(wiring, circuit, losses) }
}

/** IEC 60228, class 5, in Ω/m. */
const [ofFeed, ofOut, ofBack] = [1.21e-3, 7.98e-3, 13.3e-3]

describe('what a meter reads along the way', () => {
  test('agrees with a nodal solution of the same circuit', () => {
    // Battery 12 V – feed – box – cable and half of the joints – lamp (10 A) – return and half of the joints – battery.
    const [feed, out, back] = [ofFeed * 1 + 0.4e-3, ofOut * 5 + 4e-3, ofBack * 2 + 4e-3].map(ohms => 1 / ohms)
    if (feed === undefined || out === undefined || back === undefined) throw new Error('Unexpected way, expected three')
    // Nodes: the box, the lamp's one side, its other side.
    const conductances = [
      [feed + out, -out, 0],
      [-out, out, 0],
      [0, 0, back],
    ]
    const [box, near, far] = (lusolve(conductances, [12 * feed, -10, 10]) as number[][]).flat()
    const { points, losses } = readAll(lamp)
    const at = (words: RegExp) => points.find(point => words.test(point.words))?.lost.most ?? Number.NaN
    expect(12 - at(/^Box, way 3$/)).toBeCloseTo(box ?? Number.NaN, 9)
    expect(12 - at(/comes in/)).toBeCloseTo(near ?? Number.NaN, 9)
    expect(at(/other side/)).toBeCloseTo(far ?? Number.NaN, 9)
    expect(losses?.current).toBe(10)
  })

  test('adds up to what the check of the drop says', () => {
    const { losses } = readAll(lamp)
    const sum = losses === null ? Number.NaN : losses.feed + losses.out + losses.back + losses.joints
    expect(sum).toBeCloseTo(answerTo(voltageDrop, { given: lamp }).result?.value ?? Number.NaN, 12)
  })

  test('is told station by station, with a range where no note says how far along a stop lies', () => {
    const given = { ...lamp, 'circuit/route': '[box, left sill, rear lamp]', 'circuit/through': '[fog-relay]' }
    const said = readAll(given).points.map(
      ({ words, side, lost }) => `${words}, ${side}: ${lost.least.toFixed(3)} to ${lost.most.toFixed(3)}`,
    )
    expect(said).toEqual([
      'Battery, positive post, out: 0.000 to 0.000',
      'Main feed, out: 0.000 to 0.016',
      'Box, way 3, out: 0.016 to 0.016',
      'Fog relay, out: 0.016 to 0.455',
      'Left sill, out: 0.016 to 0.455',
      'Rear lamp, where the wire comes in, out: 0.455 to 0.455',
      'Rear lamp, its other side, back: 0.306 to 0.306',
      'Tail, bare metal beside the bolt, back: 0.000 to 0.000',
    ])
  })

  test('is narrower where another circuit of known length ends at the stop', () => {
    const given = {
      ...lamp,
      'circuit/route': '[box, left sill, rear lamp]',
      'circuit/loom': 'left-loom',
      'circuit:sill-lamp/route': '[box, left sill]',
      'circuit:sill-lamp/fuse.box': 'box',
      'circuit:sill-lamp/load': '0 A ± 0 A',
      'circuit:sill-lamp/length': '2 m ± 0 m',
      'circuit:sill-lamp/loom': 'left-loom',
      'loom:left-loom/sleeve': '10 mm',
    }
    const sill = readAll(given).points.find(({ words }) => words === 'Left sill')
    // 0.0161 V in the feed, 2 of 5 m of cable at 10 A, with and without half of the joints.
    expect(sill?.lost.least).toBeCloseTo(0.0161 + 0.1596, 9)
    expect(sill?.lost.most).toBeCloseTo(0.0161 + 0.1596 + 0.04, 9)
  })

  test.each(['circuit/load', 'circuit/length', 'circuit/cable.area', 'build/nominal', 'build/ambient'])(
    'is not told without %s',
    key => {
      expect(readAll(without(key)).losses).toBeNull()
    },
  )
})
