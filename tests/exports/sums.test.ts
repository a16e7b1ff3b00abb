import Big from 'big.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { recordTables } from '../../src/exports/tables/record-tables.ts'
import { donorAccounts } from '../../src/record/asked/donor-accounts.ts'
import { askLedger } from '../../src/record/asked/split-ledger.ts'
import { demo, pond, pondBuild, publicationOfTexts } from './builds.ts'
import { columnsAdded, pageTables, sum } from './page-money.ts'

describe('the sums', () => {
  test('every column of money on every page of the demo comes to its foot, to the penny', async () => {
    const added = pageTables(await demo()).flatMap(columnsAdded)
    expect(added.filter(({ foot, rows }) => foot !== rows)).toEqual([])
    const cost = added.map(({ of }) => of).filter(of => of.startsWith('cost/'))
    expect(cost).toEqual([
      'cost/index.html Where the money is: Amount',
      'cost/index.html Money by session: Amount',
      'cost/index.html Money by system: Donors',
      'cost/index.html Money by system: In parts on the vehicle',
      'cost/index.html Money by system: In parts that are not',
      'cost/index.html Money by system: Used up',
      'cost/index.html Money by system: In all',
      'cost/index.html Money by supplier, donors left out: Paid',
      'cost/index.html Money by supplier, donors left out: Came back',
      'cost/index.html Money by supplier, donors left out: In all',
      'cost/index.html What the donors cost: Cost',
      'cost/index.html What the donors cost: Its priced parts',
      'cost/index.html What the donors cost: Came back',
      'cost/index.html What the donors cost: In the end',
      'cost/index.html What came back: Amount',
      'cost/index.html Other currencies: Came to',
      'cost/index.html Every amount: Amount',
    ])
  })

  test('every way of adding the ledger up comes to the same total', async () => {
    for (const publication of [await demo(), await pond()]) {
      const { total } = publication.record.ledger
      const sums = recordTables(publication).find(({ name }) => name === 'sums')?.rows ?? []
      const ways = [...new Set(sums.map(([by]) => String(by)))]
      expect(ways).toEqual(['kind', 'system', 'session', 'donor', 'supplier', 'where the money is', 'all'])
      const come = ways.map(way => sum(sums.filter(([by]) => by === way).map(([, , amount]) => String(amount))))
      expect(come).toEqual(ways.map(() => total))
    }
  })

  test('each line is its price by its quantity at its rate, rounded half up, and the running total adds them', async () => {
    const { record } = await pond()
    const lines = askLedger(record).filter(({ line }) => line.of !== 'returned')
    const worked = lines.map(({ line, rate }) =>
      new Big(line.written.amount)
        .times(line.qty)
        .times(rate ?? '1')
        .toFixed(2, Big.roundHalfUp),
    )
    expect(lines.map(({ line }) => line.amount)).toEqual(worked)
    expect(askLedger(record).map(({ running }) => running)).toEqual(['300.00', '332.25', '342.20', '322.20', '329.60'])
  })

  test('the bill of materials comes to the value on the vehicle', async () => {
    const publication = await demo()
    const bill = pageTables(publication).find(
      ({ page, table }) => page === 'parts/index.html' && table.caption === 'On the vehicle',
    )
    const added = bill === undefined ? [] : columnsAdded(bill)
    expect(added.map(({ foot, rows }) => [foot, rows])).toEqual([
      [publication.record.ledger.onVehicle, publication.record.ledger.onVehicle],
    ])
  })

  test('a donor comes to its cost and its priced parts, less what came back', async () => {
    const accounts = donorAccounts((await demo()).record)
    const worked = accounts.map(({ cost, pricedParts, cameBack }) =>
      new Big(cost ?? '0').plus(pricedParts).minus(cameBack).toFixed(2),
    )
    expect(accounts.length).toBe(3)
    expect(accounts.map(({ net }) => net)).toEqual(worked)
  })

  test('builds made at random add up on every page', async () => {
    const pounds = fc.integer({ min: 1, max: 999_999 }).map(pence => (pence / 100).toFixed(2))
    const price = fc.tuple(fc.constantFrom('£', '€'), pounds).map(([sign, amount]) => `${sign}${amount}`)
    const action = fc.constantFrom(
      'ordered',
      'fitted',
      'trial-fitted',
      'rejected',
      'modified',
      'sold',
      'returned',
      'scrapped',
    )
    const part = fc.record({
      id: fc.constantFrom('a', 'b', 'c', 'd'),
      action,
      price,
      qty: fc.constantFrom('1', '2', '0.5', '7', '1.333'),
      system: fc.constantFrom('hull', 'drive'),
      from: fc.constantFrom('marlow', 'chandler', 'a barn'),
    })
    const note = fc.record({
      parts: fc.uniqueArray(part, { maxLength: 4, selector: ({ id }) => id }),
      spend: fc.array(price, { maxLength: 3 }),
    })
    await fc.assert(
      fc.asyncProperty(fc.array(note, { minLength: 1, maxLength: 4 }), async notes => {
        const texts = notes.map(({ parts, spend }, at) => {
          const lines = parts.map(
            ({ id, action: did, price: cost, qty, system, from }) =>
              `  ${id}: { action: ${did}, cost: ${cost}, qty: ${qty}, system: ${system}, from: ${from} }`,
          )
          const bought = spend.map((cost, index) => `  - { what: thing ${index}, cost: ${cost} }`)
          return [
            `sessions/2026-03-0${at + 1}-n.md`,
            `---\ntitle: n\nparts:${lines.length === 0 ? ' {}' : `\n${lines.join('\n')}`}\nspend:${bought.length === 0 ? ' []' : `\n${bought.join('\n')}`}\n---\nNothing.\n`,
          ]
        })
        const publication = await publicationOfTexts({ 'build.md': pondBuild, ...Object.fromEntries(texts) })
        const { total } = publication.record.ledger
        expect(sum(askLedger(publication.record).map(({ line }) => line.amount))).toBe(total)
        expect(
          pageTables(publication)
            .flatMap(columnsAdded)
            .filter(({ foot, rows }) => foot !== rows),
        ).toEqual([])
        const sums = recordTables(publication).find(({ name }) => name === 'sums')?.rows ?? []
        const wrong = [...new Set(sums.map(([by]) => by))].filter(
          way => sum(sums.filter(([by]) => by === way).map(([, , amount]) => String(amount))) !== total,
        )
        expect(wrong).toEqual([])
      }),
      { numRuns: 30, seed: 11 },
    )
  })
})
