import { Ajv2020 } from 'ajv/dist/2020.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { publicationOf, readBuildFolder } from '../../src/build.ts'
import { recordJson } from '../../src/exports/record-json.ts'
import { recordSchema } from '../../src/exports/schema/record-schema.ts'
import { root } from '../commands/run-oddleg.ts'
import { demo, pond, pondBuild, publicationOfTexts } from './builds.ts'

// Ajv, a validator of JSON Schema by others, in its strict mode for draft 2020-12.
const validate = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(recordSchema)

function troubles(record: unknown): string[] {
  return validate(record)
    ? []
    : (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`)
}

describe('the published schema of record.json', () => {
  test('holds for the demo and for a note with every sort of thing', async () => {
    const records = [await demo(), await pond()].map(publication => JSON.parse(recordJson(publication)))
    expect(records.map(({ parts }) => parts.length > 2)).toEqual([true, true])
    expect(records.flatMap(troubles)).toEqual([])
  })

  test('holds for every edition of the demo', async () => {
    const built = await readBuildFolder(root, { today: '2026-12-31' })
    if ('trouble' in built) throw new Error(built.trouble)
    const editions = built.record.editions.map(({ name }) => name)
    expect(editions).toEqual(['public', 'buyer', 'inspector', 'full'])
    const records = editions.map(edition => JSON.parse(recordJson(publicationOf(built, edition))))
    expect(records.map(record => [record.edition, troubles(record)])).toEqual(editions.map(edition => [edition, []]))
  })

  test('holds for an empty build and for one whose notes are full of mistakes', async () => {
    const empty = await publicationOfTexts({ 'build.md': pondBuild })
    const wrong = await publicationOfTexts({
      'build.md': '---\ntitle: [\n---\nx',
      'sessions/2026-03-07-a.md':
        '---\ndate: 2026-02-31\nparts: { a: { cost: twelve, mass: 4 L, qty: x } }\nspend: [ 4 ]\n---\n4 mil\n',
    })
    expect(wrong.findings.length).toBeGreaterThan(3)
    expect([empty, wrong].flatMap(publication => troubles(JSON.parse(recordJson(publication))))).toEqual([])
  })

  test('holds for builds made at random', async () => {
    const word = fc.constantFrom('keel', 'mast', 'screw', 'tank', 'plug', 'left-lamp')
    const figure = fc.constantFrom(
      '860 mm',
      '6 to 7 in',
      'at least 2 L',
      'about 64 litres',
      'M8',
      'AWG 12',
      '£4',
      '4.30',
      '-5 °C',
      'nonsense',
      '60/55W',
    )
    const key = fc.constantFrom(
      'mass',
      'length',
      'at',
      'thread',
      'wall',
      'rating',
      'cost',
      'qty',
      'from',
      'why',
      'replaces',
    )
    const action = fc.constantFrom('ordered', 'fitted', 'rejected', 'sold', 'modified', 'vanished')
    const part = fc.record({ id: word, action, extra: fc.array(fc.tuple(key, figure), { maxLength: 4 }) })
    const note = fc.record({
      parts: fc.array(part, { maxLength: 4 }),
      measured: fc.array(fc.tuple(word, key, figure), { maxLength: 5 }),
    })
    await fc.assert(
      fc.asyncProperty(fc.array(note, { minLength: 1, maxLength: 3 }), async notes => {
        const texts = notes.map(({ parts, measured }, at) => {
          const lines = parts.map(
            ({ id, action: did, extra }) =>
              `  ${id}: { action: ${did}${extra.map(([name, value]) => `, ${name}: "${value}"`).join('')} }`,
          )
          const said = measured.map(([id, name, value]) => `  ${id}: { ${name}: "${value}" }`)
          return [
            `sessions/2026-03-0${at + 1}-n.md`,
            `---\ntitle: n\nparts:\n${lines.join('\n')}\nmeasurements:\n${said.join('\n')}\n---\nNothing.\n`,
          ]
        })
        const publication = await publicationOfTexts({ 'build.md': pondBuild, ...Object.fromEntries(texts) })
        expect(troubles(JSON.parse(recordJson(publication)))).toEqual([])
      }),
      { numRuns: 25, seed: 20260307 },
    )
  })

  test.each([
    [
      'a state that no part has',
      '/parts/0/state must be equal to one of the allowed values',
      (record: Changed) => set(record, 'parts', 'state', 'vanished'),
    ],
    [
      'a key too many',
      '/jobs/0 must NOT have additional properties',
      (record: Changed) => set(record, 'jobs', 'colour', 'red'),
    ],
    [
      'an amount that is no exact decimal',
      '/parts/0/cost/amount must match pattern "^-?[0-9]+([.][0-9]+)?$"',
      (record: Changed) => set(record, 'parts', 'cost', { amount: '12,50', currency: 'GBP' }),
    ],
    [
      'a verdict of its own',
      '/checks/0/verdict must be equal to one of the allowed values',
      (record: Changed) => set(record, 'checks', 'verdict', 'good'),
    ],
    [
      'a line that no file has',
      '/measurements/0/line must be >= 1',
      (record: Changed) => set(record, 'measurements', 'line', 0),
    ],
  ] as const)('refuses %s', async (_, trouble, change) => {
    const record = JSON.parse(recordJson(await demo()))
    change(record)
    expect(troubles(record)).toContain(trouble)
  })
})

type Changed = Record<string, Record<string, unknown>[]>

function set(record: Changed, list: string, key: string, value: unknown): void {
  const first = record[list]?.[0]
  if (first === undefined) throw new Error(`Unexpected empty list ${list}`)
  first[key] = value
}
