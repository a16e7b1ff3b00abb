import { describe, expect, test } from 'vitest'
import { whatIfEach } from '../../src/checker/circuit-choices.ts'
import { loadChecks } from '../../src/checker/load-checks.ts'
import { runChecks } from '../../src/checker/run-checks.ts'
import { readWiring } from '../../src/wiring/wiring.ts'
import { foldTexts } from '../record/read-texts.ts'
import { placedDrawings, plainDrawings } from './all-drawings.ts'
import { faultsOf, geometryOf } from './geometry.ts'
import { foldVehicle, type MadeCircuit } from './vehicle.ts'

const checks = await loadChecks('src/checks')
const about = [
  'connector-map',
  'fuse-way',
  'unfused',
  'return-path',
  'colour-clash',
  'fuse-carries-load',
  'voltage-drop',
]
const electrical = checks.filter(({ id }) => about.includes(id))

const build = `---
title: Test vehicle
electrical: { nominal: 12 V, ambient: 30 °C }
looms: { left-loom: { name: Left loom } }
earth-points: { nose: { name: Nose } }
---
`
const parts = `parts:
  box: { name: "Front box", kind: fuse-box, ways: 4 }
  lamp: { name: "Rear lamp", kind: lamp }
`
const fold = (front: string, later = '') =>
  foldTexts({
    build,
    sessions: {
      '2026-01-01-wiring.md': `---\ntitle: Wiring\ndate: 2026-01-01\n${parts}${front}---\n`,
      ...(later === '' ? {} : { '2026-02-01-later.md': `---\ntitle: Later\ndate: 2026-02-01\n${later}---\n` }),
    },
  })

const whole =
  'use: lighting, cable: { area: 1 mm², colour: red, insulation: 105 °C }, length: 2 m, return: chassis, earth: nose'

/** What each note leads to: findings by rule and place, verdicts that are not passed, and words of the drawings. */
const cases: readonly {
  readonly said: string
  readonly front: string
  readonly later?: string
  readonly findings?: readonly string[]
  /** Sentences beside the circuit in the schedule. */
  readonly doubts?: readonly string[]
  readonly verdicts: readonly string[]
  readonly drawn: readonly RegExp[]
}[] = [
  {
    said: 'a circuit without a load',
    front: `circuits:\n  rear: { feeds: lamp, fuse: { box: box, way: 1, rating: 5 A }, ${whole} }\n`,
    verdicts: [
      'fuse-carries-load rear: missing, Not in the record: circuit:rear/load.',
      'fuse-way box/1: missing, Not in the record: circuit:rear/load.',
      'voltage-drop rear: missing, Not in the record: circuit:rear/load.',
    ],
    drawn: [/load not written/],
  },
  {
    said: 'a fuse in a way that the box has not',
    front: `circuits:\n  rear: { feeds: lamp, load: 2 A, fuse: { box: box, way: 9, rating: 5 A }, ${whole} }\n`,
    verdicts: [
      'fuse-way box/9: fail, 2.00 ± 0.58 A against 3.75 A at most: 1.75 A to spare. circuit:rear names a way that its box, of 4 ways, has not.',
    ],
    drawn: [/no such way/],
  },
  {
    said: 'a fuse in a box that nobody declared',
    front: `circuits:\n  rear: { feeds: lamp, load: 2 A, fuse: { box: bix, way: 1, rating: 5 A }, ${whole} }\n`,
    findings: ['unknown-target at line 8, mend box'],
    doubts: ['There is no fuse box “bix”.'],
    verdicts: [],
    drawn: [/bix, way 1/i],
  },
  {
    said: 'a way used twice, with two fuses',
    front: `circuits:\n  rear: { feeds: lamp, load: 2 A, fuse: { box: box, way: 1, rating: 5 A }, ${whole} }\n  plate: { feeds: plate lamp, load: 1 A, fuse: { box: box, way: 1, rating: 7.5 A }, ${whole} }\n`,
    verdicts: [
      'fuse-way box/1: fail, 3.00 ± 0.82 A against 3.75 A at most: 0.75 A to spare. circuit:rear names a fuse of 5 A beside one of 7.5 A.',
    ],
    drawn: [/shared/, /5 A/, /7\.5 A/],
  },
  {
    said: 'a pin that meets a way which another pin meets',
    front:
      'connectors:\n  plug: { mates: socket, pins: { 1: { wire: 1 mm² red, carries: lamp, meets: 1 }, 2: { wire: 1 mm² blue, carries: lamp, meets: 1 } } }\n  socket: { mates: plug, pins: { 1: { wire: 1 mm² green, carries: lamp } } }\n',
    verdicts: ['connector-map plug: fail, 1 found.'],
    drawn: [/doubled|twice/],
  },
  {
    said: 'a pin whose mate says that it meets another',
    front:
      'connectors:\n  plug: { mates: socket, pins: { 1: { wire: 1 mm² red, carries: lamp, meets: 1 } } }\n  socket: { mates: plug, pins: { 1: { wire: 1 mm² green, carries: lamp, meets: 2 } } }\n',
    verdicts: ['connector-map plug: pass, None.'],
    drawn: [/written to meet 2/],
  },
  {
    said: 'two circuits that supply each other',
    front: `circuits:\n  rear: { feeds: lamp, load: 2 A, supply: plate, ${whole} }\n  plate: { feeds: plate lamp, load: 1 A, supply: rear, ${whole} }\n`,
    verdicts: ['unfused vehicle: fail, 2 found.'],
    drawn: [/Rear lamp/],
  },
  {
    said: 'a box that is fed by way of itself',
    front: `  far: { name: "Far box", kind: fuse-box, ways: 2, feed: rear }\ncircuits:\n  rear: { feeds: far, fuse: { box: far, way: 1, rating: 5 A }, ${whole} }\n`,
    verdicts: [
      'fuse-carries-load rear: missing, Not in the record: far/feed.',
      'fuse-way far/1: missing, Not in the record: far/feed.',
      'voltage-drop rear: missing, Not in the record: far/feed.',
    ],
    drawn: [/Far box/],
  },
  {
    said: 'a connector that is its own mate',
    front: 'connectors:\n  plug: { mates: plug, pins: { 1: { wire: 1 mm² red, carries: lamp } } }\n',
    verdicts: [],
    drawn: [/1 mm² red/],
  },
  {
    said: 'a colour that nobody knows',
    front: `circuits:\n  rear: { feeds: lamp, load: 2 A, fuse: 5 A, ${whole.replace('colour: red', 'colour: heliotrope/fog')} }\n`,
    verdicts: [],
    drawn: [/“heliotrope\/fog”, no known colour/],
  },
  {
    said: 'a circuit that feeds a part which was taken off',
    front: `circuits:\n  rear: { feeds: lamp, load: 2 A, fuse: 5 A, ${whole} }\n`,
    later: 'parts:\n  lamp: { action: removed }\n',
    doubts: ['It feeds Rear lamp, which is not on the vehicle.'],
    verdicts: [],
    drawn: [/Rear lamp/],
  },
  {
    said: 'a circuit of which only the name is written',
    front: 'circuits:\n  rear: { name: Rear }\n',
    verdicts: ['return-path vehicle: fail, 1 found.', 'unfused vehicle: fail, 1 found.'],
    drawn: [/what it feeds is not written/i],
  },
]

describe('what is badly written leads to findings or verdicts, and is drawn', () => {
  test.each(cases)('$said', async ({ front, later, findings = [], doubts = [], verdicts, drawn }) => {
    const { record, findings: found } = fold(front, later)
    expect(
      found.map(({ rule, line, mend }) => `${rule} at line ${line}${mend == null ? '' : `, mend ${mend}`}`),
    ).toEqual(findings)
    const answers = runChecks(record, electrical)
      .filter(({ verdict, check }) => verdict !== 'pass' || check === 'connector-map')
      .map(({ check, subject, verdict, working }) => `${check} ${subject}: ${verdict}, ${working.says}`)
    expect(answers.map(text => text.replaceAll('\u202f', ' '))).toEqual(verdicts)
    expect(readWiring(record).circuits.flatMap(circuit => circuit.doubts)).toEqual(expect.arrayContaining([...doubts]))
    const drawings = [...plainDrawings(record), ...(await placedDrawings(record))]
    const words = drawings.flatMap(({ says }) => says).join('\n')
    for (const pattern of drawn) expect(`${words}\n${drawings.map(({ svg }) => svg).join('\n')}`).toMatch(pattern)
    expect(drawings.flatMap(({ svg }) => faultsOf(geometryOf(svg)))).toEqual([])
  })
})

describe('a big vehicle', () => {
  const circuit = (index: number): MadeCircuit => ({
    feeds: `lamp ${index}`,
    load: '5 W',
    use: 'lighting',
    supply: 'battery',
    box: index % 2 === 0 ? 'front-box' : 'rear-box',
    way: String((index % 8) + 1),
    rating: '5 A',
    area: '1 mm²',
    colour: 'red/blue',
    length: '3 m',
    back: 'chassis',
    earth: 'nose',
  })

  test('of 400 circuits is asked what if, each circuit with its next sizes', () => {
    const record = foldVehicle({
      circuits: Object.fromEntries(Array.from({ length: 400 }, (_, index) => [`c-${index}`, circuit(index)])),
    })
    const some = checks.filter(({ id }) => id === 'voltage-drop' || id === 'fuse-carries-load')
    const start = performance.now()
    const choices = whatIfEach(record, some, [])
    expect([choices.size, choices.get('c-399')?.length]).toEqual([400, 8])
    expect(performance.now() - start).toBeLessThan(20_000) // a machine with ten other jobs included; alone some two seconds
  })
})
