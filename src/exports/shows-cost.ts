import type { PublishableRecord } from '../editions/publishable.ts'

/** Whether the edition shows money: where it does not, no export has a table, a column or a sum of it. */
export function showsCost(record: PublishableRecord): boolean {
  const edition = record.editions.find(({ name }) => name === record.edition)
  return !(edition?.withhold ?? []).includes('cost')
}
