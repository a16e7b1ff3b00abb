import { describe, expect, test } from 'vitest'
import { stated, statedFront, told } from './stated.ts'

const dated = 'content/sessions/2026-03-07-tank.md'
const undated = 'content/sessions/tank.md'

describe('title and date', () => {
  test.each([
    ['title: Tank\ndate: 2026-03-07', undated, '2026-03-07'],
    ['title: Tank', dated, '2026-03-07'],
    ['title: Tank\ndate: ~', dated, '2026-03-07'],
    ['title: Tank\ndate: 2026-03-08', dated, '2026-03-08'],
  ])('`%s` in %s is dated %s', (front, file, date) => {
    const note = stated(`---\n${front}\n---\n`, file)
    expect(told(note)).toEqual([])
    expect(note.session).toMatchObject({ date, title: { text: 'Tank' } })
  })

  test.each([
    ['date: 2026-03-07', dated, '1:1-4 no-title Unexpected note without a title, expected `title:` → title: …'],
    [
      'title: Tank',
      undated,
      '1:1-4 no-date Unexpected note without a date, expected `date:` or a file name that begins with one → date: 2026-03-07',
    ],
    [
      'title: Tank',
      'content/sessions/2026-02-30-tank.md',
      '1:1-4 bad-date Unexpected `2026-02-30` in the name of the file, expected a day that exists such as `2026-03-07`',
    ],
    [
      'title: Tank\ndate: 2026-02-30',
      undated,
      '3:7-17 bad-date Unexpected `2026-02-30` for `date`, expected a day that exists, written as `2026-03-07`',
    ],
    [
      'title: Tank\ndate: 2026-3-7',
      undated,
      '3:7-15 bad-date Unexpected `2026-3-7` for `date`, expected `2026-03-07` → 2026-03-07',
    ],
    [
      'title: Tank\ndate: [2026]',
      undated,
      '3:7-13 bad-date Unexpected a list for `date`, expected a day that exists, written as `2026-03-07`',
    ],
  ])('`%s` in %s is told', (front, file, finding) => {
    expect(told(stated(`---\n${front}\n---\n`, file))).toEqual([finding])
  })

  test.each([
    ['by: Ro Penhale', { text: 'Ro Penhale', marks: [{ start: 0, end: 10, as: 'people' }] }],
    ['by: ~', null],
    ['hours: 2', null],
  ])('`%s` tells who wrote the note, a person whether marked or not', (line, by) => {
    const note = stated(`---\ntitle: Tank\n${line}\n---\n`, dated)
    expect(told(note)).toEqual([])
    expect(note.session?.by).toEqual(by)
  })

  test('a bad date leaves the note its file name’s date', () => {
    expect(stated('---\ntitle: Tank\ndate: soon\n---\n', dated).session?.date).toBe('2026-03-07')
  })

  test('front matter that cannot be read is one finding, without a missing title beside it', () => {
    const note = stated('---\ntitle: [Tank\n---\nThe tank is 860 mm long.\n', undated)
    expect(note.findings.map(({ rule }) => rule)).toEqual(['front-matter'])
    expect(note.figures).toMatchObject([{ id: 'q-1', quantity: { text: '860 mm' } }])
  })

  test('a note without front matter has no title and no date', () => {
    const note = stated('Nothing but words.\n', undated)
    expect(note.findings.map(({ rule }) => rule)).toEqual(['no-title', 'no-date'])
    expect(note.session).toMatchObject({ title: { text: 'tank' }, date: null })
  })
})

describe('hours', () => {
  test.each([
    ['6.5', '6.5'],
    ['6 h 30', '6.5'],
    ['6h30', '6.5'],
    ['6:45', '6.75'],
    ['6 h', '6'],
    ['6 h 30 min', '6.5'],
    ['390 min', '6.5'],
    ['6 h 20', '6.3333'],
    ['2 h 40 min', '2.6667'],
    ['5 1/2 hours', '5.5'],
  ])('`%s` is %s', (written, amount) => {
    const note = statedFront(`hours: ${written}`)
    expect(told(note)).toEqual([])
    expect(note.session?.hours?.amount).toBe(amount)
  })

  test.each([
    ['all day', '4:8-15 not-a-quantity Unexpected `all day` for `hours`, expected hours such as `6.5` or `6 h 30`'],
    ['6 h 75', '4:8-14 not-a-quantity Unexpected `6 h 75` for `hours`, expected hours such as `6.5` or `6 h 30`'],
    ['-2', '4:8-10 not-a-quantity Unexpected `-2` for `hours`, expected hours such as `6.5` or `6 h 30`'],
    ['6 mm', '4:8-12 not-a-quantity Unexpected `6 mm` for `hours`, expected hours such as `6.5` or `6 h 30`'],
  ])('`%s` is told', (written, finding) => {
    const note = statedFront(`hours: ${written}`)
    expect(told(note)).toEqual([finding])
    expect(note.session?.hours).toBeNull()
  })
})
