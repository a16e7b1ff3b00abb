import { describe, expect, test } from 'vitest'
import type { Publication } from '../../src/editions/publication.ts'
import type { TableRow } from '../../src/pages/blocks.ts'
import type { Cell } from '../../src/pages/cells.ts'
import { makeSiteData } from '../../src/pages/make-site-data.ts'
import type { Page } from '../../src/pages/site-data.ts'
import { publicationOfTexts } from '../exports/builds.ts'

const build = '---\ntitle: Punt\ncurrency: GBP\n---\nA punt.\n'
const first = `---
title: First day
date: 2026-03-07
measurements: { seat: { width: 400 mm ± 2 mm, height: 300 mm, depth: 90 mm } }
---
The depth is :measure[91 mm]{of="seat/depth"} by another tape.
`
const second = `---
title: Second day
date: 2026-03-14
parts: { strap: { name: Strap, action: received } }
measurements: { seat: { width: { value: 398 mm, with: steel rule, note: after sanding }, height: 300 mm } }
tests: [ { what: seat holds, result: fail } ]
---
Sanded it.

- [x] sand the seat :job{#sand}
- [ ] varnish it :job{#varnish}
`
const inspection = `rule: "Approval, invented"
authority: "The office, invented"
points:
  seat: { ask: Is the seat held?, evidence: [ "measurement:seat/width", "job:sand", "session:2026-03-14" ], before: road }
  strap: { ask: Is the strap on?, evidence: [ "part:strap", "test:seat holds", "job:varnish", "photo:none.jpg" ] }
  belt: Is there a belt?
`

const extras = { checks: [], measureNext: [], photos: [], tables: [], date: null, serve: false, scripts: [] }

function pageAt({ record, verdicts, inspection: points, findings }: Publication, address: string): Page {
  const page = makeSiteData(record, verdicts, { ...extras, findings, inspection: points }).pages.find(
    ({ sheet }) => sheet.address === address,
  )
  if (page === undefined) throw new Error(`Unexpected record without ${address}`)
  return page
}

const texts = {
  'build.md': build,
  'sessions/2026-03-07-first.md': first,
  'sessions/2026-03-14-second.md': second,
  'inspection.yaml': inspection,
}

function rowsOf(page: Page, caption: string): TableRow[] {
  const parts = page.rows.flatMap(row => row.parts)
  return parts.flatMap(part =>
    part.kind === 'table' && part.table.caption === caption ? part.table.groups.flatMap(({ rows }) => rows) : [],
  )
}

/** A cell in words, each link's address behind it. */
function wordsOf(cell: Cell | undefined): string {
  if (cell?.kind === 'words')
    return [...cell.words, ...cell.sub].map(({ text, href }) => (href === null ? text : `${text} <${href}>`)).join('')
  if (cell?.kind === 'leader')
    return [cell.leader.number, cell.leader.unit, cell.leader.tolerance, `<${cell.leader.href}>`]
      .filter(word => word !== '')
      .join(' ')
      .replace(/\s+/gu, ' ')
  if (cell?.kind === 'marks') return cell.marks.map(({ text }) => text).join(', ')
  if (cell?.kind === 'evidence')
    return cell.lines
      .map(
        ({ mark, words }) =>
          `${mark.text} ${words.map(({ text, href }) => (href === null ? text : `${text} <${href}>`)).join('')}`,
      )
      .join(' | ')
  return ''
}

describe('the sheet of points', () => {
  test('says of each what is asked, on what it stands, with the place and the day, and what is missing', async () => {
    const rows = rowsOf(pageAt(await publicationOfTexts(texts), 'inspection/index.html'), 'Points of the inspection')
    expect(rows.map(({ cells }) => cells.slice(0, 4).map(wordsOf))).toEqual([
      [
        'Is the seat held?before the road',
        'held',
        'held measurement seat/width 398 mm <../sessions/2026-03-14-second/index.html#q-1>, 2026-03-14 | held job sand the seat <../jobs/index.html#j-sand>, 2026-03-14 | held session Second day <../sessions/2026-03-14-second/index.html>, 2026-03-14',
        '',
      ],
      [
        'Is the strap on?',
        'open',
        'open part Strap <../parts/strap/index.html>, 2026-03-14 | open test seat holds <../sessions/2026-03-14-second/index.html#head>, 2026-03-14 | open job varnish it <../jobs/index.html#j-varnish> | open photo none.jpg',
        'part: is not on the vehicle: received; test: came out as fail; job: is still open; photo: is not there',
      ],
      ['Is there a belt?', 'open', '', 'no evidence is named'],
    ])
  })

  test('says that it approves nothing, and leads to how the records are kept', async () => {
    const page = pageAt(await publicationOfTexts(texts), 'inspection/index.html')
    const said = page.rows.flatMap(({ parts }) => parts).flatMap(part => (part.kind === 'words' ? part.words : []))
    expect(said.map(({ text }) => text).join('')).toContain('This sheet approves nothing.')
    expect(said.flatMap(({ href }) => href ?? [])).toEqual(['records/index.html'])
    expect(page.gutter.map(({ term, words }) => [term, words.map(({ text }) => text).join('')])).toEqual([
      ['Points', '3'],
      ['Open', '2'],
      ['Authority', 'The office, invented'],
    ])
  })
})

describe('how the records are kept', () => {
  test('lists every figure that a later note corrected, old and new, with both days and both sentences', async () => {
    const rows = rowsOf(
      pageAt(await publicationOfTexts(texts), 'inspection/records/index.html'),
      'Measurements that a later note corrected',
    )
    expect(rows.map(({ cells }) => cells.map(wordsOf))).toEqual([
      [
        'seat/width <../../parts/seat/index.html>',
        '400 mm ± 2 mm <../../sessions/2026-03-07-first/index.html#q-1>',
        '2026-03-07',
        '398 mm <../../sessions/2026-03-14-second/index.html#q-1>',
        '2026-03-14',
        'with steel rule, after sanding',
      ],
    ])
  })

  test('says of each rule that it is modelled on how far it is followed, and claims no approval', async () => {
    const page = pageAt(await publicationOfTexts(texts), 'inspection/records/index.html')
    const followed = (caption: string) => rowsOf(page, caption).map(({ cells }) => wordsOf(cells[1]))
    expect(followed('ISO/IEC 17025:2017, 7.5, technical records')).toEqual(['in part', 'in part', 'in part', 'in part'])
    expect(followed('14 CFR 43.9(a), content of maintenance records')).toEqual(['yes', 'in part', 'in part', 'no'])
  })

  test('names the writer of each note: its own, else that of build.md, else nobody', async () => {
    const writers = async (build: string, note: string) => {
      const page = pageAt(
        await publicationOfTexts({
          'build.md': `---\ntitle: Cart\n${build}---\n`,
          'sessions/2026-03-07-first.md': `---\ntitle: First\n${note}---\n`,
          'inspection.yaml': 'rule: Rule\npoints:\n  brakes:\n    ask: Do they hold?\n',
        }),
        'inspection/records/index.html',
      )
      return rowsOf(page, 'The notes that the record is made of').map(({ cells }) => wordsOf(cells[3]))
    }
    expect(await writers('by: Ro Penhale\n', 'by: Wilf\n')).toEqual(['Wilf'])
    expect(await writers('by: Ro Penhale\n', '')).toEqual(['Ro Penhale'])
    expect(await writers('', '')).toEqual(['not said'])
  })
})
