import { describe, expect, test } from 'vitest'
import { actions } from '../../src/facts/closed-words.ts'
import type { Action } from '../../src/facts/fact.ts'
import { quantityAt } from '../../src/record/lookups.ts'
import type { Part } from '../../src/record/record.ts'
import { build, donor, fold, part, type Said, said, session, subject } from './stated.ts'

const dates = ['2026-01-10', '2026-01-17', '2026-01-24', '2026-01-31']

/** The named part after one session for each list of facts. */
function partAfter(id: string, ...notes: Said[][]): Part {
  const { record } = fold(
    notes.map((facts, at) => session(`${dates[at]}-note`, facts)),
    { of: build([donor('corvane', '650.00')]) },
  )
  const found = record.parts.find(each => each.id === id)
  if (found === undefined) throw new Error(`expected a part ${id}`)
  return found
}

const standing = ({ state, onVehicle, events }: Part): string =>
  `${state}, ${onVehicle ? 'on' : 'off'} the vehicle, after ${events.map(({ action, written }) => (written ? action : `(${action})`)).join(' ')}`

describe('what became of a part', () => {
  /** One session for each word: an action, or `named` where the note names the part without one. */
  const course = (words: string): Said[][] =>
    words
      .split(', ')
      .map(word => [part('tank', (actions as readonly string[]).includes(word) ? { action: word as Action } : {})])

  test.each([
    ['named', 'fitted, on the vehicle, after (fitted)'],
    ['named, named', 'fitted, on the vehicle, after (fitted)'],
    ['ordered', 'ordered, off the vehicle, after ordered'],
    ['ordered, named', 'ordered, off the vehicle, after ordered'],
    ['made, received', 'received, off the vehicle, after made received'],
    ['trial-fitted', 'trial-fitted, off the vehicle, after trial-fitted'],
    ['named, trial-fitted', 'trial-fitted, off the vehicle, after (fitted) trial-fitted'],
    ['fitted, modified', 'modified, on the vehicle, after fitted modified'],
    ['modified', 'modified, off the vehicle, after modified'],
    ['named, removed, modified', 'modified, off the vehicle, after (fitted) removed modified'],
    ['named, rejected', 'rejected, off the vehicle, after (fitted) rejected'],
    ['fitted, returned', 'returned, off the vehicle, after fitted returned'],
    ['fitted, scrapped', 'scrapped, off the vehicle, after fitted scrapped'],
    ['removed, fitted', 'fitted, on the vehicle, after removed fitted'],
  ])('%s → %s', (words, expected) => {
    expect(standing(partAfter('tank', ...course(words)))).toBe(expected)
  })

  test('a later mention without an action keeps what it said, and acts on nothing', () => {
    const { events, mentions, from } = partAfter(
      'tank',
      [part('tank', { from: 'a friend' })],
      [part('tank', { from: 'corvane', why: 'the first was a slip' })],
    )
    expect(events.length).toBe(1)
    expect(mentions.map(({ action, why }) => [action, why?.value.text])).toEqual([['fitted', 'the first was a slip']])
    expect(from?.value.text).toBe('corvane')
  })

  test('a part from a donor names the donor; free words do not', () => {
    expect(partAfter('seat', [part('seat', { from: 'corvane' })]).donor).toBe('corvane')
    expect(partAfter('seat', [part('seat', { from: 'a skip' })]).donor).toBeNull()
  })

  test('kind, system and name are those said last', () => {
    const tank = subject('part', 'fuel-tank')
    const found = partAfter(
      'fuel-tank',
      [part('fuel-tank'), said(tank, 'kind', 'tank'), said(tank, 'system', 'fuel')],
      [said(tank, 'name', 'Stainless tank')],
    )
    expect([found.partKind, found.system, found.name, found.named?.session]).toEqual([
      'tank',
      'fuel',
      'Stainless tank',
      '2026-01-17-note',
    ])
    expect(partAfter('fuel-tank', [part('fuel-tank')]).name).toBe('fuel tank')
  })
})

describe('a part that takes the place of another', () => {
  const old = [part('old-tank')]

  test('removes it by being fitted, which nobody wrote', () => {
    const notes = [
      old,
      [part('tank', { action: 'ordered', replaces: 'old-tank' })],
      [part('tank', { action: 'fitted' })],
    ]
    expect(standing(partAfter('old-tank', ...notes))).toBe('removed, off the vehicle, after (fitted) (removed)')
    expect(partAfter('old-tank', ...notes).events.map(({ session }) => session)).toEqual([
      '2026-01-10-note',
      '2026-01-24-note',
    ])
    expect([partAfter('old-tank', ...notes).replacedBy, partAfter('tank', ...notes).replaces]).toEqual([
      'tank',
      'old-tank',
    ])
  })

  test.each([
    [
      'is only tried in its place',
      [part('tank', { action: 'trial-fitted', replaces: 'old-tank' })],
      'fitted, on the vehicle, after (fitted)',
    ],
    [
      'sees it sold in the same note',
      [part('tank', { replaces: 'old-tank' }), part('old-tank', { action: 'sold' })],
      'sold, off the vehicle, after (fitted) sold',
    ],
    [
      'finds it written as fitted in the same note',
      [part('old-tank', { action: 'fitted' }), part('tank', { replaces: 'old-tank' })],
      'fitted, on the vehicle, after (fitted) fitted',
    ],
  ])('leaves it as the notes say where it %s', (_, second, expected) => {
    expect(standing(partAfter('old-tank', old, second))).toBe(expected)
  })

  test('does not remove it again when it was fitted again later', () => {
    const notes = [
      old,
      [part('tank', { replaces: 'old-tank' })],
      [part('tank', { action: 'removed' }), part('old-tank', { action: 'fitted' })],
      [part('tank')],
    ]
    expect(standing(partAfter('old-tank', ...notes))).toBe('fitted, on the vehicle, after (fitted) (removed) fitted')
  })
})

describe('how many', () => {
  test.each([
    ['fitted 4', [[part('bolt', { qty: '4' })]], '4'],
    [
      'ordered 10, fitted 8',
      [[part('bolt', { action: 'ordered', qty: '10' })], [part('bolt', { action: 'fitted', qty: '8' })]],
      '8',
    ],
    [
      'ordered 10, fitted',
      [[part('bolt', { action: 'ordered', qty: '10' })], [part('bolt', { action: 'fitted' })]],
      '10',
    ],
    ['fitted 4, put right to 6', [[part('bolt', { qty: '4' })], [part('bolt', { qty: '6' })]], '6'],
    ['fitted 4, sold 1', [[part('bolt', { qty: '4' })], [part('bolt', { action: 'sold', qty: '1' })]], '4'],
    ['fitted', [[part('bolt')]], '1'],
  ])('%s', (_, notes, expected) => {
    expect(partAfter('bolt', ...notes).qty).toBe(expected)
  })

  test('is a property too, for a check that asks for `bolt/qty`', () => {
    expect(quantityAt(partAfter('bolt', [part('bolt', { qty: '4' })]), 'qty')?.value.si).toBe(4)
    expect(quantityAt(partAfter('bolt', [part('bolt')]), 'qty')).toBeNull()
  })
})
