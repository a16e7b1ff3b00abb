import { Ajv2020 } from 'ajv/dist/2020.js'
import { strFromU8, unzipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { builtUpTo, publicationOf, readBuildFolder } from '../../src/build.ts'
import { exportFiles } from '../../src/exports/export-files.ts'
import { recordSchema } from '../../src/exports/schema/record-schema.ts'
import { makeSiteData } from '../../src/pages/make-site-data.ts'
import { scratch, writeFiles } from '../commands/run-oddleg.ts'
import { pondNote } from './builds.ts'
import { bareExtras } from './page-money.ts'

const build = `---
title: Pond skimmer
currency: GBP
rates: { EUR: 0.86 }
donors: { marlow: { name: "Marlow 4 pick-up", cost: £317 } }
systems: { hull: Hull, drive: Drive }
electrical: { nominal: 12 V, ambient: 30 °C }
editions:
  inspector: { withhold: [cost] }
  full: {}
---
A flat thing.
`

const later =
  '---\ntitle: Second\ndate: 2026-03-14\nparts: { mast: { system: hull, action: fitted, cost: £61.25 } }\nspend: [ { what: rope, cost: £8.15 } ]\n---\nRope.\n'

async function publications(edition: string) {
  const folder = scratch('editions')
  writeFiles(folder, {
    'content/build.md': build,
    'content/sessions/2026-03-07-first.md': pondNote,
    'content/sessions/2026-03-14-second.md': later,
  })
  const built = await readBuildFolder(folder, { today: '2026-12-31' })
  if ('trouble' in built) throw new Error(built.trouble)
  return {
    now: publicationOf(built, edition),
    before: publicationOf(
      builtUpTo(built, session => session.startsWith('2026-03-07')),
      edition,
    ),
  }
}

/** Every text of every export: packed files are opened. */
async function textsOf(edition: string): Promise<Map<string, string>> {
  const files = await exportFiles((await publications(edition)).now)
  return new Map(
    files.flatMap(({ path, content }): [string, string][] =>
      typeof content === 'string'
        ? [[path, content]]
        : Object.entries(unzipSync(content)).map(([part, bytes]) => [`${path}/${part}`, strFromU8(bytes)]),
    ),
  )
}

const amounts = /317|61\.25|8\.15|12\.5|32\.25|9\.95|7\.40?\b|£|€/

describe('an edition that withholds cost', () => {
  test('has no amount, no sum, no table and no column of money in any export', async () => {
    const [whole, part] = [await textsOf('full'), await textsOf('inspector')]
    expect([...whole].filter(([path]) => path.endsWith('ledger.csv')).map(([, text]) => amounts.test(text))).toEqual([
      true,
    ])
    expect(
      [...part]
        .filter(
          ([path, text]) => path !== 'record.schema.json' && !/styles\.xml|theme/.test(path) && amounts.test(text),
        )
        .map(([path]) => path),
    ).toEqual([])
    expect([...part.keys()].filter(path => /ledger|sums/.test(path))).toEqual([])
    const heading = (path: string): string => part.get(path)?.split('\r\n')[0] ?? ''
    expect(
      ['tables/parts.csv', 'tables/part-history.csv', 'tables/donors.csv'].filter(path =>
        /cost|currency|value fitted|came back/.test(heading(path)),
      ),
    ).toEqual([])
  })

  test('has a record that its schema holds for, its cost null', async () => {
    const record = JSON.parse((await textsOf('inspector')).get('record.json') ?? '{}')
    const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(recordSchema)
    expect({
      valid: validate(record),
      cost: record.cost,
      edition: record.edition,
      parts: record.parts.filter(({ cost }: { cost: unknown }) => cost !== null),
    }).toEqual({ valid: true, cost: null, edition: 'inspector', parts: [] })
  })

  test('has no page of cost, and no money on any page', async () => {
    const { now, before } = await publications('inspector')
    const { pages } = makeSiteData(now.record, now.verdicts, {
      ...bareExtras(now),
      before: { session: '2026-03-07-first', record: before.record, verdicts: before.verdicts },
    })
    expect(pages.some(({ sheet }) => sheet.address === 'since/index.html')).toBe(true)
    expect(pages.filter(({ sheet }) => sheet.address.startsWith('cost/')).length).toBe(0)
    expect(
      pages.filter(page => /£|€|\b317\b|61\.25/.test(JSON.stringify(page))).map(({ sheet }) => sheet.address),
    ).toEqual([])
  })
})
