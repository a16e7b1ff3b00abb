import { describe, expect, test } from 'vitest'
import { coverText, coverWords } from '../../src/editions/cover-text.ts'
import { withheldBy } from '../../src/editions/withheld.ts'

const editions = [
  { name: 'cost', withhold: ['cost'] },
  { name: 'people', withhold: ['people'] },
  { name: 'club', withhold: [] },
]

function edition(name: string) {
  const withheld = withheldBy(editions, name)
  if (withheld === null) throw new Error(`No edition ${name}`)
  return withheld
}

// Common practice, no source: how people write what they paid.
describe('money in words', () => {
  test.each([
    ['paid £184 for it', 'paid [withheld] for it'],
    ['GBP184 or 184 GBP', '[withheld] or [withheld]'],
    ['€1.200,50 then', '[withheld] then'],
    ['184,- €', '[withheld]'],
    ['£2½', '[withheld]'],
    ['£40–£50', '[withheld]'],
    ['2 x £3.50 = £7', '2 x [withheld] = [withheld]'],
    ['two hundred quid', '[withheld]'],
    ['three pound fifty', '[withheld]'],
    ['half a grand', '[withheld]'],
    ['a fiver and 12p', 'a [withheld] and [withheld]'],
    ['Kr. 400, CHF 20, ₹500', '[withheld], [withheld], [withheld]'],
    ['forty pounds', '[withheld]'],
    ['**£**184', '**[withheld]'],
  ])('%s', (text, covered) => {
    expect(coverText(text, edition('cost'))).toBe(covered)
  })

  test.each(['860 mm, 7 A and 12 LED', 'ISO 4217 and 30 PSI', 'M8, AWG 14, 10 lb', 'TOP 10', 'a pound of nails'])(
    'is not %s',
    text => {
      expect(coverText(text, edition('cost'))).toBe(text)
    },
  )

  test('stays where cost is not withheld', () => {
    expect(coverText('paid £184', edition('people'))).toBe('paid £184')
  })
})

describe('marked words', () => {
  const words = (text: string, ...marks: [number, number, 'cost' | 'people' | 'place'][]) => ({
    text,
    marks: marks.map(([start, end, as]) => ({ start, end, as })),
  })

  test.each([
    ['one mark', words('with Bob there', [5, 8, 'people']), 'with [withheld] there'],
    ['marks that overlap', words('with Bob Smith', [5, 8, 'people'], [5, 14, 'people']), 'with [withheld]'],
    ['marks that touch', words('BobSmith', [0, 3, 'people'], [3, 8, 'people']), '[withheld]'],
    ['a mark of another kind', words('at Moor Lane', [3, 12, 'place']), 'at Moor Lane'],
    ['a mark over all', words('Bob', [0, 3, 'people']), '[withheld]'],
    ['a mark that stands as typed', words('see :private[Bob]'), '[withheld]'],
    ['a mark that is misspelt', words('see :privte[Bob]{as=people}'), '[withheld]'],
    ['words about a private road', words('on: private road, private: yes'), 'on: private road, private: yes'],
  ])('%s', (_what, marked, text) => {
    expect(coverWords(marked, edition('people'))).toEqual({ text, marks: [] })
  })

  test('that did not parse are withheld from an edition that withholds nothing, and not from the full one', () => {
    const kinds = ['cost', 'source', 'people', 'place', 'identity'] as const
    const broken = { text: 'Bob', marks: kinds.map(as => ({ start: 0, end: 3, as })) }
    expect(coverWords(broken, edition('club')).text).toBe('[withheld]')
    expect(coverWords(broken, edition('full')).text).toBe('Bob')
  })
})

describe('an edition', () => {
  test('that build.md does not name is none; `full` is always there', () => {
    expect([withheldBy(editions, 'other'), withheldBy([], 'full')?.isWhole]).toEqual([null, true])
  })

  test('named `full` that is said to withhold something withholds it', () => {
    expect(withheldBy([{ name: 'full', withhold: ['cost'] }], 'full')).toMatchObject({
      isWhole: false,
      kinds: new Set(['cost']),
    })
  })
})
