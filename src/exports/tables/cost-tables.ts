import type { PublishableRecord } from '../../editions/publishable.ts'
import { type DonorAccount, donorAccounts } from '../../record/asked/donor-accounts.ts'
import { type AskedLine, askLedger, groupLines } from '../../record/asked/split-ledger.ts'
import { showsCost } from '../shows-cost.ts'
import { type ExportTable, exportTable, type Field, field } from './export-table.ts'
import { pageField, placeFields, sessionFields } from './place-fields.ts'

/** Every amount and the sums of them; none where the edition withholds cost. */
export function costTables(record: PublishableRecord): ExportTable[] {
  if (!showsCost(record)) return []
  const lines = askLedger(record)
  return [ledgerTable(record, lines), sumsTable(record, lines)]
}

function ledgerTable(record: PublishableRecord, lines: readonly AskedLine[]): ExportTable {
  return exportTable('ledger', lines, [
    ...sessionFields<AskedLine>(record, ({ line }) => line.session),
    field('what', 'text', ({ line }) => line.what),
    field('kind', 'text', ({ line }) => line.of),
    field('thing', 'text', ({ line }) => line.thing?.id ?? null),
    field('system', 'text', ({ line }) => line.system),
    field('supplier', 'text', ({ supplier }) => supplier?.text ?? null),
    field('money is', 'text', ({ whereabouts }) => whereabouts),
    field('qty', 'number', ({ line }) => Number(line.qty)),
    field('each as written', 'money', ({ line }) => line.written.amount),
    field('currency as written', 'text', ({ line }) => line.written.currency),
    field('rate', 'number', ({ rate }) => (rate === null ? 1 : Number(rate))),
    field('amount', 'money', ({ line }) => line.amount),
    field('running total', 'money', ({ running }) => running),
    field('currency', 'text', () => record.ledger.currency),
    ...placeFields<AskedLine>(({ line }) => line.place),
    pageField(({ line }) => line),
  ])
}

interface Sum {
  readonly by: string
  readonly of: string
  readonly amount: string
}

/** Each way of adding the ledger up; every one of them comes to the same total. */
function sumsTable(record: PublishableRecord, lines: readonly AskedLine[]): ExportTable {
  const { currency } = record.ledger
  const by = (name: string, keyOf: (line: AskedLine) => string): Sum[] =>
    groupLines(lines, currency, keyOf).map(({ key, amount }) => ({ by: name, of: key, amount }))
  const sums = [
    ...by('kind', ({ line }) => line.of),
    ...by('system', ({ line }) => (line.of === 'donor' ? 'donors' : (line.system ?? 'of no system'))),
    ...by('session', ({ line }) => line.session ?? 'build.md'),
    ...by('donor', ({ line }) => donorOf(record, line) ?? 'no donor'),
    ...by('supplier', ({ line, supplier }) => (line.of === 'donor' ? 'donors' : (supplier?.text ?? 'not said'))),
    ...by('where the money is', ({ whereabouts }) => whereabouts),
    { by: 'all', of: 'total', amount: record.ledger.total },
  ]
  return exportTable('sums', sums, [
    field('by', 'text', sum => sum.by),
    field('of', 'text', sum => sum.of),
    field('amount', 'money', ({ amount }) => amount),
    field('currency', 'text', () => currency),
  ])
}

function donorOf(record: PublishableRecord, line: AskedLine['line']): string | null {
  if (line.thing?.kind === 'donor') return line.thing.id
  return record.parts.find(({ id }) => line.thing?.kind === 'part' && id === line.thing.id)?.donor ?? null
}

/** What each donor gave, what is still to come, what it cost and what came back. */
export function donorsTable(record: PublishableRecord): ExportTable {
  const money: readonly Field<DonorAccount>[] = [
    field('cost', 'money', ({ cost }) => cost),
    field('its priced parts', 'money', ({ pricedParts }) => pricedParts),
    field('came back', 'money', ({ cameBack }) => cameBack),
    field('in the end', 'money', ({ net }) => net),
    field('currency', 'text', () => record.ledger.currency),
  ]
  const names = (parts: DonorAccount['gave']): string | null =>
    parts.length === 0 ? null : parts.map(({ id }) => id).join('; ')
  return exportTable('donors', donorAccounts(record), [
    field('id', 'text', ({ donor }) => donor.id),
    field('name', 'text', ({ donor }) => donor.name),
    field('on the vehicle', 'text', ({ gave }) => names(gave)),
    field('still to come', 'text', ({ toCome }) => names(toCome)),
    field('gone', 'text', ({ gone }) => names(gone)),
    ...(showsCost(record) ? money : []),
    ...placeFields<DonorAccount>(({ donor }) => donor.first),
  ])
}
