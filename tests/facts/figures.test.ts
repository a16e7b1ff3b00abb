import fc from 'fast-check'
import type { Nodes } from 'mdast'
import { expect, test } from 'vitest'
import type { FactValue } from '../../src/facts/fact.ts'
import type { StatedNote } from '../../src/facts/stated-note.ts'
import { comparePlaces } from '../../src/findings/place.ts'
import { slice, stated } from './stated.ts'

const length = fc.constantFrom('860 mm', '7 3/8 in', 'about 64 mm', '850 to 870 mm', '860 mm ± 2 mm', 'at least 200 mm')
const money = fc.constantFrom('£184', '€12.50', '85 GBP')
const words = fc.constantFrom(
  '12 mm too long',
  'fits',
  'paid £4 and £5',
  '"a :private[3 mm]{as=place} lip"',
  "'it''s 4 mm out'",
)

const part = fc.tuple(money, words, length).map(([cost, why, mass]) => `{ cost: ${cost}, why: ${why}, reach: ${mass} }`)
const circuit = fc
  .tuple(fc.constantFrom('15 A', '{ rating: 15 A, after: 150 mm }'), length)
  .map(([fuse, run]) => `{ fuse: ${fuse}, length: ${run}, cable: 2.5 mm² green/purple }`)
const volume = fc.constantFrom(
  '{ outside: box 860 x 380 x 300 mm, wall: 3 mm }',
  '{ less: [ "prism of [0,0] [52,0] [52,14] x 64 mm" ] }',
)
const measurement = length.map(value => `{ length: ${value}, width: { note: 3 mm of paint, value: ${value} } }`)

const section = fc.oneof(
  part.map(value => ['parts', value] as const),
  circuit.map(value => ['circuits', value] as const),
  volume.map(value => ['volumes', value] as const),
  measurement.map(value => ['measurements', value] as const),
)
const paragraph = fc.oneof(
  length.map(value => `It is ${value} long.`),
  length.map(value => `- [ ] cut ${value} off`),
  length.map(value => `> :measure[${value}]{of="shelf/length"}`),
  length.map(value => `| Measurement | Value |\n|-|-|\n| shelf/width | ${value} |`),
  money.map(value => `| Part | Cost |\n|-|-|\n| Clip | ${value} |`),
  fc.constant(':::connector{#stalk rating="10 A"}\n| Pin | Wire |\n|-|-|\n| 1 | 0.75 mm² red |\n:::'),
)
const note = fc
  .tuple(fc.uniqueArray(section, { selector: ([key]) => key, maxLength: 4 }), fc.array(paragraph, { maxLength: 5 }))
  .map(
    ([sections, body]) =>
      `---\ntitle: Tank\ndate: 2026-03-07\n${sections.map(([key, value]) => `${key}:\n  thing: ${value}\n`).join('')}---\n${body.join('\n\n')}\n`,
  )

/** The names of figures that the facts use. */
function used({ facts }: StatedNote): string[] {
  const shapes = (value: FactValue): readonly string[] =>
    value.type === 'shapes' ? value.shapes.flatMap(shape => shape.figures) : []
  return facts.flatMap(fact => {
    if (fact.type === 'property') return [...shapes(fact.value), ...(fact.figure === null ? [] : [fact.figure])]
    return 'cost' in fact && fact.cost !== null && fact.cost.figure !== null ? [fact.cost.figure] : []
  })
}

const namesIn = (node: Nodes): string[] =>
  node.type === 'quantity' ? [node.id ?? 'none'] : 'children' in node ? node.children.flatMap(namesIn) : []

test('figures of any note are counted in the order of its text, and each stands where its place says', () => {
  fc.assert(
    fc.property(note, text => {
      const { figures } = stated(text)
      expect(figures.map(({ id }) => id)).toEqual(figures.map((_, index) => `q-${index + 1}`))
      expect(figures.toSorted((a, b) => comparePlaces(a.place, b.place))).toEqual(figures)
      for (const { place, quantity } of figures) expect(slice(text, place)).toBe(quantity.text)
    }),
  )
})

test('each figure that somebody named is used by one fact, and no other is', () => {
  fc.assert(
    fc.property(note, text => {
      const read = stated(text)
      const named = read.figures.filter(({ role }) => role !== 'prose').map(({ id }) => id)
      expect(used(read).toSorted()).toEqual(named.toSorted())
    }),
  )
})

test('the nodes of the body bear the names of its figures, in order', () => {
  fc.assert(
    fc.property(note, text => {
      const read = stated(text)
      const names = namesIn(read.body)
      const all = read.figures.map(({ id }) => id)
      expect(all.filter(id => names.includes(id))).toEqual(names)
      expect(JSON.parse(JSON.stringify(read.facts))).toEqual(read.facts)
    }),
  )
})

test('lengths that belong together have a group that no others of the note have', () => {
  const text =
    '---\ntitle: Tank\nvolumes:\n  tank: { outside: box 8 x 6 x 3 mm, less: [ box 1 x 2 x 3 mm ] }\nparts: { lid: { why: it was 4 x 5 mm } }\n---\nA 7 x 8 mm bar, 9 x 9 mm tube.\n\nAnd 1 x 1 mm wire.\n'
  const groups = stated(text).figures.map(({ quantity }) => quantity.group)
  const [box, less, lid, bar, tube, wire] = [0, 3, 6, 8, 10, 12].map(at => groups[at])
  expect(groups).toEqual([box, box, box, less, less, less, lid, lid, bar, bar, tube, tube, wire, wire])
  expect(new Set([box, less, lid, bar, tube, wire]).size).toBe(6)
})

test('nothing that front matter holds makes stating fail', () => {
  const keys = [
    'parts',
    'measurements',
    'circuits',
    'connectors',
    'volumes',
    'spend',
    'tests',
    'temporary',
    'clears',
    'closes',
    'hours',
    'date',
    'title',
    'pump',
    'fuse',
    'cable',
    'return',
    'pins',
    'outside',
    'less',
    'cost',
    'qty',
    'why',
    'value',
    'toString',
    'what',
    'supply',
  ]
  const leaf = fc.oneof(
    fc.constantFrom(
      '12 mm',
      '£4',
      ':private[a]',
      'box',
      'prism of [',
      'cylinder 3 x',
      '~',
      'chassis',
      '3 gal',
      'a/b',
      '',
    ),
    fc.string({ maxLength: 12 }),
  )
  const { tree } = fc.letrec(tie => ({
    tree: fc.oneof(
      { maxDepth: 4 },
      leaf,
      fc.array(tie('tree'), { maxLength: 3 }),
      fc.dictionary(fc.constantFrom(...keys), tie('tree'), { maxKeys: 4 }),
    ),
  }))
  fc.assert(
    fc.property(
      fc.dictionary(fc.constantFrom(...keys), tree),
      fc.constantFrom('content/build.md', 'content/sessions/a.md', 'content/inspection.yaml'),
      (front, file) => {
        const yaml = JSON.stringify(front)
        const read = stated(file.endsWith('.yaml') ? yaml : `---\n${yaml}\n---\n`, file)
        for (const found of read.findings) expect(found.message).toMatch(/^(Unexpected|YAML)/)
        for (const { place } of read.figures) expect(place.endColumn).toBeGreaterThan(place.column)
      },
    ),
    { numRuns: 300 },
  )
})
