import { figureRow } from '../exports/figure-row.ts'
import { showsCost } from '../exports/shows-cost.ts'
import type { Place } from '../findings/place.ts'
import type { StatementChange } from '../record/asked/changes-since.ts'
import type { Job, Temporary } from '../record/record.ts'
import { type ToldChanges, wordsSaid } from './report-changes.ts'

type Row = Record<string, unknown>

/** The changes as `since --json` prints them; money is absent where the edition withholds cost. */
export function changesRow({ since, changes, answers, record }: ToldChanges): Row {
  return {
    since: since?.id ?? null,
    sessions: changes.sessions.map(({ id }) => id),
    parts: changes.parts.map(({ before, after }) => ({
      id: after.id,
      before: before?.state ?? null,
      after: after.state,
      onVehicle: after.onVehicle,
      ...placeOf(after.events.at(-1)?.place ?? after.first),
    })),
    measurements: changes.measurements.map(({ before, after }) => ({
      path: after.path,
      before: before === null ? null : figureRow(before.quantity),
      after: figureRow(after.quantity),
      ...placeOf(after.place),
    })),
    circuits: changes.circuits.map(statementRow),
    connectors: changes.connectors.map(statementRow),
    checks: answers.map(({ before, after }) => {
      const { check, subject, aspect } = after ?? before ?? { check: null, subject: null, aspect: null }
      return { check, subject, aspect, before: before?.verdict ?? null, after: after?.verdict ?? null }
    }),
    opened: changes.opened.map(workRow),
    closed: changes.closed.map(workRow),
    ...(showsCost(record)
      ? {
          money: {
            currency: record.ledger.currency,
            paid: changes.paid,
            lines: changes.money.map(({ what, amount, session, place }) => ({
              what,
              amount,
              session,
              ...placeOf(place),
            })),
          },
        }
      : {}),
  }
}

function statementRow({ thing, key, before, after, held }: StatementChange): Row {
  return {
    id: thing.id,
    key,
    before: before === null ? null : wordsSaid(before),
    after: after.type === 'nothing' ? null : wordsSaid(after),
    ...placeOf(held.place),
  }
}

function workRow(work: Job | Temporary): Row {
  return {
    id: work.id,
    kind: 'text' in work ? 'job' : 'temporary',
    words: 'text' in work ? work.text : work.what,
    ...placeOf(work.place),
  }
}

const placeOf = ({ file, line, column }: Place): Row => ({ file, line, column })
