import { describe, expect, test } from 'vitest'
import axleLoads from '../../src/checks/axle-loads.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from './answer-to.ts'

const car: Given = {
  'vehicle/wheelbase': '2400 mm ± 0 mm',
  'part:engine/mass': '200.0 kg ± 0 kg',
  'part:engine/at': '0 mm ± 0 mm',
  'part:tub/mass': '300.0 kg ± 0 kg',
  'part:tub/at': '1200 mm ± 0 mm',
  'axle:front-axle/rating': '600 kg',
  'axle:rear-axle/rating': '200 kg',
}
const bare = { 'part:horn/rating': '6 A' }

const narrow = (text: string): string => text.replaceAll('\u202f', ' ')
const notesOf = (given: Given, aspect: string): string[] =>
  answerTo(axleLoads, { given: { ...car, ...given }, aspect })
    .working.notes.map(narrow)
    .filter(note => !note.includes('left out'))

// Worked by hand: 200 kg over the front axle and half of 300 kg amidships are 350 kg in front and 150 kg behind.
describe('what nobody weighed, and how much it matters', () => {
  test.each([
    [
      'front, 250 kg to its limit',
      bare,
      'front',
      ['1 part on the vehicle has no mass in the record: 250 kg here would bring it to its limit.'],
    ],
    [
      'rear, 50 kg to its limit',
      bare,
      'rear',
      ['1 part on the vehicle has no mass in the record: 50 kg here would bring it to its limit.'],
    ],
    [
      'rear with U of 5.8 kg: first into doubt, then to the limit',
      { ...bare, 'part:tub/mass': '300 kg ± 10 kg' },
      'rear',
      [
        '1 part on the vehicle has no mass in the record: 44.2 kg here would bring it to where the limit lies within what it can be, 50 kg here would bring it to its limit.',
      ],
    ],
    [
      'rear beyond its limit already',
      { ...bare, 'axle:rear-axle/rating': '140 kg' },
      'rear',
      [
        '1 part on the vehicle has no mass in the record: it is at its limit without them, and what they weigh makes it no less.',
      ],
    ],
    [
      'a mass without a place that the limit still allows',
      { 'part:spare/mass': '40 kg' },
      'rear',
      ['1 part of 40 kg has no place: all of it here would make 190 kg, which the limit still allows.'],
    ],
    [
      'a mass without a place that it does not',
      { 'part:spare/mass': '60 kg' },
      'rear',
      ['1 part of 60 kg has no place: all of it here would make 210 kg, which is beyond the limit.'],
    ],
    [
      'the centre, at 720 mm of 500 kg: 10 × 720 / 510 = 14 mm',
      bare,
      'centre',
      [
        '1 part on the vehicle has no mass in the record: each 10 kg of it over the front axle would move the centre 14 mm forward.',
      ],
    ],
    [
      'axles that were weighed with it',
      { ...bare, 'axle:front-axle/load': '360 kg', 'axle:rear-axle/load': '140 kg' },
      'total',
      [],
    ],
    ['nothing unweighed', {}, 'front', []],
  ] as [string, Given, string, string[]][])('%s', (_, given, aspect, notes) => {
    if (aspect === 'total') {
      expect(notesOf({ ...given, 'vehicle/gross-rating': '900 kg' }, aspect)).toContain(
        'What has no mass or no place in the record stood on the scales with the rest, so it moves nothing here.',
      )
      return
    }
    expect(notesOf(given, aspect)).toEqual(notes)
  })

  test('of the variance, what was only estimated is told apart from what was weighed', () => {
    const given = { 'part:tub/mass': 'about 300 kg', 'part:engine/mass': '200 kg ± 4 kg' }
    // About is 5 % here, 15 kg; half of it is in front. Squares of 7.5 and 4: 56.25 and 16 of 72.25.
    expect(notesOf(given, 'front')).toEqual([
      'Of the variance 78 % is of masses that are only written as about, 22 % of masses that were weighed, the rest of places and lengths: weighing the first is worth the most.',
    ])
  })
})
