import type { Verdict } from '../checker/verdict.ts'
import type { PublishableRecord } from '../editions/publishable.ts'
import { showsCost } from '../exports/shows-cost.ts'
import { textOf } from '../exports/tables/standing-text.ts'
import type { FactValue } from '../facts/fact.ts'
import type { Place } from '../findings/place.ts'
import { formatMoney } from '../quantities/format-money.ts'
import type { Changes, StatementChange } from '../record/asked/changes-since.ts'
import type { AnswerChange } from '../record/asked/compare-answers.ts'
import { addHours } from '../record/asked/standing-time.ts'
import type { Session } from '../record/record.ts'

export interface ToldChanges {
  /** Null: before the first session. */
  readonly since: Session | null
  /** The day that was asked for, where there was no session on it. */
  readonly day: string | null
  readonly changes: Changes
  readonly answers: readonly AnswerChange<Verdict>[]
  readonly record: PublishableRecord
}

/** What changed as lines for a terminal, each with the place where it is written. */
export function reportChanges({ since, day, changes, answers, record }: ToldChanges): string[] {
  const { sessions } = changes
  const last =
    since === null
      ? 'before the first session'
      : `${day === null ? '' : 'after '}session ${since.number}, ${since.date || since.id}, ${since.title.text}`
  const start = `Since ${day === null ? '' : `${day}, `}${last}`
  const many = sessions.length === 1 ? '1 session' : `${sessions.length} sessions`
  return [
    `${start}: ${sessions.length === 0 ? 'nothing, it is the last' : `${many}, ${addHours(sessions)} hours`}`,
    ...group(
      'Parts',
      changes.parts.map(
        ({ before, after }) =>
          `${after.state.padEnd(13)}${after.id}${before === null ? '' : `, was ${before.state}`} ${at(after.events.at(-1)?.place ?? after.first)}`,
      ),
    ),
    ...group(
      'Measurements',
      changes.measurements.map(
        ({ before, after }) =>
          `${after.path}: ${before === null ? '' : `${before.quantity.text} → `}${after.quantity.text} ${at(after.place)}`,
      ),
    ),
    ...group('Circuits', changes.circuits.map(statementLine)),
    ...group('Connectors', changes.connectors.map(statementLine)),
    ...group('Checks', answers.map(answerLine)),
    ...group(
      'Jobs and fixes opened',
      changes.opened.map(work => `${wordsOf(work)} ${at(work.place)}`),
    ),
    ...group(
      'Jobs and fixes closed',
      changes.closed.map(work => `${wordsOf(work)} ${at(work.turns.at(-1)?.place ?? work.place)}`),
    ),
    ...(showsCost(record) ? moneyLines(changes, record) : []),
  ]
}

const group = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', title, ...lines.map(line => `  ${line}`)]

const at = ({ file, line, column }: Place): string => `(${file}:${line}:${column})`

function statementLine({ thing, key, before, after, held }: StatementChange): string {
  const was = before === null ? '' : `${wordsSaid(before)} → `
  return `${thing.id} ${key.replaceAll('.', ' ')}: ${was}${wordsSaid(after)} ${at(held.place)}`
}

/** A value as written; what was taken back says so. */
export const wordsSaid = (value: FactValue): string => textOf(value, ', ') ?? 'taken back'

function answerLine({ before, after }: AnswerChange<Verdict>): string {
  const answer = after ?? before
  const name =
    answer === null ? '' : `${answer.check} ${answer.subject}${answer.aspect === null ? '' : `, ${answer.aspect}`}`
  return `${name}: ${before?.verdict ?? 'new'} → ${after?.verdict ?? 'no longer asked'}`
}

const wordsOf = (work: Changes['opened'][number]): string => ('text' in work ? work.text : work.what)

function moneyLines({ money, paid }: Changes, { ledger }: PublishableRecord): string[] {
  const { currency } = ledger
  const lines = money.map(({ what, amount, place }) => `${formatMoney({ amount, currency })} ${what} ${at(place)}`)
  return group('Money', lines.length === 0 ? [] : [...lines, `${formatMoney({ amount: paid, currency })} in all`])
}
