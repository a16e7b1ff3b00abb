import { describe, expect, test } from 'vitest'
import things, { thingSchemes } from '../../../plugins/things/index.ts'
import { plain, run } from '../chain.ts'
import { nodeOf, nodesOf } from '../nodes-of.ts'

const alone = plain().use(things).freeze()

test('the links of a README say where they lead', () => {
  const { tree } = run(
    alone,
    'See [the tank](part:fuel-tank), [the day before](../2026/tank.md#h-why) and [elsewhere](https://example.org).',
  )
  expect(nodesOf(tree, 'link').map(({ data }) => data)).toEqual([
    { thing: { scheme: 'part', path: 'fuel-tank' } },
    { note: '../2026/tank.md' },
    undefined,
  ])
})

describe('addresses', () => {
  test.each([...thingSchemes])('%s: leads to a thing', scheme => {
    expect(nodeOf(run(alone, `[](${scheme}:some-name/length)`).tree, 'link').data).toEqual({
      thing: { scheme, path: 'some-name/length' },
    })
  })

  const accepted: [link: string, data: unknown][] = [
    ['[](measurement:circuit:fuel-pump/load)', { thing: { scheme: 'measurement', path: 'circuit:fuel-pump/load' } }],
    ['[a](Part:fuel-tank)', { thing: { scheme: 'part', path: 'fuel-tank' } }],
    ['[a](<test:service brake>)', { thing: { scheme: 'test', path: 'service brake' } }],
    ['[a](test:service%20brake)', { thing: { scheme: 'test', path: 'service brake' } }],
    ['[a](part:100%)', { thing: { scheme: 'part', path: '100%' } }],
    ['<part:fuel-tank>', { thing: { scheme: 'part', path: 'fuel-tank' } }],
    ['[a][b]\n\n[b]: part:fuel-tank', { thing: { scheme: 'part', path: 'fuel-tank' } }],
    ['[a](b.md)', { note: 'b.md' }],
    ['[a](./b%20c.md?x)', { note: './b c.md' }],
    ['[a](B.MD)', { note: 'B.MD' }],
    ['[a][b]\n\n[b]: ../b.md', { note: '../b.md' }],
  ]
  test.each(accepted)('%j', (text, data) => {
    expect(nodeOf(run(alone, text).tree, 'link').data).toEqual(data)
  })

  test.each([
    '[a](https://example.org/b.md)',
    '[a](//example.org/b.md)',
    '[a](/b.md)',
    '[a](\\\\host\\b.md)',
    '[a](file:b.md)',
    '[a](parts:b)',
    '[a](b.markdown)',
    '[a](#part:b)',
    '[a]()',
  ])('%s leads to neither', text => {
    expect(nodeOf(run(alone, text).tree, 'link').data).toBeUndefined()
  })

  test('a reference to another address stays a reference', () => {
    const text = '[a][b]\n\n[b]: https://example.org'
    expect(run(alone, text).tree).toEqual(plain.parse(text))
  })
})
