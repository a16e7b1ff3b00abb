import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { privateKinds } from '../../src/facts/closed-words.ts'
import { unmark } from '../../src/facts/unmark.ts'

describe('private marks in words of front matter', () => {
  test.each([
    [
      'the plate :private[AB 123]{as=identity} is off',
      'the plate AB 123 is off',
      [{ start: 10, end: 16, as: 'identity' }],
    ],
    [':private[Ada]{as="people"}', 'Ada', [{ start: 0, end: 3, as: 'people' }]],
    [
      ":private[a [b] c]{as='place'} and :private[d]{ as=source }",
      'a [b] c and d',
      [
        { start: 0, end: 7, as: 'place' },
        { start: 12, end: 13, as: 'source' },
      ],
    ],
    ['no mark at 12:30 or red:black', 'no mark at 12:30 or red:black', []],
    ['parts: private sale', 'parts: private sale', []],
  ])('`%s` is read as `%s`', (written, text, marks) => {
    expect(unmark(written)).toMatchObject({ words: { text, marks }, broken: null })
  })

  test.each([
    ['the plate :private[AB 123]', 10],
    [':private[AB 123]{as=secret}', 0],
    [':private[AB 123] {as=identity}', 0],
    [':private{as=identity}', 0],
    [':private[]{as=identity}', 0],
    [':Private[AB 123]{as=identity}', 0],
    [':privat[AB 123]{as=identity}', 0],
    [':pirvate[AB 123]{as=identity}', 0],
    ['::private[AB 123]{as=identity}', 0],
    ['::: private', 0],
    [':private[AB 123{as=identity}', 0],
    [':private[a :private[b]{as=place}]{as=people}', 0],
  ])('`%s` is broken at %i, so every kind of edition leaves the whole text out', (written, broken) => {
    const { words, broken: at } = unmark(written)
    expect(at).toBe(broken)
    expect(words).toEqual({ text: written, marks: privateKinds.map(as => ({ start: 0, end: written.length, as })) })
  })

  test('each letter of the unmarked text stands where its origin says', () => {
    const word = fc
      .string({ minLength: 1, maxLength: 8, unit: fc.constantFrom(...'abc 1') })
      .filter(text => text.trim() !== '')
    fc.assert(
      fc.property(
        fc.array(fc.record({ word, as: fc.constantFrom(null, ...privateKinds) }), { maxLength: 6 }),
        pieces => {
          const written = pieces
            .map(piece => (piece.as === null ? piece.word : `:private[${piece.word}]{as=${piece.as}}`))
            .join('')
          const { words, origin } = unmark(written)
          expect(words.text).toBe(pieces.map(piece => piece.word).join(''))
          for (let at = 0; at < words.text.length; at += 1) expect(written[origin(at)]).toBe(words.text[at])
        },
      ),
    )
  })
})
