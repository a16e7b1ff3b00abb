import { describe, expect, test } from 'vitest'
import tables from '../../../plugins/tables/index.ts'
import { bare, plain, run, whole } from '../chain.ts'
import { nodeOf } from '../nodes-of.ts'

const alone = plain().use(tables).freeze()
const withDirectives = bare().use(tables).freeze()

const tableOf = (header: string): string => `${header}\n${header.replace(/[^|]+/gu, '---')}\n`

describe('a header says what its table holds', () => {
  const read: [header: string, reading: unknown][] = [
    ['| Measurement | Value |', { holds: 'measurements', columns: { measurement: 0, value: 1 } }],
    [
      '| VALUE | what | measurement | Note | with |',
      { holds: 'measurements', columns: { measurement: 2, value: 0, with: 4, note: 3 } },
    ],
    ['| *Measurement* | `value` |', { holds: 'measurements', columns: { measurement: 0, value: 1 } }],
    ['| Part | Cost |', { holds: 'parts', columns: { part: 0, cost: 1 } }],
    [
      '| kind | system | action | from | qty | cost | part |',
      { holds: 'parts', columns: { part: 6, cost: 5, qty: 4, from: 3, action: 2, system: 1, kind: 0 } },
    ],
    ['| Part | Cost | Cost |', { holds: 'parts', columns: { part: 0, cost: 1 } }],
  ]
  test.each(read)('%s', (header, reading) => {
    const { tree, messages } = run(alone, tableOf(header))
    expect(nodeOf(tree, 'table').data?.reading).toEqual(reading)
    expect(messages).toEqual([])
  })

  test.each([
    '| Measurement | Size |',
    '| Part | Price |',
    '| Pin | Colour |',
    '| a | b |',
    '| Measurements | Values |',
  ])('%s says nothing', header => {
    const { tree, messages } = run(alone, tableOf(header))
    expect(nodeOf(tree, 'table').data).toBeUndefined()
    expect(messages).toEqual([])
  })
})

describe('a pin table', () => {
  const pins = tableOf('| Wire | PIN | meets | To | Circuit | Carries |')
  const reading = { holds: 'pins', columns: { pin: 1, wire: 0, to: 3, carries: 5, circuit: 4, meets: 2 } }

  test.each([
    ['alone', withDirectives],
    ['among all plugins', whole],
  ])('is read inside a connector, %s', (_, chain) => {
    const { tree, messages } = run(chain, `::::private{as=place}\n:::connector{#a}\n${pins}:::\n::::`)
    expect(nodeOf(tree, 'table').data?.reading).toEqual(reading)
    expect(messages).toEqual([])
  })

  test('is told and not read outside', () => {
    const { tree, messages } = run(alone, `words\n\n${pins}`)
    expect(messages).toEqual([
      '3:1-3:48 pin-table Unexpected pin table outside a connector, expected it inside `:::connector{#stalk-switch}` and `:::`',
    ])
    expect(nodeOf(tree, 'table').data).toBeUndefined()
  })
})
