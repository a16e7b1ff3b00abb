import { hoursByMonth, hoursBySystem } from '../record/asked/session-systems.ts'
import { addHours, standingTime } from '../record/asked/standing-time.ts'
import type { Job } from '../record/record.ts'
import { anchorName, pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { calendarOf, hoursPlot } from './hours-plots.ts'
import { plain, wordsCell } from './inline.ts'
import { monthName } from './page-dates.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, pageScope, saidWords } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { hoursText, stoodCells } from './stood.ts'
import { column, heading, row, table, words } from './tables.ts'

/** When the work was done, on what, and how long a job took from its first mention to its closing. */
export function makeHoursPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('hours'))
  const { sessions } = atlas.record
  const without = sessions.filter(({ hours }) => hours === null).length
  const section = (title: string, id: string, parts: readonly PartOfPage[]) =>
    parts.length === 0 ? wideRow() : wideRow(heading(title, id), ...parts)
  return simplePage(scope, {
    title: 'Hours',
    section: 'hours',
    gutter: [
      { term: 'Hours', words: [plain(hoursText(addHours(sessions)))] },
      { term: 'Sessions', words: [plain(String(sessions.length))] },
      ...(without === 0 ? [] : [{ term: 'Without hours', words: [plain(String(without))] }]),
    ],
    rows: [
      textRow(words('lede', 'Hours as the notes give them, one figure for each session.')),
      section('In which months was the work done?', 'months', [...hoursPlot(scope), ...monthTable(scope)]),
      section('On which days?', 'days', calendarOf(scope)),
      section('Which system took the hours?', 'systems', systemTable(scope)),
      section('How long did each job take?', 'jobs', jobTable(scope)),
    ],
  })
}

function monthTable(scope: PageScope): PartOfPage[] {
  const months = hoursByMonth(scope.record)
  const undated = scope.record.sessions.filter(({ date }) => date === '')
  if (months.length === 0) return []
  const rows = months.map(({ month, sessions, hours }) =>
    row([wordsCell(monthText(month)), wordsCell(String(sessions.length)), wordsCell(hoursText(hours))]),
  )
  const rest =
    undated.length === 0
      ? []
      : [row([wordsCell('Without a date'), wordsCell(String(undated.length)), wordsCell(hoursText(addHours(undated)))])]
  return [
    table({
      caption: 'Hours by month',
      columns: [column('Month'), column('Sessions', 'num'), column('Hours', 'num')],
      rows: [...rows, ...rest],
      foot: [
        row([
          wordsCell('Together'),
          wordsCell(String(scope.record.sessions.length)),
          wordsCell(hoursText(addHours(scope.record.sessions))),
        ]),
      ],
    }),
  ]
}

/** `2026-03` as a reader says it. */
function monthText(month: string): string {
  const [year = '', number = ''] = month.split('-')
  return `${monthName(Number(number))} ${year}`
}

function systemTable(scope: PageScope): PartOfPage[] {
  const hours = hoursBySystem(scope.record)
  if (hours.length === 0) return []
  return [
    words(
      'note',
      'A note gives the hours of the whole session. What a system took lies between the hours of the sessions that name no other system and the hours of all sessions that name it; the columns do not add up to the total.',
    ),
    table({
      caption: 'Hours by system, between two ends',
      columns: [
        column('System', 'wide'),
        column('Sessions', 'num'),
        column('At least', 'num'),
        column('At most', 'num'),
      ],
      rows: hours.map(({ system, sessions, atLeast, atMost }) =>
        row([
          wordsCell([scope.thing({ kind: 'system', id: system })]),
          wordsCell(String(sessions.length)),
          wordsCell(hoursText(atLeast)),
          wordsCell(hoursText(atMost)),
        ]),
      ),
    }),
  ]
}

function jobTable(scope: PageScope): PartOfPage[] {
  const closed = scope.record.jobs.filter(({ open }) => !open)
  if (closed.length === 0) return []
  const days = (job: Job): number => standingTime(scope.record, job).days ?? -1
  return [
    table({
      caption: 'Jobs that are done, the longest first',
      columns: [
        column('Job', 'wide'),
        column('Opened', 'narrow'),
        column('Done', 'narrow'),
        column('Days', 'num'),
        column('Hours worked meanwhile', 'num'),
      ],
      rows: [...closed]
        .sort((one, other) => days(other) - days(one))
        .map(job =>
          row([
            wordsCell(
              saidWords(job.words).map(word => ({
                ...word,
                href: word.href ?? scope.to(`${pageAddress('jobs')}#${anchorName('j', job.id)}`),
              })),
            ),
            ...stoodCells(scope, job),
          ]),
        ),
      note: 'Hours worked meanwhile are those of all sessions from the one that first names the job to the one that closes it, whatever else was done in them.',
      canFilter: closed.length > 12,
    }),
  ]
}
