import { describe, expect, test } from 'vitest'
import { countTerminals } from '../../src/wiring/count-terminals.ts'
import { terminalNumbersIn } from '../../src/wiring/terminal-numbers.ts'
import { readWiring } from '../../src/wiring/wiring.ts'
import { foldTexts } from '../record/read-texts.ts'

const build = `---
title: Test vehicle
earth-points: { tail: { name: Tail, terminal: M6 ring } }
---
`
const note = (front: string, body = ''): string => `---\ntitle: Wiring\ndate: 2026-01-01\n${front}---\n${body}`
const fold = (front: string, body = '') => foldTexts({ build, sessions: { '2026-01-01-wiring.md': note(front, body) } })

const lamp = (more: string): string => `parts:
  box: { kind: fuse-box, ways: 4, terminal: "6.3 mm blade" }
  relay: { kind: relay, terminal: "9.5 mm blade" }
  lamp: { kind: lamp, terminal: 4 mm bullet }
circuits:
  rear: { feeds: lamp, fuse: { box: box, way: 1 }, through: [relay], cable: 1 mm² red, length: 2 m, return: { area: 1.5 mm², length: 1 m }, earth: tail${more} }
`

describe('what is crimped on the ends of a wire', () => {
  test.each([
    [
      'is what box, load and earth point ask for',
      '',
      { from: '6.3 mm blade', to: '4 mm bullet' },
      { from: '4 mm bullet', to: 'M6 ring' },
    ],
    [
      'is what the circuit says, end by end',
      ', terminals: { from: "2.8 mm blade", to: M4 ring, earth: M8 ring }',
      { from: '2.8 mm blade', to: 'M4 ring' },
      { from: 'M4 ring', to: 'M8 ring' },
    ],
  ])('%s', (_, more, out, back) => {
    const { record, findings } = fold(lamp(more))
    expect(findings).toEqual([])
    const [circuit] = readWiring(record).circuits
    expect([circuit?.feed.terminals, circuit?.back?.terminals]).toEqual([out, back])
  })

  test('nothing stands where no note tells', () => {
    const { record } = fold('circuits:\n  rear: { feeds: a lamp, cable: 1 mm² red }\n')
    expect(readWiring(record).circuits[0]?.feed.terminals).toEqual({ from: null, to: null })
  })

  test('of a way is as the way says, else as its connector does, else as the connector’s part', () => {
    const { record, findings } = fold(
      `parts:\n  socket: { kind: connector, ways: 3, terminal: 1.5 mm pin }\nconnectors:\n  plug: { terminal: 2.8 mm tab, pins: { 1: { wire: red, terminal: 6.3 mm tab }, 2: { wire: blue } } }\n`,
      `\n:::connector{#socket}\n\n| Pin | Wire | Terminal |\n|---|---|---|\n| 1 | 1 mm² red | 4.8 mm tab |\n| 2 | 1 mm² blue | |\n\n:::\n`,
    )
    expect(findings).toEqual([])
    const pins = readWiring(record).pairs.flatMap(({ left }) => left.pins)
    expect(pins.map(({ connector, pin, terminal }) => `${connector} ${pin}: ${terminal}`).sort()).toEqual([
      'plug 1: 6.3 mm tab',
      'plug 2: 2.8 mm tab',
      'socket 1: 4.8 mm tab',
      'socket 2: 1.5 mm pin',
    ])
  })

  test('is counted by sort and size: each end, both sides of a relay, each way of a connector', () => {
    const pins = 'connectors:\n  plug: { pins: { 1: { wire: 1 mm² red, circuit: rear, terminal: 2.8 mm tab } } }\n'
    const { loose, pairs } = readWiring(fold(`${lamp('')}${pins}`).record)
    const counts = countTerminals(
      loose,
      pairs.flatMap(({ left }) => left.pins),
    )
    expect(counts.map(({ terminal, size, count }) => `${count} × ${terminal} on ${size}`)).toEqual([
      '1 × 2.8 mm tab on 1 mm²',
      '1 × 4 mm bullet on 1 mm²',
      '1 × 4 mm bullet on 1.5 mm²',
      '1 × 6.3 mm blade on 1 mm²',
      '2 × 9.5 mm blade on 1 mm²',
      '1 × M6 ring on 1.5 mm²',
    ])
  })

  test.each([
    [lamp(', terminals: { form: M4 ring }'), 'unknown-key', '`form`', 'from'],
    [lamp(', terminal: M4 ring'), 'unknown-key', '`terminal`', 'terminals'],
    ['connectors:\n  plug: { terminl: M4 ring, pins: { 1: { wire: red } } }\n', 'unknown-key', '`terminl`', 'terminal'],
    [
      'connectors:\n  plug: { pins: { 1: { wire: red, terminals: M4 ring } } }\n',
      'unknown-key',
      '`terminals`',
      'terminal',
    ],
  ])('a misspelt key is a finding with its mend (%#)', (front, rule, said, mend) => {
    const { findings } = fold(front)
    expect(findings.map(finding => [finding.rule, finding.message.includes(said), finding.mend])).toEqual([
      [rule, true, mend],
    ])
  })
})

describe('numbers of terminals in words', () => {
  test.each([
    ['fan relay, contact 87', ['87']],
    ['fan relay, coil 85', ['85']],
    ['terminal 30, from the battery', ['30']],
    ['terminals 85 and 86', ['85', '86']],
    ['KL 15', ['15']],
    ['58L and 58R', ['58l', '58r']],
    ['stalk 49a', ['49a']],
    ['terminal L', ['l']],
    ['31b', ['31b']],
  ])('`%s` has %j', (text, numbers) => {
    expect(terminalNumbersIn(text)).toEqual(numbers)
  })

  test.each([
    'way 30',
    '15 A',
    '1 mm² red',
    'left lamp, 55 W',
    'terminal 29',
    'contact 3 of 4',
    'L',
    '2026-03-07',
    '12v',
    'bolt 50',
  ])('`%s` has none', text => {
    expect(terminalNumbersIn(text)).toEqual([])
  })
})
