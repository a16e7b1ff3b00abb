import { describe, expect, test } from 'vitest'
import { publicationOf, searchIndexOf } from '../../src/build.ts'
import { withheldNames } from '../../src/editions/withheld-names.ts'
import { exportFiles } from '../../src/exports/export-files.ts'
import { readBuild, unpacked } from './published-bytes.ts'

interface Odd {
  readonly build?: string
  readonly front?: string
  readonly body?: string
  readonly inspection?: string
}

async function published({ build = '', front = '', body = '', inspection = 'points: {}\n' }: Odd): Promise<string> {
  const built = await readBuild({
    'content/build.md': `---\ntitle: Odd\ncurrency: GBP\neditions: { some: { withhold: [cost, source, people, place, identity] } }\n${build}---\nWords.\n`,
    'content/inspection.yaml': inspection,
    'content/sessions/2026-03-07-one.md': `---\ntitle: One\ndate: 2026-03-07\n${front}---\n${body}\n`,
  })
  if (withheldNames(built.stated, ['some']).length > 0) return 'refused'
  const publication = publicationOf(built, 'some')
  const files = (await exportFiles(publication)).flatMap(({ path, content }) => unpacked(path, content))
  return JSON.stringify([publication, searchIndexOf(publication), files])
}

const mark = ':private[zqword]{as=source}'

/** Where no mark is read, or where a name is: the word must not come out, whatever else becomes of it. */
const places: readonly (readonly [string, Odd])[] = [
  ['the key of a zone', { build: `electrical: { zones: { "${mark}": 30 °C } }\n` }],
  ['the key of a limit', { build: `limits: { "${mark}/x": { max: 3 %, why: z } }\n` }],
  ['the key of a requirement', { build: `requirements: { "${mark}/length": 3 m }\n` }],
  ['the key of a system', { build: `systems: { "${mark}": Fuel }\n` }],
  ['the key of a unit', { build: `units: { "${mark}": mm }\n` }],
  ['the key of an identity', { build: `identity: { "${mark}": x }\n` }],
  ['the key of a loom', { build: `looms: { "${mark}": { name: x } }\n` }],
  ['the name of a part', { front: `parts: { "${mark}": { mass: 3 kg } }\n` }],
  ['a property of a part', { front: `parts: { a: { "${mark}": 3 mm } }\n` }],
  ['the system of a part', { front: `parts: { a: { system: "${mark}" } }\n` }],
  ['the kind of a part', { front: `parts: { a: { kind: "${mark}" } }\n` }],
  ['a photograph', { front: `parts: { a: { photos: [ "${mark}.jpg" ] } }\n` }],
  ['what a part replaces', { front: `parts: { a: { replaces: "${mark}" } }\n` }],
  [
    'what a circuit feeds',
    { front: `circuits: { c: { feeds: "${mark}", supply: "${mark}", loom: "${mark}", earth: "${mark}" } }\n` },
  ],
  [
    'a relay, a fuse, a colour',
    {
      front: `circuits: { c: { through: [ "${mark}" ], fuse: { box: "${mark}", type: "${mark}" }, cable: { area: 2 mm², colour: "${mark}" } } }\n`,
    },
  ],
  [
    'a pin',
    {
      front: `connectors: { d: { mates: "${mark}", pins: { "${mark}": { circuit: "${mark}", meets: "${mark}" } } } }\n`,
    },
  ],
  ['a measured thing', { front: `measurements: { "${mark}/length": 3 m, e: { "${mark}": 3 m } }\n` }],
  ['a temporary fix', { front: `temporary: [ { what: "x", id: "${mark}", part: "${mark}" } ]\n` }],
  ['what is closed', { front: `closes: [ "${mark}" ]\nclears: [ "${mark}" ]\n` }],
  ['a volume', { front: `volumes: { "${mark}": { outside: box 1 x 2 x 3 mm } }\n` }],
  ['a key that is not known', { front: `"${mark}": 3\n` }],
  ['an inspection point', { inspection: `points: { "${mark}": { ask: x } }\n` }],
  ['evidence', { inspection: 'points: { b: { ask: y, evidence: [ ":private[part:zqword]{as=source}" ] } }\n' }],
  ['code', { body: `x \`${mark}\`\n\n    ${mark}` }],
  ['a comment', { body: `<!-- ${mark} -->` }],
  ['a mark with more braces', { body: `${mark}{x}` }],
  ['a mark with too many colons', { body: `:${mark}` }],
  ['a mark that is escaped', { body: `\\${mark}` }],
  ['a mark with a capital', { body: ':Private[zqword]{as=source}' }],
  ['a link to a thing', { body: `[${mark}](part:zqword)` }],
  ['a header of a table', { body: `| ${mark} | B |\n|---|---|\n| a | b |` }],
  ['a path', { body: `:measure[3 m]{of="x/length ${mark}"}` }],
  ['what a job holds up', { body: `- [ ] a :job{#b before="${mark}"}` }],
  ['a connector', { body: `:::connector{#x mates="${mark}" name="${mark}" rating="${mark}"}\ny\n:::` }],
  ['the label of a container', { body: ':::private[zqword]{as=source}\nzqword\n:::' }],
  ['a mark in a mark', { body: ':private[a :private[zqword]{as=source} b]{as=people}' }],
  ['a mark that is never closed', { body: ':private[zqword' }],
  ['a container that is never closed', { body: ':::private{as=source}\nzqword' }],
  ['a task in a list in a quotation', { body: `> - [ ] ${mark}\n>   - [x] ${mark}` }],
  ['a definition', { body: `[a ${mark}][zq]\n\n[zq]: https://example.org/zqword "zqword"` }],
  ['a deleted heading', { body: `## ~~${mark}~~ **${mark}**` }],
]

describe('a mark in an odd place', () => {
  test.each(places)('lets nothing out: %s', async (_place, odd) => {
    expect(await published(odd)).not.toMatch(/zqword/i)
  })

  test('is not refused where it is read', async () => {
    const text = await published({ front: `tests: [ { what: "x ${mark} y", result: pass } ]\n`, body: `z ${mark}` })
    expect([text.includes('x [withheld] y'), text.includes('z '), text.includes('zqword')]).toEqual([true, true, false])
  })
})
