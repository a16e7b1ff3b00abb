import type { Verdict } from '../checker/verdict.ts'
import type { PublishableRecord } from '../editions/publishable.ts'
import { type Atlas, figureKey, type SiteExtras } from './atlas.ts'
import { makeBuildPage } from './build-page.ts'
import { makeCheckPage } from './check-page.ts'
import { makeChecksPage } from './checks-page.ts'
import { makeCircuitPage } from './circuit-page.ts'
import { makeConnectorPage } from './connector-page.ts'
import { makeCostPage } from './cost-page.ts'
import { figureUses } from './figure-uses.ts'
import { makeFilesPage } from './files-page.ts'
import { makeFindingsPage } from './findings-page.ts'
import { makeHoursPage } from './hours-page.ts'
import { makeInspectionPage } from './inspection-page.ts'
import { makeJobsPage } from './jobs-page.ts'
import { makeLabelPages } from './labels-page.ts'
import { makeMeasureNextPage } from './measure-next-page.ts'
import { measurementOrders } from './measurement-orders.ts'
import { makeMeasurementsPage } from './measurements-page.ts'
import { nameDrawings } from './name-drawings.ts'
import { makeOverviewPage } from './overview-page.ts'
import { makePartPage } from './part-page.ts'
import { makePartsPage } from './parts-page.ts'
import { makePhotosPage } from './photos-page.ts'
import { makeRecordsPage } from './records-page.ts'
import { makeRoadPage } from './road-page.ts'
import { makeSearchPage } from './search-page.ts'
import { makeSessionPage } from './session-page.ts'
import { makeSessionsPage } from './sessions-page.ts'
import { hasSheet } from './sheet.ts'
import { shownPhotos } from './shown-photos.ts'
import { makeSincePage } from './since-page.ts'
import type { Page, SiteData } from './site-data.ts'
import { makeSystemPage, makeSystemsPage } from './systems-pages.ts'
import { makeWiringPage } from './wiring-page.ts'
import { makeWiringSheets } from './wiring-sheets.ts'
import { makeWorkingPage } from './working-page.ts'

/** All pages of an edition as plain data: what the site prints, and nothing else of the record. */
export function makeSiteData(record: PublishableRecord, verdicts: readonly Verdict[], extras: SiteExtras): SiteData {
  const atlas = openAtlas(record, verdicts, extras)
  // Notes first: workings quote the sentences that are found on the way.
  const notes = [makeBuildPage(atlas), ...record.sessions.map(session => makeSessionPage(atlas, session))]
  return {
    language: 'en-GB',
    pages: [
      makeOverviewPage(atlas),
      makeSessionsPage(atlas),
      ...notes,
      ...thingPages(atlas),
      ...checkPages(atlas),
      ...sheetPages(atlas),
    ].map(nameDrawings),
  }
}

function openAtlas(record: PublishableRecord, verdicts: readonly Verdict[], extras: SiteExtras): Atlas {
  const edition = record.editions.find(({ name }) => name === record.edition)
  const notes = [{ id: null, figures: record.build.figures }, ...record.sessions]
  return {
    record,
    verdicts,
    extras,
    withheld: new Set(edition?.withhold ?? []),
    sessions: new Map(record.sessions.map(session => [session.id, session])),
    figures: new Map(
      notes.flatMap(({ id, figures }) => figures.map(figure => [figureKey(id, figure.id), figure] as const)),
    ),
    uses: figureUses(record, verdicts),
    shown: shownPhotos({ record, extras }),
    sentences: new Map(),
  }
}

function thingPages(atlas: Atlas): Page[] {
  const { parts, circuits, connectors, systems } = atlas.record
  return [
    makePartsPage(atlas),
    ...parts.map(part => makePartPage(atlas, part)),
    ...measurementOrders.map(order => makeMeasurementsPage(atlas, order)),
    ...(hasSheet(atlas, 'wiring') ? [makeWiringPage(atlas), ...makeWiringSheets(atlas)] : []),
    ...circuits.map(circuit => makeCircuitPage(atlas, circuit)),
    ...connectors.map(connector => makeConnectorPage(atlas, connector)),
    ...(hasSheet(atlas, 'systems') ? [makeSystemsPage(atlas)] : []),
    ...systems.map(system => makeSystemPage(atlas, system)),
  ]
}

function checkPages(atlas: Atlas): Page[] {
  return [
    makeChecksPage(atlas),
    ...atlas.extras.checks.map(check => makeCheckPage(atlas, check)),
    ...atlas.verdicts.map(verdict => makeWorkingPage(atlas, verdict)),
  ]
}

function sheetPages(atlas: Atlas): Page[] {
  return [
    makeSearchPage(atlas),
    makeJobsPage(atlas),
    makeRoadPage(atlas),
    makeHoursPage(atlas),
    makeMeasureNextPage(atlas),
    ...makeLabelPages(atlas),
    ...(hasSheet(atlas, 'cost') ? [makeCostPage(atlas)] : []),
    ...(hasSheet(atlas, 'inspection') ? [makeInspectionPage(atlas), makeRecordsPage(atlas)] : []),
    ...(hasSheet(atlas, 'since') ? [makeSincePage(atlas)] : []),
    ...(hasSheet(atlas, 'files') ? [makeFilesPage(atlas)] : []),
    ...(hasSheet(atlas, 'photos') ? [makePhotosPage(atlas)] : []),
    ...(hasSheet(atlas, 'findings') ? [makeFindingsPage(atlas)] : []),
  ]
}
