import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { runInNewContext } from 'node:vm'
import { expect, test } from 'vitest'
import type { SearchIndex } from '../../src/search/search-index.ts'
import { publish, root, writeBuild } from '../site/published.ts'

const everyBlock = `---
title: Every block
date: 2026-03-07
temporary: [ { id: loan, what: borrowed clip, until: the right one comes } ]
tests: [ { what: lamps, result: pass } ]
parts: { clip: { action: rejected, why: too wide } }
---
Words with *marks*, a [](part:clip) and a note.[^one]

# A heading

> A quotation.

- a list
  - within a list
- [ ] a job

| a | table |
| --- | --- |
| of | 12 mm |

    code

![a picture](../photos/none.jpg)

:::connector{#plug}
| Pin | Carries |
| --- | --- |
| 1 | lamps |
:::

:::private{as=people}
Somebody was here.
:::

<div>raw</div>

[^one]: At the foot.
`

function indexOf(site: string): SearchIndex {
  const page: { oddlegIndex?: SearchIndex } = {}
  runInNewContext(readFileSync(join(site, 'client/search-index.js'), 'utf8'), page)
  if (page.oddlegIndex === undefined) throw new Error('Unexpected script without an index')
  return page.oddlegIndex
}

/** Where entries lead that the published pages do not have. */
function lost(site: string, { entries, addresses }: SearchIndex): string[] {
  const pages = new Map<string, string>()
  const read = (path: string): string => {
    const known = pages.get(path) ?? (existsSync(join(site, path)) ? readFileSync(join(site, path), 'utf8') : '')
    pages.set(path, known)
    return known
  }
  const urls = entries.address.map(
    (address, at) => `${addresses[address]}${entries.anchor[at] === '' ? '' : `#${entries.anchor[at]}`}`,
  )
  return [...new Set(urls)].filter(url => {
    const [path = '', anchor] = url.split('#')
    const text = read(decodeURIComponent(path))
    return text === '' || (anchor !== undefined && !text.includes(`id="${anchor}"`))
  })
}

test.each([
  ['the demo', () => root, 1000],
  [
    'a note with every sort of block',
    () =>
      writeBuild({
        'build.md': '---\ntitle: Small\ncurrency: GBP\n---\nWords.\n',
        'sessions/2026-03-07-blocks.md': everyBlock,
      }),
    20,
  ],
])('every entry of the index of %s leads to an anchor that its pages have', (_name, folder, least) => {
  const site = publish(folder())
  const index = indexOf(site)
  expect(index.entries.kind.length).toBeGreaterThan(least)
  expect(lost(site, index)).toEqual([])
})
