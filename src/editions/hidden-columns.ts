import type { Table } from 'mdast'
import type { PrivateKind } from '../../plugins/private/node.ts'
import { textOf } from './node-text.ts'
import type { Withheld } from './withheld.ts'

const costHeader = /\p{Sc}|\b(?:costs?|prices?|priced|paid|spent|money|GBP|EUR|USD)\b/iu
const sourceHeader = /^\s*(?:from|source|supplier|seller|shop|dealer|vendor|donor|bought (?:at|from))\s*$/i

/** Columns of a table that an edition leaves empty, by their position from 0: amounts stand there as bare numbers too. */
export function hiddenColumns(table: Table, { kinds }: Withheld): Map<number, PrivateKind> {
  const columns = new Map<number, PrivateKind>()
  const reading = table.data?.reading
  const parts = reading?.holds === 'parts' ? reading.columns : null
  for (const [at, cell] of (table.children[0]?.children ?? []).entries()) {
    const header = textOf(cell)
    const isMeasured = reading?.holds === 'measurements' && at === reading.columns.value
    if (kinds.has('cost') && (at === parts?.cost || (costHeader.test(header) && !isMeasured))) columns.set(at, 'cost')
    else if (kinds.has('source') && (at === parts?.from || sourceHeader.test(header))) columns.set(at, 'source')
  }
  return columns
}
