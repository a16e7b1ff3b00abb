import { describe, expect, test } from 'vitest'
import { foldTexts } from './read-texts.ts'

const build = `---
title: Pond skimmer
currency: GBP
rates: { EUR: 0.86 }
systems: { hull: Hull }
---
A flat thing.
`

/** Findings as `day line:column rule sentence`, and what the ledger comes to. */
function read(...notes: readonly (readonly string[])[]): { told: string[]; total: string } {
  const sessions = Object.fromEntries(
    notes.map((lines, at) => [
      `2026-03-0${at + 1}-n.md`,
      `---\ntitle: n\n${lines[0]?.startsWith('|') ? '' : `${lines.join('\n')}\n`}---\n${lines[0]?.startsWith('|') ? lines.join('\n') : 'Nothing.'}\n`,
    ]),
  )
  const { record, findings } = foldTexts({ build, sessions })
  const told = findings.map(
    ({ file, line, column, rule, message, mend, related }) =>
      `${file.slice(25, 27)} ${line}:${column} ${rule} ${message}${mend === null ? '' : ` → ${mend}`}${related.map(at => ` (${at.message}, ${at.file.slice(25, 27)} ${at.line})`).join('')}`,
  )
  return { told, total: record.ledger.total }
}

const keel = (line: string): string[] => ['parts:', `  keel: { ${line} }`, '  mast: { cost: £7 }']

const refused = (written: string, column = 17): string =>
  `01 4:${column} not-a-quantity Unexpected \`${written}\` for \`keel/cost\`, expected an amount of money such as \`£184\``
const below = (written: string): string =>
  `01 4:17 not-a-quantity Unexpected \`${written}\` for \`keel/cost\`, expected what was paid, nothing or more; what came back is the cost of a part that was \`returned\` or \`sold\``
const pounds = (written: string): string =>
  `01 4:17 ambiguous-unit Unexpected \`${written}\`, expected a unit that is clear: this may be a mass or money; nothing was read → write \`lb\` or \`£\``

describe('a price', () => {
  // The mast beside it cost £7: whatever is wrong with the keel, the rest is right.
  test.each([
    ['cost: £40', [], '47.00'],
    ['cost: 40 GBP', [], '47.00'],
    ['cost: £0', [], '7.00'],
    ['cost: forty quid', [], '47.00'],
    ['cost: €40', [], '41.40'],
    ['cost: 40', [refused('40')], '7.00'],
    ['cost: 40.50', [refused('40.50')], '7.00'],
    ['cost: free', [refused('free')], '7.00'],
    ['cost: two hundred pounds', [pounds('two hundred pounds')], '7.00'],
    ['cost: -£5', [below('-£5')], '7.00'],
    ['cost: £-5', [below('£-5')], '7.00'],
    ['cost: −5 GBP', [below('−5 GBP')], '7.00'],
    ['cost: 40 XQZ', [refused('40 XQZ')], '7.00'],
    ['cost: 40 zorkmids', [refused('40 zorkmids')], '7.00'],
    [
      'cost: 40 SEK',
      [
        '01 4:17 no-rate Unexpected currency `SEK` in `40.00 SEK`, expected a rate for it in build.md; the amount is not in any sum → rates: { SEK: 1.00 }, with what one SEK is in GBP',
      ],
      '7.00',
    ],
    [
      'cost: £40 to £50',
      ['01 4:17 not-a-quantity Unexpected `£40 to £50` for `keel/cost`, expected one amount of money such as `£184`'],
      '7.00',
    ],
    [
      'cost: £1.005',
      [
        '01 4:17 two-readings Unexpected three decimals in `£1.005` for `keel/cost`, expected two in GBP; a price of 1.005 was read, and no thousands → £1005, if it is thousands',
      ],
      '8.01',
    ],
    [
      'cost: 1.500 EUR',
      [
        '01 4:17 two-readings Unexpected three decimals in `1.500 EUR` for `keel/cost`, expected two in EUR; a price of 1.50 was read, and no thousands → 1500 EUR, if it is thousands',
      ],
      '8.29',
    ],
    ['cost: £0.335, qty: 3', [], '8.01'],
    ['cost: "£1,500"', [], '1507.00'],
  ] as const)('`%s` is told as %j, and the ledger comes to %s', (line, told, total) => {
    expect(read(keel(line))).toEqual({ told, total })
  })

  test('is read in a table of the body as in the front matter', () => {
    expect(
      read(['| Part | Cost | Qty |', '|---|---|---|', '| keel | -£4 | 1 |', '| mast | £7 | 0 |', '| boom | £3 | 2 |']),
    ).toEqual({
      told: [
        '01 6:10 not-a-quantity Unexpected `-£4` for `keel/cost`, expected what was paid, nothing or more; what came back is the cost of a part that was `returned` or `sold`',
        '01 7:15 not-a-quantity Unexpected `0` for `mast/qty`, expected a number such as `2`',
      ],
      total: '13.00',
    })
  })

  test('of what was bought for no part is held to the same', () => {
    expect(
      read([
        'spend:',
        '  - { what: paint, cost: 12 }',
        '  - { what: tar, cost: -£12 }',
        '  - { what: rope, cost: £3 }',
      ]),
    ).toEqual({
      told: [
        '01 4:26 not-a-quantity Unexpected `12` for `spend/1/cost`, expected an amount of money such as `£184`',
        '01 5:24 not-a-quantity Unexpected `-£12` for `spend/2/cost`, expected what was paid, nothing or more; what came back is the cost of a part that was `returned` or `sold`',
      ],
      total: '3.00',
    })
  })
})

const noCount = (written: string): string =>
  `01 4:26 not-a-quantity Unexpected \`${written}\` for \`keel/qty\`, expected a number such as \`2\``

describe('a quantity', () => {
  test.each([
    ['2', [], '17.00'],
    ['2.4', [], '19.00'],
    ['two', [], '17.00'],
    ['½', [], '9.50'],
    ['0', [noCount('0')], '12.00'],
    ['-2', [noCount('-2')], '12.00'],
    ['a pair', [noCount('a pair')], '12.00'],
    [
      '2.4 m',
      [
        '01 4:26 not-a-quantity Unexpected `2.4 m` for `keel/qty`, expected `2.4` alone, with the cost and the mass of 1 m → 2.4',
      ],
      '12.00',
    ],
  ] as const)('`qty: %s` is told as %j, and the ledger comes to %s', (qty, told, total) => {
    expect(read(keel(`cost: £5, qty: ${qty}`))).toEqual({ told, total })
  })
})

const done = (line: string): string[] => ['parts:', `  keel: { ${line} }`]

describe('what was done to a part', () => {
  test.each([
    ['sold after it was bought', ['action: ordered, cost: £10', 'action: sold, cost: £4'], [], '6.00'],
    [
      'sold before it was bought',
      ['action: sold, cost: £4', 'action: ordered, cost: £10'],
      [
        '01 4:19 unlikely Unexpected `sold` of part `keel` before it was ordered, expected the notes the other way round or another name for the other part; it counts as written (It was ordered here, 02 4)',
      ],
      '6.00',
    ],
    ['sold as the rest of a donor', ['action: sold, cost: £4'], [], '-4.00'],
    [
      'returned twice',
      [
        'action: ordered, cost: £10',
        'action: returned, cost: £10, why: bent',
        'action: returned, cost: £10, why: bent',
      ],
      [
        '03 4:19 unlikely Unexpected `returned` of part `keel`, expected one that is still there: all that was bought had left before; it counts as written (It left here, 02 4)',
      ],
      '-10.00',
    ],
    [
      'returned a second time by its quantity',
      [
        'action: ordered, cost: £10, qty: 5',
        'action: returned, cost: £10, qty: 2, why: bent',
        'action: returned, cost: £10, qty: 3, why: bent',
      ],
      [],
      '0.00',
    ],
    [
      'more returned than bought',
      ['action: ordered, cost: £1, qty: 5', 'action: returned, cost: £1, qty: 7, why: bent'],
      [
        '02 4:19 unlikely Unexpected 7 of part `keel` returned, expected no more than the 5 left of what was bought; it counts as written',
      ],
      '-2.00',
    ],
    [
      'returned, bought again and returned',
      [
        'action: ordered, cost: £10',
        'action: returned, cost: £10, why: bent',
        'action: ordered, cost: £12',
        'action: returned, cost: £12, why: bent',
      ],
      [],
      '0.00',
    ],
    [
      'fitted while rejected',
      ['action: rejected, why: bent', 'action: fitted'],
      [
        '02 4:19 unlikely Unexpected `fitted` of part `keel`, which was rejected, expected `modified`, `received` or `made` before it is fitted; it counts as written (It was rejected here, 01 4)',
      ],
      '0.00',
    ],
    [
      'rejected, straightened and fitted',
      ['action: rejected, why: bent', 'action: modified', 'action: fitted'],
      [],
      '0.00',
    ],
    ['rejected and tried again', ['action: rejected, why: bent', 'action: trial-fitted'], [], '0.00'],
    ['removed and fitted again', ['action: fitted', 'action: removed', 'action: fitted'], [], '0.00'],
  ] as const)('%s', (_, lines, told, total) => {
    expect(read(...lines.map(done))).toEqual({ told, total })
  })
})

describe('hours', () => {
  const hours = (written: string): string[] => [`hours: ${written}`]
  const many = (text: string): string =>
    `01 3:8 unlikely Unexpected ${text}, expected no more than the 24 of a day; they count as written`
  const wrong = (text: string): string =>
    `01 3:8 not-a-quantity Unexpected \`${text}\` for \`hours\`, expected hours such as \`6.5\` or \`6 h 30\``

  test.each([
    ['24', []],
    ['6 h 30', []],
    ['30', [many('30 hours on 2026-03-01')]],
    ['30 h', [many('30 hours on 2026-03-01')]],
    ['24 h 01', [many('24.0167 hours on 2026-03-01')]],
    ['-3', [wrong('-3')]],
    ['0', [wrong('0')]],
    ['about 6', [wrong('about 6')]],
  ])('`hours: %s` is told as %j', (written, told) => {
    expect(read(hours(written)).told).toEqual(told)
  })

  test('of two notes of one day are added, and told once at the note that brings too many', () => {
    const note = (hours: string): string => `---\ntitle: n\ndate: 2026-03-01\nhours: ${hours}\n---\nNothing.\n`
    const { findings } = foldTexts({
      build,
      sessions: { '2026-03-01-a.md': note('14'), '2026-03-01-b.md': note('10.5'), '2026-03-01-c.md': note('2') },
    })
    expect(findings.map(({ file, message }) => `${file.slice(17)} ${message}`)).toEqual([
      '2026-03-01-b.md Unexpected 10.5 hours on 2026-03-01, 24.5 with the notes before it, expected no more than the 24 of a day; they count as written',
    ])
  })
})

const near = (part: string, meant: string): string =>
  `02 4:3 near-name Unexpected new part \`${part}\`, expected the part \`${meant}\`, or a \`name:\` of its own if it is another → ${meant} (\`${meant}\` is named here, 01 4)`
const key = (part: string, meant: string): string =>
  `02 4:3 near-name Unexpected new part \`${part}\`, expected the key \`${meant}:\` in its own place, or a \`name:\` if it is a part`

describe('a new part', () => {
  test.each([
    ['fuel-tank: { action: fitted }', []],
    ['feul-tank: { action: fitted }', [near('feul-tank', 'fuel-tank')]],
    ['fuel-tanks: ~', [near('fuel-tanks', 'fuel-tank')]],
    ['feul-tank: { name: The other tank }', []],
    ['fuel-tank-2: { action: fitted }', []],
    ['measurements: { fuel-tank: ~ }', [key('measurements', 'measurements')]],
    ['recipt: { action: fitted }', [key('recipt', 'receipt')]],
    ['post: { action: fitted }', []],
  ])('`%s` after a fuel-tank is told as %j', (line, told) => {
    const messages = read(['parts:', '  fuel-tank: { name: Tank }'], ['parts:', `  ${line}`]).told
    expect(messages.filter(message => message.includes('near-name'))).toEqual(told)
  })

  test.each([
    ['belt', 'bolt'],
    ['left-strut-a', 'left-strut-b'],
    ['front-lamp', 'front-ramp-x'],
  ])('%s and %s are two parts', (one, other) => {
    expect(read(['parts:', `  ${one}: ~`], ['parts:', `  ${other}: ~`]).told).toEqual([])
  })

  test('two names of one note that are alike were both meant', () => {
    expect(read(['parts:', '  front-seat: ~', '  front-seats: ~']).told).toEqual([])
  })
})
