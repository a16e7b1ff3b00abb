import sharp from 'sharp'
import { Aviary, type Canary, type Vary } from './canaries.ts'

export const editionLists = {
  public: ['cost', 'source', 'people', 'place', 'identity'],
  buyer: ['cost', 'people', 'place'],
  inspector: ['cost'],
  sources: ['source'],
  people: ['people'],
  place: ['place'],
  identity: ['identity'],
  club: [],
} as const satisfies Record<string, Canary['as']>

export interface CanaryBuild {
  readonly files: Readonly<Record<string, string | Uint8Array>>
  readonly canaries: readonly Canary[]
}

/** A build with a canary in every place where something private can stand, and in as many where nothing is. */
export async function canaryBuild(vary?: Vary, metadata = 'artist'): Promise<CanaryBuild> {
  const aviary = new Aviary(vary)
  const files: Record<string, string | Uint8Array> = {
    'content/build.md': buildNote(aviary),
    'content/inspection.yaml': inspection(aviary),
    'content/sessions/2026-03-07-first.md': `${front(aviary)}\n${body(aviary)}`,
    'content/sessions/2026-03-14-second.md': second(aviary),
  }
  for (const name of photoNames) files[`content/photos/${name}.jpg`] = await photo(name, metadata)
  return { files, canaries: aviary.all }
}

/** The photographs of the test build; `secret`, `linked` and `alone` stand only in marks, `receipt` is one. */
export const photoNames = ['shown', 'part', 'receipt', 'secret', 'linked', 'alone'] as const

/** Stands in every photograph's metadata and must come out nowhere. */
export const inPhoto = 'Zqexif'

/** A photograph whose metadata says who took it, and where. */
async function photo(name: string, metadata: string): Promise<Uint8Array> {
  const level = [...name].reduce((sum, letter) => sum + letter.charCodeAt(0), 0) % 200
  return sharp({ create: { width: 64, height: 48, channels: 3, background: { r: level, g: 90, b: 120 } } })
    .withExif({
      IFD0: { Artist: `${inPhoto} ${metadata}`, ImageDescription: `${inPhoto} ${name}` },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '0/1 7/1 0/1' },
    })
    .jpeg()
    .toBuffer()
}

const list = (names: readonly string[]): string => `[${names.join(', ')}]`

function buildNote(a: Aviary): string {
  return `---
title: "Title ${a.mark('people', 'build title')} ${a.word('shown', 'build title')}"
summary: "Summary ${a.mark('place', 'summary')} ${a.word('shown', 'summary')}"
started: 2026-01-10
by: ${a.word('people', 'writer of all notes')}
currency: GBP
rates: { EUR: 0.864213 }
electrical:
  nominal: 12 V
  ambient: 30 °C
donors:
  zqdonorone: { name: "${a.word('source', 'donor name')} hatchback", cost: ${a.money('donor cost')} }
  zqdonortwo: { name: "${a.mark('people', 'donor name marked', 'source')} van", cost: ${a.money('second donor cost')} }
systems:
  fuel: "Fuel ${a.mark('place', 'system name')} ${a.word('shown', 'system name')}"
limits:
  voltage-drop/pump: { max: 4 %, why: "as ${a.mark('people', 'why of a limit')} says ${a.word('shown', 'why of a limit')}" }
requirements:
  fuel-tank/length: 850 mm to 870 mm
identity: { chassis-number: ${a.word('identity', 'identity')}99, engine-number: "${a.mark('people', 'identity marked', 'identity')} 88" }
looms: { body-loom: { name: "Loom ${a.mark('people', 'loom name')}", sleeve: 12 mm } }
earth-points: { left-rear: { name: "Earth ${a.mark('place', 'earth point name')}", count: 4 } }
editions:
${Object.entries(editionLists)
  .map(([name, kinds]) => `  ${name}: { withhold: ${list(kinds)} }`)
  .join('\n')}
---
Prose ${a.word('shown', 'build prose')} by ${a.mark('people', 'build prose')}, ${a.money('build prose')} so far.
[the ${a.word('source', 'text of a link to a donor')}](donor:zqdonorone) and [](donor:zqdonortwo) gave the floor.
`
}

function inspection(a: Aviary): string {
  return `rule: "Rule ${a.mark('place', 'inspection rule')} ${a.word('shown', 'inspection rule')}"
authority: "Authority ${a.mark('people', 'authority')}"
points:
  tank-held:
    ask: "Is it held, ${a.mark('people', 'ask of a point')}, ${a.money('ask of a point')}, ${a.word('shown', 'ask of a point')}?"
    evidence: [ "part:fuel-tank", "photo:shown.jpg", "test:${a.word('shown', 'evidence')}" ]
  bare-point: "Point ${a.mark('place', 'point in short')}"
`
}

function front(a: Aviary): string {
  return `---
title: "Session ${a.mark('people', 'session title')} ${a.word('shown', 'session title')}"
by: ${a.word('people', 'writer of a note')}
date: 2026-03-07
hours: 6.5
parts:
  fuel-tank:
    name: "Tank ${a.mark('people', 'part name')} ${a.word('shown', 'part name')}"
    kind: tank
    system: fuel
    action: fitted
    from: "${a.word('source', 'from of a part')} yard"
    cost: ${a.money('cost of a part')}
    qty: 3
    mass: 11.5 kg
    number: ${a.word('shown', 'number of a part')}
    serial: ${a.word('identity', 'serial')}
    receipt: photos/receipt.jpg
    photos: [ photos/part.jpg ]
    why: "why ${a.mark('place', 'why of a part')} ${a.money('why of a part')}"
  roll-bar: { from: zqdonorone, cost: ${a.money('cost in braces')}, action: rejected, why: bent }
spend:
  - { what: "${a.word('cost', 'what was spent on')} primer", cost: ${a.money('spend')}, system: fuel, from: "${a.word(['source', 'cost'], 'from of spend')}" }
measurements:
  fuel-tank:
    length: { value: 860 mm ± 2 mm, with: "tape of ${a.mark('people', 'with of a measurement')}", note: "at ${a.mark('place', 'note of a measurement')} ${a.word('shown', 'note of a measurement')}" }
  donor:zqdonorone: { mass: 913 kg }
circuits:
  fuel-pump:
    name: "Pump ${a.mark('people', 'circuit name')}"
    feeds: "pump of ${a.mark('people', 'feeds')}"
    system: fuel
    use: pump
    load: 7 A
    cable: { area: 2.5 mm², colour: green/purple }
    length: 4.8 m
    return: chassis
    loom: body-loom
    earth: left-rear
    route: [ box, "${a.mark('place', 'route')}", "${a.word('shown', 'route')}" ]
connectors:
  stalk-switch:
    name: "Stalk ${a.mark('people', 'connector name')}"
    pins:
      1: { wire: 0.75 mm² white/black, to: "lamp ${a.mark('place', 'pin goes to')}", carries: "side ${a.mark('people', 'pin carries')}" }
tests:
  - { what: "${a.word('shown', 'test')}", result: pass, note: "seen by ${a.mark('people', 'note of a test')}" }
  - { what: "lamps of ${a.mark('people', 'what of a test')}", result: pass }
temporary:
  - { what: "clip of ${a.mark('people', 'temporary')}", part: fuel-tank, until: "${a.mark('place', 'until')} sells one", before: road }
  - { id: tape, what: "tape ${a.word('broken', 'words before a broken mark in front matter')} ${a.word('broken', 'broken mark in front matter')} :private[x]" }
---
`
}

function body(a: Aviary): string {
  return `# Heading ${a.mark('people', 'heading')} ${a.word('shown', 'heading')}

Prose ${a.word('shown', 'prose')}, ${a.mark('people', 'prose')}, ${a.mark('place', 'prose')}, ${a.mark('identity', 'prose')}, ${a.mark('source', 'prose')},
:private[**bold ${a.word('people', 'bold in a mark')}** and \`${a.word('people', 'code in a mark')}\`]{as=people}, paid ${a.money('prose')} in all.

> quoted ${a.mark('people', 'quotation')}

[a link of ${a.mark('people', 'text of a link')}](https://example.org/${a.word('people', 'address of a link with a mark')} "${a.word('people', 'title of a link with a mark')}")
and [${a.word('shown', 'text of a link')}](https://example.org/${a.word('shown', 'address of a link')} "${a.word('shown', 'title of a link')}").
[ref ${a.mark('people', 'text of a reference')}][ref-one]. :private[![${a.word('people', 'alternative in a mark')}][ref-two]]{as=people}

[ref-one]: https://example.org/${a.word('people', 'definition of a marked link')} "${a.word('people', 'title of a definition')}"
[ref-two]: ../photos/linked.jpg "${a.word('people', 'title of a defined picture')}"

![alt ${a.word('shown', 'alternative')} ${a.money('alternative')}](../photos/shown.jpg "caption ${a.word('shown', 'caption')} ${a.money('caption')}")

:::private{as=place}
![alt ${a.word('place', 'alternative in a block')}](../photos/secret.jpg "${a.word('place', 'caption in a block')}")

Block ${a.word('place', 'block')}, :measure[431.7 mm]{of="secret-thing/length" with="${a.word('place', 'with in a block')}"}.

- [ ] job ${a.word('place', 'job in a block')} :job{#${a.word('place', 'job id in a block').toLowerCase()}}

| Measurement | Value |
|---|---|
| ${a.word('place', 'measured in a block').toLowerCase()}/length | 433.9 mm |
:::

::::private{as=people}
:::connector{#${a.word('people', 'connector in a block').toLowerCase()} name="${a.word('people', 'connector name in a block')}"}
| Pin | Wire | To |
|---|---|---|
| 1 | 1 mm² red | ${a.word('people', 'pin in a block')} |
:::
::::

:::connector{#plug name="${a.word('shown', 'connector in the body')}"}
| Pin | Wire | To | Carries |
|---|---|---|---|
| 1 | 1 mm² red | ${a.mark('place', 'pin of a table')} | ${a.word('shown', 'pin of a table')} |
:::

- [ ] ring ${a.mark('people', 'job')} about the seal ${a.word('shown', 'job')}
- [ ] ${a.mark('people', 'job that is all mark')}
- [x] weld ${a.word('shown', 'job done')} :job{#weld-it}

| Part | Cost | From | Note |
|---|---|---|---|
| Fuel filter | ${a.money('part table')} | ${a.word('source', 'from in a table')} | ${a.word('shown', 'note in a table')} |
| Strap ${a.mark('people', 'part in a table')} | ${a.money('second row')} | zqdonortwo | ${a.mark('people', 'note in a table')} |
| ${a.mark('people', 'part that is all mark')} | ${a.money('third row')} | | x |

| Thing | Price | Supplier |
|---|---|---|
| clip | ${a.word('cost', 'bare number in a price column')} | ${a.word('source', 'supplier column')} |

| Measurement | Value | With | Note |
|---|---|---|---|
| fuel-tank/width | 380 mm | rule of ${a.mark('people', 'with in a table')} | ${a.mark('place', 'note of a row')} |

A note[^one] and :private[another[^two]]{as=place}. The sender is :measure[:private[417.3 mm]{as=place}]{of="sender/length"} long.

[^one]: Footnote ${a.word('shown', 'footnote')} ${a.mark('people', 'footnote')}
[^two]: ${a.word('place', 'footnote of a mark')}, [^three]
[^three]: ${a.word('place', 'footnote of a footnote')}

\`\`\`
code ${a.word('shown', 'code')} ${a.money('code')}
\`\`\`

<b>raw ${a.word('shown', 'raw')} ${a.money('raw')}</b>

Broken ${a.word('broken', 'broken mark')} :private[plate]{as=plate}

:::private{as=peple}
${a.word('broken', 'broken block')}
:::

![alt ${a.word('broken', 'mark in an alternative')} :private[x]{as=people}](../photos/alone.jpg)

See [](part:fuel-tank), [the floor ${a.word('source', 'text of a donor link')}](donor:zqdonorone), [](measurement:fuel-tank/length).
It cost two hundred quid, 12p, a tenner and forty pounds. The ${a.all.find(({ where }) => where === 'donor name')?.word} hatchback was rusty.
`
}

function second(a: Aviary): string {
  return `---
title: Second
date: 2026-03-14
parts:
  fuel-tank: { action: modified, cost: ${a.money('second cost')}, from: "${a.word('source', 'second from')}" }
measurements: { fuel-tank: { length: 861 mm } }
---
Words ${a.word('shown', 'second note')}. Cost again ${a.money('second prose')}.
`
}
