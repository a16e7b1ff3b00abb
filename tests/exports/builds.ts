import { publicationOf, readBuildFolder } from '../../src/build.ts'
import type { Publication } from '../../src/editions/publication.ts'
import { root, scratch, writeFiles } from '../commands/run-oddleg.ts'

/** A build folder read, folded, checked and published as `full`. */
export async function publicationFrom(folder: string): Promise<Publication> {
  const built = await readBuildFolder(folder, { today: '2026-12-31' })
  if ('trouble' in built) throw new Error(built.trouble)
  return publicationOf(built, 'full')
}

let demoRead: Promise<Publication> | null = null

/** The demo, read once a file of tests. */
export function demo(): Promise<Publication> {
  demoRead ??= publicationFrom(root)
  return demoRead
}

/** The publication of notes given by their paths within `content/`. */
export function publicationOfTexts(texts: Readonly<Record<string, string>>): Promise<Publication> {
  const folder = scratch('exports')
  writeFiles(folder, Object.fromEntries(Object.entries(texts).map(([path, text]) => [`content/${path}`, text])))
  return publicationFrom(folder)
}

export const pondBuild = `---
title: Pond skimmer
currency: GBP
rates: { EUR: 0.86 }
donors: { marlow: { name: "Marlow 4 pick-up", cost: £300 } }
systems: { hull: Hull, drive: Drive }
electrical: { nominal: 12 V, ambient: 30 °C }
---
A flat thing.
`

/** One note with every sort of thing, and words that would trip a careless writer of tables. */
export const pondNote = `---
title: "=First, \\"day\\""
date: 2026-03-07
hours: 3.25
parts:
  keel:
    name: "@keel, oak"
    system: hull
    action: fitted
    from: "-the barn"
    cost: €12.50
    qty: 3
    mass: 4.2 kg
    why: "+it floats, mostly"
  screw: { name: Screw, system: drive, action: rejected, from: chandler, cost: £9.95, why: split }
  seat: { system: hull, from: marlow, action: sold, cost: £20 }
spend: [ { what: varnish, cost: £7.40, system: hull, from: chandler } ]
measurements:
  keel: { length: { value: 2.4 m ± 5 mm, with: tape }, depth: 6 to 7 in, bolt-size: M8 × 1.25 }
circuits:
  pump:
    system: drive
    use: pump
    load: 7 A
    cable: { area: 2.5 mm², colour: green/purple }
    length: 4.8 m
    return: chassis
    route: [ battery, locker, pump ]
connectors:
  plug: { name: Plug, mates: socket, pins: { 1: { wire: 1.5 mm² red, to: pump, carries: feed, circuit: pump } } }
volumes: { tank: { outside: box 300 x 200 x 100 mm, wall: 2 mm, less: [ cylinder 40 mm x 100 mm ] } }
tests: [ { what: floats, result: partial, note: "leaks, a little" } ]
temporary: [ { id: string-strap, what: string for a strap, part: keel, until: the strap comes, before: road } ]
---
About two hours of caulking, 3 l/min came in at first.

- [ ] caulk the stern :job{#caulk before=road}
`

export const pond = (): Promise<Publication> =>
  publicationOfTexts({ 'build.md': pondBuild, 'sessions/2026-03-07-first.md': pondNote })
