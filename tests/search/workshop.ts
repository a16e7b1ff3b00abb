import { recordAddresses } from '../../src/pages/record-addresses.ts'
import type { Hit } from '../../src/search/hit.ts'
import { indexRecord } from '../../src/search/index-record.ts'
import { openIndex, search } from '../../src/search/query.ts'
import type { SearchIndex } from '../../src/search/search-index.ts'
import { foldTexts } from '../record/read-texts.ts'

const build = `---
title: Sandpiper
started: 2026-01-10
currency: GBP
approximate: 5 %
systems: { fuel: Fuel, electrical: Electrical }
requirements: { fuel-tank/ground-clearance: at least 200 mm }
---
A beach utility on a shortened floorpan.
`

const tank = `---
title: Tank in for size
date: 2026-03-07
parts:
  fuel-tank: { name: "Stainless tank, made to a drawing", kind: tank, system: fuel, action: trial-fitted, fits: with-work, from: sheet-metal shop, cost: £184, why: the corner fouls the roll bar foot }
  tank-bolts: { name: Tank strap bolts, kind: bolt, system: fuel, thread: M8 x 1.25 }
measurements:
  fuel-tank: { width: 380 mm ± 2 mm }
circuits:
  radiator-fan: { feeds: the fan behind the grille, use: other, load: 15 A, fuse: 25 A, cable: 2.08 mm² green/purple }
connectors:
  fan-plug: { name: Fan plug, pins: { 31b: { wire: 2.5 mm² black, carries: fan return } } }
---
The tank is :measure[860 mm ± 2 mm]{of="fuel-tank/length" with="steel tape"} long, and the new tank took sixty-four litres or so.
A 25 A breaker lies in the drawer.

The hatch is 1.2 m wide. Nothing else was touched.

- [ ] seal the engine hatch :job{#seal-hatch before=road}
`

const later = `---
title: Second look at the tank
date: 2026-03-14
measurements:
  fuel-tank: { length: 862 mm ± 2 mm }
  hatch: { ground-clearance: 205 mm }
---
It clears the sand by about 8 in, and a second can held 64 litres.

The batteries stand under the seat, clipped with M8 studs.[^why]

## Odd corners

Dust, mostly.

[^why]: A loose one sparks.
`

const { record } = foldTexts({ build, sessions: { '2026-03-07-tank.md': tank, '2026-03-14-second.md': later } })

/** A small build, read, folded and indexed as the program does it. */
export const workshopIndex: SearchIndex = indexRecord({ ...record, edition: 'full' }, recordAddresses)
const open = openIndex(workshopIndex)

/** The hits of words, each as `kind name: figure or words`. */
export function told(asked: string): string[] {
  return found(asked).map(({ kind, path, text }) => `${kind} ${path === null ? text : `${path}: ${text}`}`)
}

export function found(asked: string): readonly Hit[] {
  return search(open, asked).hits
}

export const answer = (asked: string, limit?: number) => search(open, asked, limit)
