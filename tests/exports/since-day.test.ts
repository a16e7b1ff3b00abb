import { beforeAll, describe, expect, test } from 'vitest'
import { type Built, builtUpTo, publicationOf, readBuildFolder } from '../../src/build.ts'
import { reportChanges } from '../../src/commands/report-changes.ts'
import { dayBetween, sessionNamed } from '../../src/commands/session-named.ts'
import { makeSiteData } from '../../src/pages/make-site-data.ts'
import { changesSince } from '../../src/record/asked/changes-since.ts'
import { compareAnswers } from '../../src/record/asked/compare-answers.ts'
import { oddleg, scratch, writeFiles } from '../commands/run-oddleg.ts'
import { build, first, second } from './since-notes.ts'

const folder = scratch('since')
let built: Built

beforeAll(async () => {
  writeFiles(folder, {
    'content/build.md': build,
    'content/sessions/2026-03-07-first.md': first,
    'content/sessions/2026-03-14-second.md': second,
  })
  const read = await readBuildFolder(folder, { today: '2026-12-31' })
  if ('trouble' in read) throw new Error(read.trouble)
  built = read
})

/** The record now and as it stood after the sessions up to that number. */
function nowAndThen(number: number) {
  const kept = built.record.sessions.filter(session => session.number <= number).map(({ id }) => id)
  return {
    now: publicationOf(built, 'full'),
    earlier: publicationOf(
      builtUpTo(built, id => kept.includes(id)),
      'full',
    ),
  }
}

describe('what changed since a day', () => {
  test.each([
    ['2026-03-01', 'Since 2026-03-01, before the first session: 2 sessions, 7.5 hours', '£57.00 in all'],
    ['2026-03-06', 'Since 2026-03-06, before the first session: 2 sessions, 7.5 hours', '£57.00 in all'],
    ['2026-03-07', 'Since session 1, 2026-03-07, Keel laid: 1 session, 4.5 hours', '£17.00 in all'],
    ['2026-03-10', 'Since 2026-03-10, after session 1, 2026-03-07, Keel laid: 1 session, 4.5 hours', '£17.00 in all'],
    ['2026-03-14', 'Since session 2, 2026-03-14, Keel on: nothing, it is the last', ''],
    ['2026-07-01', 'Since 2026-07-01, after session 2, 2026-03-14, Keel on: nothing, it is the last', ''],
  ])('of %s says “%s” and “%s”', (named, head, last) => {
    const since = sessionNamed(built.record.sessions, named)
    const { now, earlier } = nowAndThen(since?.number ?? 0)
    const lines = reportChanges({
      since,
      day: dayBetween(named, since),
      changes: changesSince(earlier.record, now.record),
      answers: compareAnswers(earlier.verdicts, now.verdicts),
      record: now.record,
    })
    expect([lines[0], lines.length === 1 ? '' : lines.at(-1)?.trim()]).toEqual([head, last])
  })
})

describe('the page of what changed', () => {
  function tablesSince(number: number): string[] {
    const { now, earlier } = nowAndThen(number)
    const { record, verdicts, inspection, findings } = now
    const before = {
      session: earlier.record.sessions.at(-1)?.id ?? null,
      record: earlier.record,
      verdicts: earlier.verdicts,
    }
    const own = { checks: [], measureNext: [], photos: [], tables: [], date: null, serve: false, scripts: [] }
    const { pages } = makeSiteData(record, verdicts, { ...own, findings, inspection, before })
    const page = pages.find(({ sheet }) => sheet.address === 'since/index.html')
    return (page?.rows ?? []).flatMap(({ parts }) =>
      parts.flatMap(part =>
        part.kind === 'table'
          ? [`${part.table.caption}: ${part.table.groups.flatMap(group => group.rows).length}`]
          : [],
      ),
    )
  }

  test.each([
    [
      1,
      [
        'Parts that are new or stand otherwise: 2',
        'Measurements that are new or were made again: 1',
        'What is said otherwise of a circuit: 2',
        'Amounts since then: 2',
      ],
    ],
    [
      0,
      [
        'Parts that are new or stand otherwise: 3',
        'Measurements that are new or were made again: 2',
        'What is said otherwise of a circuit: 3',
        'Amounts since then: 3',
      ],
    ],
  ])('since session %i has %j', (number, tables) => {
    const found = tablesSince(number)
    expect(found.filter(caption => !caption.startsWith('Checks'))).toEqual(tables)
    expect(found.filter(caption => caption.startsWith('Checks that came out otherwise')).length).toBe(1)
  })
})

describe('oddleg since', () => {
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
