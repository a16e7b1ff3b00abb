import { describe, expect, test } from 'vitest'
import { sessionNamed } from '../../src/commands/session-named.ts'
import { changesSince } from '../../src/record/asked/changes-since.ts'
import { compareAnswers } from '../../src/record/asked/compare-answers.ts'
import { oddleg, scratch, writeFiles } from '../commands/run-oddleg.ts'
import { foldTexts } from '../record/read-texts.ts'

const build = `---
title: Pond skimmer
currency: GBP
systems: { hull: Hull }
electrical: { nominal: 12 V }
---
A flat thing.
`

const first = `---
title: Keel laid
date: 2026-03-07
hours: 3
parts:
  keel: { system: hull, action: trial-fitted, cost: £40 }
  rope: { action: fitted }
measurements: { keel: { length: 2.4 m }, vehicle: { wheelbase: 900 mm } }
circuits: { pump: { load: 7 A, length: 4.8 m, state: planned } }
temporary: [ { id: string, what: string for a strap, part: keel } ]
---
- [ ] caulk the stern :job{#caulk before=road}
`

const second = `---
title: Keel on
date: 2026-03-14
hours: 4.5
parts:
  keel: { action: fitted, cost: £45 }
  tiller: { system: hull, action: ordered, cost: £12 }
measurements: { keel: { length: { value: 2.38 m, supersedes: true } } }
circuits: { pump: { load: 7 A, length: 5 m, state: live } }
closes: [ caulk ]
clears: [ string ]
---
- [ ] paint it :job{#paint}
- [x] sweep the floor :job{#sweep}
`

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

describe('oddleg since', () => {
  const folder = scratch('since')
  writeFiles(folder, {
    'content/build.md': build,
    'content/sessions/2026-03-07-first.md': first,
    'content/sessions/2026-03-14-second.md': second,
  })
  const since = (...more: readonly string[]) => oddleg(['since', ...more, '--build', folder, '--date', '2026-04-01'])

  test('prints each change with the place where it is written', () => {
    const { status, out } = since('1')
    expect(status).toBe(0)
    const said = out.split('\nChecks\n').map(part => part.split('\n'))
    expect(said[0]).toEqual([
      'Since session 1, 2026-03-07, Keel laid: 1 session, 4.5 hours',
      '',
      'Parts',
      '  fitted       keel, was trial-fitted (content/sessions/2026-03-14-second.md:6:19)',
      '  ordered      tiller (content/sessions/2026-03-14-second.md:7:35)',
      '',
      'Measurements',
      '  keel/length: 2.4 m → 2.38 m (content/sessions/2026-03-14-second.md:8:42)',
      '',
      'Circuits',
      '  pump length: 4.8 m → 5 m (content/sessions/2026-03-14-second.md:9:40)',
      '  pump state: planned → live (content/sessions/2026-03-14-second.md:9:52)',
      '',
    ])
    expect(out).toContain(
      'Money\n  £5.00 keel (content/sessions/2026-03-14-second.md:6:33)\n  £12.00 tiller (content/sessions/2026-03-14-second.md:7:50)\n  £17.00 in all\n',
    )
  })

  test('gives the same as one JSON document', () => {
    const { parts, money, closed } = JSON.parse(since('2026-03-07', '--json').out)
    expect(parts[0]).toEqual({
      id: 'keel',
      before: 'trial-fitted',
      after: 'fitted',
      onVehicle: true,
      file: 'content/sessions/2026-03-14-second.md',
      line: 6,
      column: 19,
    })
    expect([
      money.paid,
      money.lines.length,
      closed.map(({ kind, id }: { kind: string; id: string }) => `${kind} ${id}`),
    ]).toEqual(['17.00', 2, ['job caulk', 'job sweep', 'temporary string']])
  })

  test('says so where nothing was written since, and exits 2 for a session that is not there', () => {
    expect(since('2').out).toBe('Since session 2, 2026-03-14, Keel on: nothing, it is the last\n')
    const { status, out, err } = since('nothing')
    expect({ status, out, err }).toEqual({
      status: 2,
      out: '',
      err: 'oddleg: Unexpected session `nothing`, expected the name of one, a number from 1 to 2 or a day, such as `2026-03-14-second`.\n',
    })
  })
})
