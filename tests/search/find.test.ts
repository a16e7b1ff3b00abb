import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, test } from 'vitest'
import { oddleg } from '../commands/run-oddleg.ts'
import { publish, writeBuild } from '../site/published.ts'

const note = `---
title: Tank in for size
date: 2026-03-07
---
The tank is :measure[860 mm ± 2 mm]{of="fuel-tank/length"} long, and the new tank took sixty-four litres or so.

- [ ] seal the hatch :job{#seal-hatch}
`

let folder = ''
beforeAll(() => {
  folder = writeBuild({
    'build.md':
      '---\ntitle: Sandpiper\ncurrency: GBP\neditions: { public: { withhold: [people] } }\n---\nA beach utility.\n',
    'sessions/2026-03-07-tank.md': note,
  })
})

const find = (...words: string[]) => oddleg(['find', '--build', folder, ...words])

describe('oddleg find', () => {
  test('gives place, name, session and the words on standard output, the count on standard error', () => {
    expect(find('33.86', 'in')).toEqual({
      status: 0,
      out: 'content/sessions/2026-03-07-tank.md:5:22 measurement fuel tank: length (session 1, 2026-03-07)\n  The tank is 860 mm ± 2 mm long, and the new tank took sixty-four litres or so.\n',
      err: 'one hit for 33.86 in\n',
    })
  })

  test('gives one JSON document', () => {
    const { status, out, err } = find('--json', '14 imp gal')
    expect({ status, err, hits: JSON.parse(out) }).toEqual({
      status: 0,
      err: '',
      hits: {
        hits: [
          {
            kind: 'quantity',
            text: 'sixty-four litres or so',
            value: 64,
            unit: 'L',
            file: 'content/sessions/2026-03-07-tank.md',
            line: 5,
            column: 88,
            url: 'sessions/2026-03-07-tank/index.html#q-2',
            session: '2026-03-07-tank',
          },
        ],
      },
    })
  })

  test('gives a path where there is a name, and no value where there is no figure', () => {
    const hits = (...words: string[]) => JSON.parse(find('--json', ...words).out).hits
    expect(hits('860 mm')).toMatchObject([
      { kind: 'measurement', path: 'fuel-tank/length', text: '860 mm ± 2 mm', value: 860, unit: 'mm' },
    ])
    expect(hits('seal hatch')).toEqual([
      {
        kind: 'job',
        path: 'seal-hatch',
        text: 'seal the hatch',
        file: 'content/sessions/2026-03-07-tank.md',
        line: 7,
        column: 7,
        url: 'sessions/2026-03-07-tank/index.html#j-seal-hatch',
        session: '2026-03-07-tank',
      },
    ])
  })

  test('says that there is nothing, which is no error', () => {
    expect(find('99 kg')).toEqual({ status: 0, out: '', err: 'nothing for 99 kg\n' })
    expect(JSON.parse(find('--json', '99 kg').out)).toEqual({ hits: [] })
  })

  test('takes no empty words, no unknown edition and no folder without notes', () => {
    expect(find(' ')).toMatchObject({
      status: 2,
      out: '',
      err: 'oddleg: Unexpected empty words, expected what to find, such as `fuel tank` or `860 mm`.\n',
    })
    expect(find('--edition', 'nobody', 'tank')).toMatchObject({ status: 2, out: '' })
    expect(oddleg(['find', '--build', join(folder, 'content/sessions'), 'tank'])).toMatchObject({ status: 2, out: '' })
  })

  test('leads to places that the published record has', () => {
    const site = publish(folder)
    for (const { url } of JSON.parse(find('--json', 'tank').out).hits) {
      const [path = '', anchor] = String(url).split('#')
      expect([url, existsSync(join(site, path))]).toEqual([url, true])
      if (anchor !== undefined) expect(readFileSync(join(site, path), 'utf8')).toContain(`id="${anchor}"`)
    }
  })
})
