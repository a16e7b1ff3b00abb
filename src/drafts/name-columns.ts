export type ColumnRole = 'name' | 'number' | 'qty' | 'cost' | 'from' | 'system' | 'kind' | 'action' | 'mass' | 'why'

export interface NamedColumn {
  readonly at: number
  readonly heading: string
  /** Null: kept as it is, in the table of what was not understood. */
  readonly role: ColumnRole | null
  /** In the heading's brackets, or a sign of money: `GBP` of `Price (GBP)`, `kg` of `Weight, kg`. */
  readonly unit: string | null
}

/** Names of columns, without case and signs. A total, a date, a link and a remark are not read: they are kept. */
const names: Readonly<Record<ColumnRole, readonly string[]>> = {
  name: ['part', 'item', 'name', 'part name', 'item name', 'description', 'what', 'article', 'product'],
  number: [
    'part number',
    'part no',
    'partno',
    'number',
    'maker s number',
    'makers number',
    'sku',
    'mpn',
    'article number',
    'item number',
    'item no',
    'order code',
    'code',
  ],
  qty: ['qty', 'quantity', 'count', 'pcs', 'pieces', 'no off', 'off'],
  cost: ['cost', 'price', 'each', 'unit price', 'unit cost', 'price each', 'cost each', 'cost of one', 'price of one'],
  from: ['from', 'supplier', 'shop', 'vendor', 'seller', 'store', 'source', 'bought from'],
  system: ['system'],
  kind: ['kind', 'type'],
  action: ['action', 'state', 'status'],
  mass: ['mass', 'weight', 'mass each', 'weight each', 'mass of one'],
  why: ['why', 'reason'],
}

const signs: Readonly<Record<string, string>> = { '£': 'GBP', '€': 'EUR', $: 'USD' }

/** What each column of a heading is about. A second column of one role is kept, not read. */
export function nameColumns(headings: readonly string[]): NamedColumn[] {
  const taken = new Set<ColumnRole>()
  return headings.map((heading, at) => {
    const { name, unit } = splitUnit(heading)
    const found = roleOf(name)
    const role = found === null || taken.has(found) ? null : found
    if (role !== null) taken.add(role)
    return { at, heading, role, unit }
  })
}

function roleOf(name: string): ColumnRole | null {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
  const roles = Object.entries(names) as [ColumnRole, readonly string[]][]
  return roles.find(([, known]) => known.includes(plain))?.[0] ?? null
}

/** `Price (GBP)`, `Price £`, `Weight, kg` → the name and the unit. */
function splitUnit(heading: string): { name: string; unit: string | null } {
  const match = /^(.*?)[\s,]*(?:[([]\s*([^)\]]+?)\s*[)\]]|,\s*([A-Za-z]{1,3})|([£€$]))$/.exec(heading.trim())
  if (match === null) return { name: heading, unit: null }
  const unit = match[2] ?? match[3] ?? match[4] ?? ''
  return { name: match[1] ?? heading, unit: signs[unit] ?? unit }
}
