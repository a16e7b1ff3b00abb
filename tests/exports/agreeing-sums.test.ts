import Big from 'big.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Publication } from '../../src/editions/publication.ts'
import { demo, pond, pondBuild, publicationOfTexts } from './builds.ts'
import { amountIn, pageTables, sum } from './page-money.ts'

/** What a page says at the foot of a column, as a plain decimal. */
function feet(publication: Publication): (page: string, caption: string, label: string) => string | null {
  const tables = pageTables(publication)
  return (page, caption, label) => {
    const found = tables.find(({ page: on, table }) => on === `${page}/index.html` && table.caption === caption)?.table
    const at = found?.columns.findIndex(column => column.label === label) ?? -1
    const [foot] = found?.foot ?? []
    return foot === undefined || at < 0 ? null : amountIn(foot, at)
  }
}

/** Each figure that more than one page gives, with what the others say of it; by big.js. */
function told(publication: Publication): Record<string, (string | null)[]> {
  const foot = feet(publication)
  const { ledger } = publication.record
  const less = (one: string, other: string): string => new Big(one).minus(other).toFixed(2)
  const running = less(ledger.total, ledger.donors)
  /** A column of no lines is blank at its foot. */
  const never = (of: string | null): string => of ?? '0.00'
  return {
    'paid in all': [
      ledger.total,
      foot('cost', 'Where the money is', 'Amount'),
      foot('cost', 'Money by system', 'In all'),
      foot('cost', 'Money by session', 'Amount'),
      foot('cost', 'Every amount', 'Amount'),
      foot('cost', 'Every amount', 'Up to here'),
      sum([ledger.donors, ledger.parts, ledger.spend, `-${ledger.returned}`]),
      sum([ledger.donors, ...Object.values(ledger.bySystem)]),
      sum([ledger.donors, ...Object.values(ledger.bySession)]),
    ],
    'without the donors': [running, never(foot('cost', 'Money by supplier, donors left out', 'In all'))],
    'what came back': [
      less('0', ledger.returned),
      never(foot('cost', 'What came back', 'Amount')),
      never(foot('cost', 'Money by supplier, donors left out', 'Came back')),
    ],
    'the donors': [ledger.donors, never(foot('cost', 'Money by system', 'Donors'))],
    'used up': [ledger.spend, never(foot('cost', 'Money by system', 'Used up'))],
    'in parts': [
      less(ledger.parts, ledger.returned),
      sum([
        never(foot('cost', 'Money by system', 'In parts on the vehicle')),
        never(foot('cost', 'Money by system', 'In parts that are not')),
      ]),
    ],
    'value on the vehicle': [
      ledger.onVehicle,
      never(foot('parts', 'On the vehicle', 'In all')),
      sum(publication.record.parts.flatMap(part => (part.onVehicle && part.value !== null ? [part.value] : []))),
    ],
  }
}

const apart = (publication: Publication): unknown[] =>
  Object.entries(told(publication)).filter(([, figures]) => new Set(figures).size > 1)

const plain = pondBuild.replace(/donors: .*\n/, 'donors: { marlow: { cost: £300 }, halvern: { cost: €99.99 } }\n')

describe('pages that give one sum', () => {
  test('agree to the penny in the demo, and every figure is there', async () => {
    const publication = await demo()
    expect(apart(publication)).toEqual([])
    expect(Object.values(told(publication)).flat()).not.toContain(null)
    expect(told(publication)['what came back']?.[0]).not.toBe('0.00')
  })

  test('agree for a note with every sort of thing', async () => {
    expect(apart(await pond())).toEqual([])
  })

  const pounds = fc.integer({ min: 0, max: 99_999 }).map(pence => (pence / 100).toFixed(2))
  const price = fc.tuple(fc.constantFrom('£', '€'), pounds).map(([sign, amount]) => `${sign}${amount}`)
  const deed = fc.constantFrom(
    'ordered',
    'received',
    'made',
    'fitted',
    'trial-fitted',
    'rejected',
    'removed',
    'modified',
    'sold',
    'returned',
    'scrapped',
  )
  const part = fc.record({
    id: fc.constantFrom('keel', 'mast', 'boom', 'rudder'),
    deed,
    price: fc.option(price),
    qty: fc.option(fc.constantFrom('1', '2', '0.5', '7', '1.333')),
    system: fc.constantFrom('hull', 'drive', 'nowhere'),
    from: fc.constantFrom('marlow', 'halvern', 'chandler', 'a barn'),
  })
  const note = fc.record({
    day: fc.integer({ min: 1, max: 3 }),
    parts: fc.uniqueArray(part, { maxLength: 4, selector: ({ id }) => id }),
    spend: fc.array(price, { maxLength: 3 }),
  })
  type Note = typeof note extends fc.Arbitrary<infer T> ? T : never

  const textOf = ({ parts, spend }: Note): string =>
    [
      '---\ntitle: n',
      `parts:${parts.length === 0 ? ' {}' : ''}`,
      ...parts.map(
        ({ id, deed: did, price: cost, qty, system, from }) =>
          `  ${id}: { action: ${did}, system: ${system}, from: ${from}${cost === null ? '' : `, cost: ${cost}`}${qty === null ? '' : `, qty: ${qty}`} }`,
      ),
      `spend:${spend.length === 0 ? ' []' : ''}`,
      ...spend.map((cost, at) => `  - { what: thing ${at}, cost: ${cost}, from: chandler }`),
      '---\nNothing.\n',
    ].join('\n')

  /** Notes with their names in the order given, so that those of one date come in that order. */
  const published = (notes: readonly Note[]): Promise<Publication> =>
    publicationOfTexts({
      'build.md': plain,
      ...Object.fromEntries(notes.map((one, at) => [`sessions/2026-03-0${one.day}-${at}.md`, textOf(one)])),
    })

  test('agree for builds made at random, in whatever order the notes of one date come', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(note, { minLength: 1, maxLength: 5 }), async notes => {
        for (const order of [notes, [...notes].reverse()]) expect(apart(await published(order))).toEqual([])
      }),
      { numRuns: 25, seed: 7 },
    )
  }, 30_000)
})
