import { describe, expect, test } from 'vitest'
import { sessionNamed } from '../../src/commands/session-named.ts'
import { changesSince } from '../../src/record/asked/changes-since.ts'
import { compareAnswers } from '../../src/record/asked/compare-answers.ts'
import { foldTexts } from '../record/read-texts.ts'
import { build, first, second } from './since-notes.ts'

const sessions = { '2026-03-07-first.md': first, '2026-03-14-second.md': second }
const after = foldTexts({ build, sessions }).record
const before = foldTexts({ build, sessions: { '2026-03-07-first.md': first } }).record

describe('what changed since a session', () => {
  test('names the parts, figures, circuits, jobs and amounts of the later notes, and nothing else', () => {
    const changes = changesSince(before, after)
    expect(changes.sessions.map(({ id }) => id)).toEqual(['2026-03-14-second'])
    expect(
      changes.parts.map(({ before: was, after: now }) => `${now.id} ${was?.state ?? 'new'} → ${now.state}`),
    ).toEqual(['keel trial-fitted → fitted', 'tiller new → ordered'])
    expect(
      changes.measurements.map(
        ({ before: was, after: now }) => `${now.path} ${was?.quantity.text} → ${now.quantity.text}`,
      ),
    ).toEqual(['keel/length 2.4 m → 2.38 m'])
    expect(changes.circuits.map(({ thing, key }) => `${thing.id} ${key}`)).toEqual(['pump length', 'pump state'])
    expect(changes.opened.map(({ id }) => id)).toEqual(['paint'])
    expect(changes.closed.map(({ id }) => id)).toEqual(['caulk', 'sweep', 'string'])
    expect(changes.money.map(({ what, amount }) => `${what} ${amount}`)).toEqual(['keel 5.00', 'tiller 12.00'])
    expect(changes.paid).toBe('17.00')
  })

  test('finds nothing between a record and itself, and everything since before the first', () => {
    const same = changesSince(after, after)
    const { paid, ...lists } = same
    expect({ paid, lists: Object.values(lists).flat() }).toEqual({ paid: '0.00', lists: [] })
    const none = foldTexts({ build, sessions: {} }).record
    expect(changesSince(none, after).parts.map(({ before: was, after: now }) => [was, now.id])).toEqual([
      [null, 'keel'],
      [null, 'rope'],
      [null, 'tiller'],
    ])
  })

  test('an answer counts where it came out otherwise, is new or is gone', () => {
    const answer = (subject: string, verdict: string) => ({ check: 'c', subject, aspect: null, verdict })
    const changed = compareAnswers(
      [answer('a', 'pass'), answer('b', 'fail'), answer('d', 'pass')],
      [answer('a', 'pass'), answer('b', 'pass'), answer('e', 'fail')],
    )
    expect(
      changed.map(({ before: was, after: now }) => `${(now ?? was)?.subject} ${was?.verdict} ${now?.verdict}`),
    ).toEqual(['b fail pass', 'e undefined fail', 'd pass undefined'])
  })

  test.each([
    ['2026-03-14-second', '2026-03-14-second'],
    ['2026-03-14-second.md', '2026-03-14-second'],
    ['1', '2026-03-07-first'],
    ['2026-03-07', '2026-03-07-first'],
    ['2026-03-10', '2026-03-07-first'],
    ['2026-12-31', '2026-03-14-second'],
    ['2026-03-01', null],
    ['2026-03-07-f', '2026-03-07-first'],
  ])('%j means the session %j', (named, id) => {
    expect(sessionNamed(after.sessions, named)?.id ?? null).toBe(id)
  })

  test.each([
    ['2026-03', '`2026-03` begins the names of 2 sessions: 2026-03-07-first, 2026-03-14-second. Name one of them.'],
    [
      '3',
      'Unexpected session `3`, expected the name of one, a number from 1 to 2 or a day, such as `2026-03-14-second`.',
    ],
    [
      '2026-02-31',
      'Unexpected session `2026-02-31`, expected the name of one, a number from 1 to 2 or a day, such as `2026-03-14-second`.',
    ],
    [
      '',
      'Unexpected session ``, expected the name of one, a number from 1 to 2 or a day, such as `2026-03-14-second`.',
    ],
  ])('%j is refused', (named, message) => {
    expect(() => sessionNamed(after.sessions, named)).toThrow(message)
  })
})
