import Big from 'big.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { build, donor, fold, part, type Said, said, session, spend, subject, told } from './stated.ts'

const dates = ['2026-01-10', '2026-01-17', '2026-01-24', '2026-01-31']
const sessionsOf = (notes: readonly Said[][]) => notes.map((facts, at) => session(`${dates[at]}-note`, facts))
const short = (session: string): string => `s${dates.indexOf(session.slice(0, 10)) + 1}`

/** The sums of a ledger in one line: `parts 184.00 …; s1 184.00 s2 -4.00`. */
function sums(notes: readonly Said[][], of = build()): string {
  const { ledger } = fold(sessionsOf(notes), { of }).record
  const { parts, spend, returned, total, onVehicle, bySession } = ledger
  const sessions = Object.entries(bySession).map(([name, sum]) => `${short(name)} ${sum}`)
  return `parts ${parts} spend ${spend} returned ${returned} total ${total} on vehicle ${onVehicle}; ${sessions.join(' ')}`
}

describe('what a part cost', () => {
  test.each([
    [
      'one price, for each',
      [[part('a', { cost: '2.50', qty: '4' })]],
      'parts 10.00 spend 0.00 returned 0.00 total 10.00 on vehicle 10.00; s1 10.00',
    ],
    [
      'ordered counts as paid, and is not on the vehicle',
      [[part('a', { action: 'ordered', cost: '184' })]],
      'parts 184.00 spend 0.00 returned 0.00 total 184.00 on vehicle 0.00; s1 184.00',
    ],
    [
      'a later price replaces it, the later session shows the difference',
      [[part('a', { action: 'ordered', cost: '184' })], [part('a', { action: 'fitted', cost: '180' })]],
      'parts 180.00 spend 0.00 returned 0.00 total 180.00 on vehicle 180.00; s1 184.00 s2 -4.00',
    ],
    [
      'the same price again is no second payment',
      [[part('a', { action: 'ordered', cost: '184' })], [part('a', { action: 'received', cost: '184' })]],
      'parts 184.00 spend 0.00 returned 0.00 total 184.00 on vehicle 0.00; s1 184.00',
    ],
    [
      'a price without a quantity takes over the one before',
      [[part('a', { action: 'ordered', cost: '10', qty: '4' })], [part('a', { action: 'fitted', cost: '12' })]],
      'parts 48.00 spend 0.00 returned 0.00 total 48.00 on vehicle 48.00; s1 40.00 s2 8.00',
    ],
    [
      'fewer fitted than bought',
      [[part('a', { action: 'ordered', cost: '0.50', qty: '10' })], [part('a', { action: 'fitted', qty: '8' })]],
      'parts 5.00 spend 0.00 returned 0.00 total 5.00 on vehicle 4.00; s1 5.00',
    ],
    [
      'a quantity put right without an action',
      [[part('a', { cost: '0.50' })], [part('a', { qty: '8' })]],
      'parts 4.00 spend 0.00 returned 0.00 total 4.00 on vehicle 4.00; s1 0.50 s2 3.50',
    ],
    [
      'a price told late',
      [[part('a')], [part('a', { cost: '7' })]],
      'parts 7.00 spend 0.00 returned 0.00 total 7.00 on vehicle 7.00; s2 7.00',
    ],
    [
      'modified adds',
      [[part('a', { cost: '100' })], [part('a', { action: 'modified', cost: '25' })]],
      'parts 125.00 spend 0.00 returned 0.00 total 125.00 on vehicle 125.00; s1 100.00 s2 25.00',
    ],
    [
      'sold comes back, by its own quantity',
      [[part('a', { cost: '20', qty: '4' })], [part('a', { action: 'sold', cost: '15', qty: '2' })]],
      'parts 80.00 spend 0.00 returned 30.00 total 50.00 on vehicle 0.00; s1 80.00 s2 -30.00',
    ],
    [
      'returned without a quantity is one',
      [[part('a', { cost: '20', qty: '4' })], [part('a', { action: 'returned', cost: '20' })]],
      'parts 80.00 spend 0.00 returned 20.00 total 60.00 on vehicle 0.00; s1 80.00 s2 -20.00',
    ],
    [
      'rejected, removed and scrapped are paid for',
      [
        [part('a', { cost: '80' })],
        [part('a', { action: 'rejected', cost: '5' })],
        [part('a', { action: 'removed', cost: '6' })],
        [part('a', { action: 'scrapped', cost: '7' })],
      ],
      'parts 98.00 spend 0.00 returned 0.00 total 98.00 on vehicle 0.00; s1 80.00 s2 5.00 s3 6.00 s4 7.00',
    ],
    [
      'rejected and made again is paid twice',
      [
        [part('a', { action: 'made', cost: '80' })],
        [part('a', { action: 'rejected' })],
        [part('a', { action: 'made', cost: '90' })],
        [part('a', { action: 'fitted' })],
      ],
      'parts 170.00 spend 0.00 returned 0.00 total 170.00 on vehicle 90.00; s1 80.00 s3 90.00',
    ],
    [
      'returned and bought again is another purchase',
      [
        [part('a', { action: 'ordered', cost: '100' })],
        [part('a', { action: 'returned', cost: '100' })],
        [part('a', { action: 'ordered', cost: '120' })],
      ],
      'parts 220.00 spend 0.00 returned 100.00 total 120.00 on vehicle 0.00; s1 100.00 s2 -100.00 s3 120.00',
    ],
  ])('%s', (_, notes, expected) => {
    expect(sums(notes)).toBe(expected)
  })

  test('put right by a quantity leads to the quantity, in its own note', () => {
    const { ledger } = fold(sessionsOf([[part('a', { cost: '0.50' })], [part('a', { qty: '8' })]])).record
    expect(ledger.lines.map(({ amount, qty, session, place }) => [amount, qty, session, place.file.slice(17)])).toEqual(
      [
        ['0.50', '1', '2026-01-10-note', '2026-01-10-note.md'],
        ['3.50', '8', '2026-01-17-note', '2026-01-17-note.md'],
      ],
    )
  })

  test('is shown for the part as written last, with the place', () => {
    const { parts } = fold(
      sessionsOf([[part('a', { action: 'ordered', cost: '184' })], [part('a', { action: 'fitted', cost: '180.50' })]]),
    ).record
    expect([parts[0]?.cost?.value, parts[0]?.cost?.session, parts[0]?.value]).toEqual([
      { amount: '180.50', currency: 'GBP' },
      '2026-01-17-note',
      '180.50',
    ])
  })
})

describe('the sums', () => {
  const tank = subject('part', 'tank')
  const systems = [said(subject('system', 'fuel'), 'name', 'Fuel'), said(subject('system', 'body'), 'name', 'Body')]
  const of = build([donor('corvane', '650'), ...systems])

  test('stand by system and session without the donors, the systems in the order of build.md', () => {
    const { ledger } = fold(
      sessionsOf([
        [spend('primer', '31.40', { system: 'body' }), part('tank', { cost: '184' }), said(tank, 'system', 'fuel')],
        [spend('tea', '2'), part('tank', { action: 'sold', cost: '200' })],
      ]),
      { of },
    ).record
    expect(ledger.bySystem).toEqual({ fuel: '-16.00', body: '31.40', '': '2.00' })
    expect(Object.keys(ledger.bySystem)).toEqual(['fuel', 'body', ''])
    expect(ledger.bySession).toEqual({ '2026-01-10-note': '215.40', '2026-01-17-note': '-198.00' })
    expect([ledger.donors, ledger.parts, ledger.spend, ledger.returned, ledger.total]).toEqual([
      '650.00',
      '184.00',
      '33.40',
      '200.00',
      '667.40',
    ])
    expect(ledger.lines.map(({ of, what, amount, session }) => `${of} ${what} ${amount} ${session}`)).toEqual([
      'donor corvane 650.00 null',
      'part tank 184.00 2026-01-10-note',
      'spend primer 31.40 2026-01-10-note',
      'returned tank -200.00 2026-01-17-note',
      'spend tea 2.00 2026-01-17-note',
    ])
  })

  // ISO 4217 gives the yen no minor digits and the Kuwaiti dinar three.
  test.each([
    ['GBP', '0.86', '12.50 EUR', '10.75'],
    ['GBP', '0.333', '0.015 EUR', '0.00'],
    ['GBP', '1', '0.005 EUR', '0.01'],
    ['GBP', '1', '1.005 EUR', '1.01'],
    ['JPY', '160.5', '1 EUR', '161'],
    ['KWD', '0.3345', '1 EUR', '0.335'],
  ])('into %s at %s, %s is %s, half up', (currency, rate, cost, expected) => {
    const { ledger } = fold(sessionsOf([[spend('paint', cost)]]), {
      of: build([], { currency, rates: { EUR: rate } }),
    }).record
    expect([ledger.total, ledger.currency]).toEqual([expected, currency])
  })

  test('each line is rounded by itself, after its quantity', () => {
    expect(sums([[spend('washer', '0.333', { qty: '3' }), spend('nut', '0.005'), spend('nut', '0.005')]])).toContain(
      'spend 1.02 ',
    )
  })

  test('money in a currency without a rate is told once and is in no sum', () => {
    const { record, findings } = fold(sessionsOf([[part('a', { cost: '40 EUR' }), spend('paint', '5')]]))
    expect(told(findings)).toEqual([
      'no-rate 2026-01-10-note.md:3:11 Unexpected currency `EUR` in `40 EUR`, expected a rate for it in build.md; the amount is not in any sum | rates: { EUR: 1.00 }, with what one EUR is in GBP',
    ])
    expect([record.ledger.total, record.ledger.onVehicle, record.parts[0]?.value]).toEqual(['5.00', '0.00', null])
  })
})

/** Cents as pounds: 1234 is 12.34. */
const pounds = fc.integer({ min: 0, max: 1_000_000 }).map(cents => new Big(cents).div(100).toFixed(2))
const currency = fc.constantFrom('GBP', 'EUR', 'USD')
const line = fc.record({ cost: pounds, currency, qty: fc.integer({ min: 1, max: 500 }), isBack: fc.boolean() })
const rates = { EUR: '0.8637', USD: '0.795' }
const rateOf: Readonly<Record<string, string>> = { GBP: '1', ...rates }

// big.js 7 is the oracle: decimal arithmetic of its own, rounding half up (mode 1).
describe('random ledgers', () => {
  const inPounds = ({ cost, currency, qty }: { cost: string; currency: string; qty: number }): Big =>
    new Big(cost)
      .times(qty)
      .times(rateOf[currency] ?? '')
      .round(2, Big.roundHalfUp)

  test('come to what big.js adds up', () => {
    fc.assert(
      fc.property(fc.array(line, { maxLength: 20 }), pounds, (lines, paid) => {
        const facts = lines.map(({ cost, currency, qty, isBack }, at) =>
          part(`part-${at}`, {
            action: isBack ? 'returned' : 'received',
            cost: `${cost} ${currency}`,
            qty: String(qty),
          }),
        )
        const { ledger } = fold(sessionsOf([facts]), { of: build([donor('corvane', paid)], { rates }) }).record
        const total = lines.reduce(
          (sum, each) => (each.isBack ? sum.minus(inPounds(each)) : sum.plus(inPounds(each))),
          new Big(paid),
        )
        expect(ledger.total).toBe(total.toFixed(2))
      }),
    )
  })

  test('the total is the sum of the lines, and the sums by session and by system are the total without donors', () => {
    const add = (amounts: readonly string[]): string =>
      amounts.reduce((sum, amount) => sum.plus(amount), new Big(0)).toFixed(2)
    fc.assert(
      fc.property(fc.array(fc.array(line, { maxLength: 6 }), { maxLength: 4 }), notes => {
        const facts = notes.map(lines =>
          lines.flatMap(({ cost, currency, qty, isBack }, at) => [
            part(`part-${at % 3}`, {
              action: isBack ? 'sold' : 'received',
              cost: `${cost} ${currency}`,
              qty: String(qty),
            }),
            spend('paint', cost, { system: at % 2 === 0 ? 'body' : null }),
          ]),
        )
        const { ledger } = fold(sessionsOf(facts), { of: build([donor('corvane', '650')], { rates }) }).record
        expect(ledger.total).toBe(add(ledger.lines.map(({ amount }) => amount)))
        expect(add([...Object.values(ledger.bySession), ledger.donors])).toBe(ledger.total)
        expect(add([...Object.values(ledger.bySystem), ledger.donors])).toBe(ledger.total)
        expect(add([ledger.donors, ledger.parts, ledger.spend, `-${ledger.returned}`])).toBe(ledger.total)
      }),
    )
  })
})
