import { describe, expect, test } from 'vitest'
import type { Drawing } from '../../src/pages/drawing.ts'
import { makeSiteData } from '../../src/pages/make-site-data.ts'
import type { PartOfPage } from '../../src/pages/page-parts.ts'
import type { Page } from '../../src/pages/site-data.ts'
import { demo } from '../exports/builds.ts'

const extras = { checks: [], measureNext: [], photos: [], tables: [], date: null, serve: false, scripts: [] }

async function demoPages(): Promise<readonly Page[]> {
  const { record, verdicts, inspection, findings } = await demo()
  return makeSiteData(record, verdicts, { ...extras, findings, inspection }).pages
}

const drawingsOf = (part: PartOfPage): Drawing[] =>
  part.kind === 'drawings' ? [part.wide, ...(part.narrow === null ? [] : [part.narrow])] : []

const isPlot = ({ look }: Drawing): boolean => look === 'plot' || look === 'rule'

/** Each plot of a page: the heading over it, the captions of the tables beside it, and what it says and tells. */
function plotsOf({ sheet, rows }: Page) {
  return rows.flatMap(({ parts }) =>
    parts.flatMap((part, at) =>
      drawingsOf(part)
        .filter(isPlot)
        .map(drawing => ({
          page: sheet.address,
          heading: parts.slice(0, at).findLast(one => one.kind === 'heading')?.text ?? null,
          tables: parts.flatMap(one => (one.kind === 'table' ? [one.table.caption] : [])),
          drawing,
        })),
    ),
  )
}

describe('a plot', () => {
  test('stands under the question that it answers, with a table that says the same', async () => {
    const plots = (await demoPages()).flatMap(plotsOf)
    const own = plots.filter(({ page }) => !page.startsWith('parts/') && page !== 'sessions/index.html')
    expect(
      own
        .map(({ page, heading, tables }) => `${page} ${heading} ${tables.join(', ')}`)
        .filter((one, at, all) => all.indexOf(one) === at),
    ).toEqual([
      'index.html When was it worked on? Sessions, newest first',
      'systems/index.html Which system weighs most? Mass by system',
      'hours/index.html In which months was the work done? Hours by month',
      'hours/index.html On which days? Sessions by day of the week',
      'cost/index.html When did the money go? Money by session',
      'cost/index.html Which system took it? Money by system',
    ])
    const lives = plots.filter(({ page }) => page.startsWith('parts/'))
    expect(lives.length).toBeGreaterThan(100)
    expect(lives.filter(({ heading, tables }) => heading !== 'What happened to it?' || tables.length !== 1)).toEqual([])
  })

  test('is named and told in words, and no two drawings of a page share a name', async () => {
    for (const page of await demoPages()) {
      const drawings = page.rows.flatMap(({ parts }) => parts.flatMap(drawingsOf))
      const untold = drawings.filter(
        drawing => isPlot(drawing) && (drawing.says === '' || (drawing.tells ?? '') === ''),
      )
      expect({ page: page.sheet.address, untold: untold.map(({ says }) => says) }).toEqual({
        page: page.sheet.address,
        untold: [],
      })
      const names = drawings.map(({ id }) => id)
      expect({ names, unnamed: names.includes(undefined) }).toEqual({ names: [...new Set(names)], unnamed: false })
    }
  })
})
