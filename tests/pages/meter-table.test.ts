import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, test } from 'vitest'
import { publish, writeBuild } from '../site/published.ts'

// 10 A through 5 m of 2.5 mm² (IEC 60228, class 5: 7.98 mΩ/m) and 8 mΩ of joints: 0.399 V and 0.08 V, of which half of the joints lies on either side.

const note = `---
title: A dim lamp
date: 2026-03-07
hours: 3
parts:
  box: { name: Fuse box, kind: fuse-box, ways: 4 }
  rear-lamp: { name: Rear lamp, kind: lamp }
  spot: { name: Spot lamp H3, kind: lamp }
circuits:
  rear:
    name: Rear lamp
    feeds: rear-lamp
    use: lighting
    supply: battery
    load: 10 A ± 0 A
    fuse: { box: box, way: 1, rating: 15 A, type: blade }
    cable: { area: 2.5 mm², colour: red/white, insulation: 105 °C }
    length: 5 m ± 0 m
    joints: 8 mΩ ± 0 mΩ
    return: chassis
    earth: tail
    route: [ box, sill, rear-lamp ]
  unmeasured: { name: Horn, use: horn, feeds: horn, load: 8 A, fuse: 10 A, cable: 1.5 mm² purple, return: chassis, earth: tail }
  spots: { name: Spot lamps, feeds: spot, use: lighting, fuse: 10 A, cable: 1.5 mm² white, return: chassis, earth: tail }
  starter: { name: Starter, feeds: starter, duty: starting, use: starting, load: 160 A, cable: 35 mm² red, length: 2 m, joints: 1 mΩ, return: chassis, earth: tail }
connectors:
  plug: { pins: { 1: { wire: 2.5 mm² red/white, circuit: rear, to: lamp }, 2: { wire: 1 mm² blue, circuit: rear, to: left stud, carries: return }, 3: { wire: 1.5 mm² purple } } }
---
At the lamp :measure[11.4 V ± 0.1 V]{of="rear-lamp/voltage" with="multimeter"}.
`
const later = `---
title: Joint made again
date: 2026-03-14
hours: 1
---
Now :measure[11.6 V ± 0.1 V]{of="rear-lamp/voltage" with="multimeter"}.
`

let site = ''
beforeAll(() => {
  site = publish(
    writeBuild({
      'build.md':
        '---\ntitle: Small one\ncurrency: GBP\nelectrical: { nominal: 12 V, ambient: 20 °C ± 0 °C }\nearth-points: { tail: { name: Tail earth } }\n---\n\nA small build.\n',
      'sessions/2026-03-07-dim.md': note,
      'sessions/2026-03-14-again.md': later,
    }),
  )
}, 120_000)

const page = (circuit: string): string => readFileSync(join(site, 'circuits', circuit, 'index.html'), 'utf8')
const words = (html: string): string =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/[\s\u00a0\u202f]+/g, ' ')
    .trim()
const meterOf = (circuit: string): string =>
  /<caption>Voltages along the way[\s\S]*?<\/table>/.exec(page(circuit))?.[0] ?? ''
const rowsOf = (circuit: string): string[] =>
  [...meterOf(circuit).matchAll(/<tr[^>]*>([\s\S]*?)<\/tr>/g)].map(([, cells = '']) => words(cells)).slice(1)

describe('what a meter should read, on the page of a circuit', () => {
  test('stands place by place, from the battery to the lamp and home', () => {
    expect(rowsOf('rear')).toEqual([
      'Battery, positive post 0.00 V 12.00 V',
      'Fuse box, way 1 0.00 V 12.00 V',
      'Sill 0.00 to 0.44 V 11.56 to 12.00 V',
      'Rear lamp, where the wire comes in 0.44 V 11.56 V',
      'Rear lamp, its other side way back 0.04 V 0.04 V',
      'Tail earth, bare metal beside the bolt way back 0.00 V 0.00 V',
    ])
  })

  test('says what the lamp gets, what was assumed, and what was read in the notes, the latest first', () => {
    const said = words(page('rear'))
    expect(said).toMatch(/With all as it should be 11\.52 V of 12\.00 V stand across the load/)
    expect(said).toMatch(/Assumed: [^.]*chassis/)
    expect(said).toMatch(/In the notes: Rear lamp , voltage: 11\.6 V ± 0\.1 V , before that 11\.4 V ± 0\.1 V \./)
  })

  test('adds the rule for lamps and the millivolts across its fuse', () => {
    const said = words(page('rear'))
    expect(said).toContain(
      '13 CCR 1249(c), wants 85 % of the design voltage at a lamp’s socket with the engine running: 10.2 V of 12 V',
    )
    expect(said).toContain('a meter reads about 48 mV with the load on')
  })

  test('warns of what is live', () => {
    expect(words(page('rear'))).toContain('The circuit is live while you measure')
  })

  test.each(['unmeasured', 'starter'])(
    'does not stand where a figure is missing or the battery itself sags: %s',
    circuit => {
      expect([meterOf(circuit), words(page(circuit)).includes('What a meter should read')]).toEqual(['', false])
    },
  )
})

describe('a lamp whose category is written and whose load is not', () => {
  test('is offered what UN R37 rates that category at', () => {
    expect(words(page('spots'))).toContain('No load is written. UN R37 rates H3 at 55 W, 4.58 A at 12 V.')
  })

  test('is offered nothing where a load stands', () => {
    expect(words(page('rear'))).not.toContain('UN R37')
  })
})

const html = (): string => readFileSync(join(site, 'wiring', 'cut-list', 'index.html'), 'utf8')

describe('the cut list for the bench', () => {
  test('lists the wires at connectors that are no circuit’s own run, and no other', () => {
    const table = /<caption>Wires that begin at a connector[\s\S]*?<\/table>/.exec(html())?.[0] ?? ''
    const rows = [...table.matchAll(/<tr[^>]*>([\s\S]*?)<\/tr>/g)].map(([, cells = '']) => words(cells)).slice(1)
    expect(rows).toEqual([
      'X1/2 1 mm² blue BU measure first Plug, way 2 terminal not written Left stud return',
      'X1/3 1.5 mm² purple VT measure first Plug, way 3 terminal not written not written',
    ])
  })

  const sheet = (): string => words(html())

  test('says how each wire is cut: number, cable, length with its allowance, both ends', () => {
    expect(sheet()).toMatch(
      /W\d+ Rear lamp 2\.5 mm² red\/white RDWH 5 m ± 0 m 5\.35 m Fuse box, way 1 terminal not written Rear lamp terminal not written/,
    )
  })
})
