import type { WeighedPoint } from '../checker/weigh-inspection.ts'
import type { Publication } from '../editions/publication.ts'
import type { Amount } from '../facts/fact.ts'
import type { Held, Part, Session } from '../record/record.ts'
import { figureUrl, noteUrl } from './addresses.ts'
import { figureRow, placeRow } from './figure-row.ts'
import { showsCost } from './shows-cost.ts'
import { verdictRow } from './verdict-row.ts'
import { circuitRow, connectorRow, earthPointRow, fuseBoxRow, loomRow, volumeRow } from './wiring-rows.ts'

type Row = Record<string, unknown>

/** The whole as-built record of an edition as one JSON document, `oddleg-record/1`. */
export function recordJson(publication: Publication): string {
  return `${JSON.stringify(recordOf(publication), null, 2)}\n`
}

function recordOf({ record, verdicts, inspection, findings }: Publication): Row {
  return {
    format: 'oddleg-record/1',
    edition: record.edition,
    build: buildRow(record),
    sessions: record.sessions.map(sessionRow),
    parts: record.parts.map(part => partRow(part, showsCost(record))),
    measurements: record.measurements.map(measured => ({
      path: measured.path,
      ...figureRow(measured.quantity),
      with: measured.with,
      session: measured.session,
      ...placeRow(measured.place, figureUrl(measured.session, measured.figure)),
      superseded: measured.superseded,
    })),
    quantities: record.sessions.flatMap(proseRows),
    circuits: record.circuits.map(circuit => circuitRow(circuit)),
    connectors: record.connectors.map(connectorRow),
    looms: record.looms.map(loom => loomRow(record, loom)),
    fuseBoxes: record.fuseBoxes.map(box => fuseBoxRow(record, box)),
    earthPoints: record.earthPoints.map(point => earthPointRow(record, point)),
    volumes: record.volumes.map(volumeRow),
    jobs: record.jobs.map(({ id, text, open, before, place }) => ({
      id,
      text,
      open,
      before,
      ...placeRow(place, null),
    })),
    temporary: record.temporary.map(fix => ({
      id: fix.id,
      what: fix.what,
      part: fix.part,
      until: fix.until?.text ?? null,
      before: fix.before,
      open: fix.open,
      ...placeRow(fix.place, null),
    })),
    tests: record.tests.map(test => ({
      what: test.what,
      result: test.result,
      session: test.session,
      ...placeRow(test.place, null),
    })),
    inspection: inspection.map(inspectionRow),
    checks: verdicts.map(verdictRow),
    findings,
    cost: showsCost(record) ? costRow(record) : null,
  }
}

function buildRow({ build }: Publication['record']): Row {
  return {
    title: build.title.text,
    summary: build.summary?.text ?? null,
    started: build.started,
    currency: build.currency,
    file: build.file,
  }
}

function sessionRow({ id, number, date, title, by, hours, file }: Session): Row {
  const worked = hours === null ? null : Number(hours)
  return { id, number, date, title: title.text, by: by?.text ?? null, hours: worked, file, url: noteUrl(id) }
}

const amountOf = (held: Held<Amount> | null): Row | null => (held === null ? null : { ...held.value })

function partRow(part: Part, withCost: boolean): Row {
  const costOf = (cost: Part['cost']): Row | null => (withCost ? amountOf(cost) : null)
  return {
    id: part.id,
    name: part.name,
    kind: part.partKind,
    system: part.system,
    state: part.state,
    onVehicle: part.onVehicle,
    qty: Number(part.qty),
    from: part.from?.value.text ?? null,
    cost: costOf(part.cost),
    replaces: part.replaces,
    replacedBy: part.replacedBy,
    history: part.events.map(({ session, action, fits, cost, why, place }) => ({
      session,
      action,
      fits,
      cost: costOf(cost),
      why: why?.value.text ?? null,
      file: place.file,
      line: place.line,
    })),
  }
}

function proseRows(session: Session): Row[] {
  return session.figures
    .filter(({ role }) => role === 'prose')
    .map(({ id, place, quantity }) => ({ ...figureRow(quantity), ...placeRow(place, figureUrl(session.id, id)) }))
}

function inspectionRow(point: WeighedPoint): Row {
  return {
    id: point.id,
    ask: point.ask.text,
    before: point.before,
    open: point.open,
    evidence: point.evidence.map(({ ref, ok }) => ({ ref, ok })),
  }
}

function costRow({ ledger }: Publication['record']): Row {
  const { currency, donors, parts, spend, returned, total, bySystem, bySession, onVehicle } = ledger
  return { currency, donors, parts, spend, returned, total, bySystem, bySession, onVehicle }
}
