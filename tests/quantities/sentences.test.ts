import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { readQuantities } from '../../src/quantities/read-quantities.ts'
import { describeReadings, type Sentence, settings } from './describe-readings.ts'

// The sentences are our own; what is expected of each follows the table of notations in the note format.
const folder = join(import.meta.dirname, 'sentences')
const kinds = readdirSync(folder).sort()
const tables = await Promise.all(
  kinds.map(async file => ({
    kind: file.replace('.ts', ''),
    ...((await import(join(folder, file))) as { sentences: readonly Sentence[] }),
  })),
)

describe.each(tables)('$kind', ({ sentences }) => {
  const cases = sentences.map(([text, expected, setting = 'plain']) => ({ text, expected, options: settings[setting] }))

  test.each(cases)('$text → $expected', ({ text, expected, options }) => {
    expect(describeReadings(readQuantities(text, options))).toBe(expected)
  })

  test.each(cases)('what is read of “$text” stands at its place', ({ text, options }) => {
    const { readings, doubts } = readQuantities(text, options)
    const places = [...readings.map(({ quantity, start, end }) => ({ text: quantity.text, start, end })), ...doubts]
    expect(places.map(({ start, end }) => text.slice(start, end))).toEqual(places.map(place => place.text))
  })
})

test('there are three hundred sentences and more, a third of them traps', () => {
  const all = tables.reduce((sum, { sentences }) => sum + sentences.length, 0)
  const traps = tables
    .filter(({ kind }) => kind.startsWith('traps-'))
    .reduce((sum, { sentences }) => sum + sentences.length, 0)
  expect(all).toBeGreaterThan(300)
  expect(traps / all).toBeGreaterThan(1 / 3)
})

test('no sentence stands in the tables twice with the same setting', () => {
  const keys = tables.flatMap(({ sentences }) => sentences.map(([text, , setting]) => `${setting ?? 'plain'}: ${text}`))
  expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([])
})
