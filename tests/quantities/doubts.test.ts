import { expect, test } from 'vitest'
import { readQuantities } from '../../src/quantities/read-quantities.ts'
import { settings } from './describe-readings.ts'

const messages = [
  [
    'It took 25 pounds.',
    'Unexpected `25 pounds`, expected a unit that is clear: this may be a mass or money; nothing was read',
    'write `lb` or `£`',
  ],
  [
    'Add 3 gal.',
    'Unexpected `3 gal`, expected a unit that is clear: this may be imperial or US gallons; nothing was read',
    'write `imp gal` or `US gal`, or set `gallon:` in build.md to imperial or us',
  ],
  [
    'A 12,5 mm strap.',
    'Unexpected `12,5 mm`, expected `.` as the decimal mark, since build.md says `decimal: point`; nothing was read',
    'write `12.5 mm`',
  ],
  [
    'Cut 2 350 mm lengths.',
    'Unexpected `2 350 mm`, expected one figure: this was read as `2350 mm`, and may be 2 of `350 mm`',
    'write `2 × 350 mm` or `2350 mm`',
  ],
  [
    'Fitted 2 3/8 in bolts.',
    'Unexpected `2 3/8 in`, expected one figure: this was read as `2-3/8 in`, and may be 2 of `3/8 in`',
    'write `2 × 3/8 in` or `2-3/8 in`',
  ],
  [
    'It is seven and three eighths deep.',
    'Unexpected `seven and three eighths` without a unit, expected one such as inches; nothing was read',
    'write `seven and three eighths inches` if inches are meant',
  ],
] as const

test.each(messages)('%s is asked back about in full', (text, message, mend) => {
  const { doubts } = readQuantities(text, settings.plain)
  expect(doubts.map(doubt => [doubt.message, doubt.mend])).toEqual([[message, mend]])
})

test('the other decimal mark is asked back about under decimal: comma', () => {
  const [doubt] = readQuantities('A 12.5 mm strap.', settings.comma).doubts
  expect(doubt?.mend).toBe('write `12,5 mm`')
})
