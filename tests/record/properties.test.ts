import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { AsBuiltRecord } from '../../src/record/record.ts'
import { build, fold, job, measured, part, type Said, said, session, spend, subject } from './stated.ts'

const names = fc.constantFrom('fuel-tank', 'fuel-pump', 'strap-1', 'seat')
const figures = fc.integer({ min: 1, max: 999 }).map(size => `${size} mm`)
const action = fc.constantFrom(
  undefined,
  'ordered',
  'made',
  'modified',
  'trial-fitted',
  'fitted',
  'removed',
  'rejected',
  'sold',
)

const fact: fc.Arbitrary<Said> = fc.oneof(
  fc
    .tuple(names, fc.constantFrom('length', 'width'), figures)
    .map(([name, key, text]) => measured(`${name}/${key}`, text)),
  fc
    .tuple(names, fc.constantFrom('red', 'green', null))
    .map(([name, colour]) => said(subject('circuit', name), 'cable.colour', colour)),
  fc
    .tuple(names, action)
    .map(([name, word]) => part(name, word === undefined ? {} : { action: word as 'fitted', cost: '2.50' })),
  fc.tuple(names, fc.boolean()).map(([name, done]) => job(`look at ${name}`, { done })),
  names.map(name => spend(`paint for ${name}`, '1.99')),
)

const notes = fc
  .uniqueArray(fc.tuple(fc.integer({ min: 10, max: 28 }), fc.constantFrom('a', 'b')), {
    maxLength: 6,
    selector: ([day, name]) => `${day}${name}`,
  })
  .chain(heads =>
    fc.tuple(
      ...heads.map(([day, name]) =>
        fc.array(fact, { maxLength: 8 }).map(facts => session(`2026-03-${day}-${name}`, facts)),
      ),
    ),
  )

const text = (folded: ReturnType<typeof fold>): string => JSON.stringify(folded)

describe('the fold of any notes', () => {
  test('is the same, byte for byte, in whatever order the notes are read', () => {
    fc.assert(
      fc.property(notes, fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })), (some, dice) => {
        const shuffled = [...some]
          .map(note => ({ note, at: dice.next().value }))
          .sort((one, other) => one.at - other.at)
        expect(text(fold(shuffled.map(({ note }) => note)))).toBe(text(fold(some)))
      }),
    )
  })

  test('loses no value: all that was said of a property is in its history, in the order of the notes', () => {
    fc.assert(
      fc.property(notes, some => {
        const { record } = fold(some)
        const saidOf = record.sessions.flatMap(({ id }) => some.find(note => note.session?.id === id)?.facts ?? [])
        const held = new Set(placesIn(record))
        const told = saidOf.filter(fact => fact.type === 'property' && fact.value.type !== 'nothing')
        expect(told.filter(({ place }) => !held.has(`${place.file}:${place.line}`))).toEqual([])
      }),
    )
  })

  test('has every mention of a part that acts in the part’s events, oldest first', () => {
    fc.assert(
      fc.property(notes, some => {
        const { record } = fold(some)
        const order = new Map(record.sessions.map(({ id, number }) => [id, number]))
        for (const { events } of record.parts) {
          const numbers = events.map(({ session }) => order.get(session ?? '') ?? 0)
          expect(numbers).toEqual([...numbers].sort((one, other) => one - other))
        }
        const written = some.flatMap(({ facts }) =>
          facts.filter(each => each.type === 'mention' && each.action !== null),
        )
        expect(record.parts.flatMap(({ events }) => events.filter(event => event.written)).length).toBe(written.length)
      }),
    )
  })

  test('is plain JSON: written and read again it is the same', () => {
    fc.assert(
      fc.property(notes, some => {
        const folded = fold(some)
        expect(JSON.parse(text(folded))).toEqual(folded)
      }),
    )
  })

  test('leaves its notes as they were', () => {
    fc.assert(
      fc.property(notes, some => {
        const before = JSON.stringify(some)
        fold(some, { of: build() })
        expect(JSON.stringify(some)).toBe(before)
      }),
    )
  })
})

/** `file:line` of every value that the record holds of any thing. */
function placesIn(record: AsBuiltRecord): string[] {
  const things = [...record.parts, ...record.circuits, ...record.connectors, ...record.measured, record.vehicle]
  return things
    .flatMap(({ properties }) => Object.values(properties).flat())
    .map(({ place }) => `${place.file}:${place.line}`)
}
