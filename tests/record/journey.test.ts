import { expect, test } from 'vitest'
import { quantityAt, resolvePath, wordsAt } from '../../src/record/lookups.ts'
import { foldTexts, type Texts, wordsAtPlace } from './read-texts.ts'

const texts: Texts = {
  build: `---
title: Sandpiper
currency: GBP
rates: { EUR: 0.86 }
electrical:
  nominal: 12 V
  zones: { engine-bay: 70 °C }
donors:
  corvane: { name: "Corvane 1600 hatchback", cost: "£650" }
systems:
  electrical: Electrical
  fuel: Fuel
requirements:
  fuel-tank/ground-clearance: at least 200 mm
  left-drive-shaft/length: 612 mm to 618 mm
editions:
  public: { withhold: [cost] }
---
A beach utility.
`,
  sessions: {
    '2026-02-21-old-tank.md': `---
title: The tank as found
date: 2026-02-21
parts:
  old-tank: { from: corvane, system: fuel }
---
- [ ] seal the engine hatch :job{#seal-hatch before=road}
- [ ] drain the old tank
`,
    '2026-03-07-tank.md': `---
title: Tank in for size
date: 2026-03-07
hours: 6.5
parts:
  fuel-tank:
    kind: tank
    system: fuel
    action: trial-fitted
    cost: €200
    mass: 11.5 kg
    replaces: old-tank
  aux-fuses: { kind: fuse-box, system: electrical, ways: 4, cost: £18.50 }
measurements:
  fuel-tank: { length: 860 mm ± 2 mm }
circuits:
  fuel-pump:
    feeds: lift pump
    load: 7 A
    fuse: { box: aux-fuses, way: 3, rating: 15 A }
    cable: 2.5 mm² green/purple
    return: chassis
    earth: left-rear
    loom: body-loom
    zone: engine-bay
connectors:
  stalk-switch:
    pins:
      31b: { wire: 0.75 mm² black, carries: earth }
spend:
  - { what: primer, cost: £31.40, system: fuel }
temporary:
  - { id: taped-lens, what: taped lens, before: road }
---
The tank is :measure[861 mm]{of="fuel-tank/length" with="steel tape"} long; it draws :measure[6.8 A]{of="fuel-pump/load"}.

- [x] drain the old tank
`,
    '2026-03-14-fitted.md': `---
title: Tank in for good
date: 2026-03-14
parts:
  fuel-tank: { action: fitted, cost: €190 }
measurements:
  fuel-tank: { length: 33.9 mm }
clears: [ taped-lens ]
closes: [ seal-hatch, seal-hach ]
---
See [the tank](part:feul-tank).
`,
  },
}

const { record, findings } = foldTexts(texts)

test('notes become a record in which every figure leads back to its words', () => {
  const tank = record.parts.find(({ id }) => id === 'fuel-tank')
  expect(tank?.properties.length?.map(held => wordsAtPlace(texts, held.place))).toEqual([
    '860 mm ± 2 mm',
    '861 mm',
    '33.9 mm',
  ])
  expect(
    record.measurements.map(
      ({ path, quantity, superseded }) => `${path} ${quantity.text}${superseded ? ' superseded' : ''}`,
    ),
  ).toEqual([
    'aux-fuses/ways 4',
    'circuit:fuel-pump/load 6.8 A',
    'fuel-tank/length 860 mm ± 2 mm superseded',
    'fuel-tank/length 861 mm superseded',
    'fuel-tank/length 33.9 mm',
    'fuel-tank/mass 11.5 kg',
  ])
})

test('the parts stand as the notes left them', () => {
  expect(record.parts.map(({ id, state, onVehicle, donor }) => `${id} ${state} ${onVehicle} ${donor}`)).toEqual([
    'aux-fuses fitted true null',
    'fuel-tank fitted true null',
    'old-tank removed false corvane',
  ])
})

test('the wiring is what the circuits and connectors say', () => {
  const [pump] = record.circuits
  expect(
    pump === undefined ? null : [quantityAt(pump, 'load')?.value.text, wordsAt(pump, 'cable.colour')?.value.text],
  ).toEqual(['6.8 A', 'green/purple'])
  expect(record.fuseBoxes.map(({ used }) => used.map(({ way, circuits }) => `${way}:${circuits}`).join(' '))).toEqual([
    '1: 2: 3:fuel-pump 4:',
  ])
  expect([record.looms, record.earthPoints, record.connectors].map(list => list.map(({ id }) => id))).toEqual([
    ['body-loom'],
    ['left-rear'],
    ['stalk-switch'],
  ])
  expect(record.connectors[0]?.pins.map(({ pin, properties }) => [pin, Object.keys(properties)])).toEqual([
    ['31b', ['wire.area', 'wire.colour', 'carries']],
  ])
})

test('money comes to its exact sum: 650 + 190 × 0.86 + 18.50 + 31.40, the later price in place of the earlier', () => {
  const { donors, parts, spend, returned, total, onVehicle, bySystem, bySession } = record.ledger
  expect({ donors, parts, spend, returned, total, onVehicle, bySystem, bySession }).toEqual({
    donors: '650.00',
    parts: '181.90',
    spend: '31.40',
    returned: '0.00',
    total: '863.30',
    onVehicle: '181.90',
    bySystem: { electrical: '18.50', fuel: '194.80' },
    bySession: { '2026-03-07-tank': '221.90', '2026-03-14-fitted': '-8.60' },
  })
})

test('jobs and fixes are open or closed as the notes tick them', () => {
  expect(record.jobs.map(({ id, open, before }) => [id, open, before])).toEqual([
    ['seal-hatch', false, 'road'],
    ['drain-the-old-tank', false, null],
  ])
  expect(record.temporary.map(({ id, open }) => [id, open])).toEqual([['taped-lens', false]])
})

test('requirements know their thing or that there is none yet, and `full` is always there', () => {
  expect(record.requirements.map(({ path, subject, value }) => [path, subject?.id ?? null, value.text])).toEqual([
    ['fuel-tank/ground-clearance', 'fuel-tank', 'at least 200 mm'],
    ['left-drive-shaft/length', null, '612 mm to 618 mm'],
  ])
  expect(record.editions).toEqual([
    { name: 'public', withhold: ['cost'] },
    { name: 'full', withhold: [] },
  ])
  expect(record.systems.map(({ id, name }) => [id, name])).toEqual([
    ['electrical', 'Electrical'],
    ['fuel', 'Fuel'],
  ])
  expect(record.donors.map(({ id, name }) => [id, name])).toEqual([['corvane', 'Corvane 1600 hatchback']])
  expect(quantityAt(record.settings, 'zones.engine-bay')?.value.text).toBe('70 °C')
  expect(resolvePath(record, 'fuel-pump/load')?.subject.kind).toBe('circuit')
})

test('a figure named by a bare path bears the path that it turned out to be', () => {
  const paths = record.sessions[1]?.figures.flatMap(({ path, quantity }) => (quantity.text === '6.8 A' ? [path] : []))
  expect(paths).toEqual(['circuit:fuel-pump/load'])
})

test('what is wrong is told once, at its words', () => {
  expect(findings.map(found => `${found.rule} \`${wordsAtPlace(texts, found)}\` ${found.mend}`)).toEqual([
    'unit-slip `33.9 mm` null',
    'no-closing `seal-hach` seal-hatch',
    'unknown-target `[the tank](part:feul-tank)` fuel-tank',
  ])
})
