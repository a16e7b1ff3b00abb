import type { Part, PartEvent } from '../record/record.ts'
import type { Atlas } from './atlas.ts'
import { fromWords, priceCell } from './bill-of-materials.ts'
import { look, plain, wordsCell } from './inline.ts'
import { workLines } from './jobs-page.ts'
import { longDate } from './page-dates.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageRow } from './page-row.ts'
import { type PageScope, pageScope, sourceWords, spaced } from './page-scope.ts'
import { circuitsOf, jobsNaming } from './part-links.ts'
import { stateCell } from './part-states.ts'
import { photosNamed } from './photos-page.ts'
import { partLife } from './plots/part-life.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page, Term } from './site-data.ts'
import { subjectChecks } from './subject-checks.ts'
import { column, heading, row, table, words } from './tables.ts'
import { tankRows } from './tank-parts.ts'
import { noteAddress, subjectAddress } from './thing-addresses.ts'
import { thingTable } from './thing-table.ts'
import { volumeTable } from './volume-table.ts'

/** A part: what it is, all that happened to it, all that was measured of it, and what was asked about it. */
export function makePartPage(atlas: Atlas, part: Part): Page {
  const scope = pageScope(atlas, subjectAddress({ kind: 'part', id: part.id }))
  const rows: PageRow[] = [
    textRow(...lede(scope, part)),
    wideRow(heading('What happened to it?', 'story'), ...partLife(scope, part), story(scope, part)),
    wideRow(
      ...withHeading(
        'What was said of it',
        'said',
        thingTable(scope, part, { caption: `Figures and words of ${part.name}`, not: ['name', 'photos', 'receipt'] }),
      ),
    ),
    textRow(...volumeTable(scope, part.id)),
    ...tankRows(scope, part),
    wideRow(...circuitsOf(scope, part)),
    wideRow(...subjectChecks(scope, [part.id])),
    textRow(...fixesOf(scope, part), ...jobsNaming(scope, part)),
    wideRow(...photosNamed(scope, part)),
  ]
  return simplePage(scope, {
    title: part.name,
    section: 'parts',
    gutter: gutterOf(scope, part),
    rows,
    look: part.partKind === 'tank' ? 'tank' : 'plain',
  })
}

function withHeading(title: string, id: string, parts: ReturnType<typeof thingTable>): ReturnType<typeof thingTable> {
  return parts.length === 0 ? [] : [heading(title, id), ...parts]
}

function gutterOf(scope: PageScope, part: Part): Term[] {
  const from = fromWords(scope, part)
  return [
    { term: 'Part', words: [look('path', part.id)] },
    ...(part.partKind === null ? [] : [{ term: 'Kind', words: [plain(spaced(part.partKind))] }]),
    ...(part.system === null ? [] : [{ term: 'System', words: [scope.thing({ kind: 'system', id: part.system })] }]),
    ...(from.length === 0 ? [] : [{ term: 'From', words: from }]),
    ...(part.qty === '1' ? [] : [{ term: 'Quantity', words: [plain(part.qty)] }]),
  ]
}

function lede(scope: PageScope, part: Part) {
  const where = part.onVehicle ? 'On the vehicle' : 'Not on the vehicle'
  const link = (id: string | null, before: string) =>
    id === null ? [] : [plain(before), scope.thing({ kind: 'part', id })]
  return [
    words('lede', [
      plain(`${where}: ${part.state}`),
      ...link(part.replaces, ', in place of '),
      ...link(part.replacedBy, ', its place taken by '),
      plain('.'),
    ]),
  ]
}

function story(scope: PageScope, part: Part) {
  const cost = !scope.atlas.withheld.has('cost')
  const events = [...part.events, ...part.mentions].sort((a, b) => order(scope, a) - order(scope, b))
  return table({
    caption: `What happened to ${part.name}`,
    columns: [
      column('Session', 'narrow'),
      column('What'),
      column('Why', 'wide'),
      column('Qty', 'num'),
      ...(cost ? [column('Cost', 'figure')] : []),
    ],
    rows: events.map(event => eventRow(scope, part, event)),
  })
}

function order(scope: PageScope, event: PartEvent): number {
  return event.session === null ? 0 : (scope.atlas.sessions.get(event.session)?.number ?? 0)
}

function eventRow(scope: PageScope, part: Part, event: PartEvent) {
  const fits = { yes: ', fits', no: ', does not fit', 'with-work': ', fits with work' }
  const date = event.session === null ? '' : (scope.atlas.sessions.get(event.session)?.date ?? '')
  const from = event.from === null ? [] : [plain('from '), ...sourceWords(scope, event.from.value)]
  const cost = scope.atlas.withheld.has('cost') ? [] : [priceCell(scope, { ...part, donor: null, cost: event.cost })]
  return row([
    {
      kind: 'balloon',
      balloon: scope.balloon(event.session),
      words: [scope.link(longDate(date), noteAddress(event.session))],
    },
    stateCell(event.action, event.fits === null ? '' : fits[event.fits], from),
    wordsCell(event.why === null ? '' : [look('said', event.why.value.text)]),
    wordsCell(event.qty),
    ...cost,
  ])
}

function fixesOf(scope: PageScope, part: Part): PartOfPage[] {
  const fixes = scope.record.temporary.filter(fix => fix.part === part.id)
  if (fixes.length === 0) return []
  const lines = workLines(scope, { jobs: [], fixes }).map(line => ({ ...line, id: null }))
  return [heading('Temporary fixes on it', 'fixes'), { kind: 'jobs', jobs: lines }]
}
