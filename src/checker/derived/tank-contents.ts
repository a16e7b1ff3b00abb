import type { Part } from '../../record/record.ts'
import type { Found, Input } from '../input.ts'
import { ifGiven } from '../inputs/choose.ts'
import { derived } from '../inputs/derived.ts'
import { ofAnother } from '../inputs/each.ts'
import { value } from '../inputs/value.ts'
import { statedLeaf } from '../leaf.ts'
import { lookUp, partsOfKind, wordsOf } from '../look-up.ts'
import type { CheckSubject, Scope } from '../scope.ts'
import { partSubject } from '../subjects.ts'
import { expansion } from '../tables/expansion.ts'
import { contentsDensity } from '../tables/fuel-density.ts'
import { viscosity } from '../tables/viscosity.ts'
import { tankCapacity } from './tank-volume.ts'

type Table = Readonly<Record<string, { readonly value: number; readonly source: string }>>

/** How heavy a volume of a tank's contents is: `contents-density`, else by its `contents`. */
export function densityOfContents(symbol = 'rho'): Input<number> {
  const spec = { symbol, meaning: 'density of its contents', dimension: 'density' } as const
  const written = value({ of: 'tank/contents-density', ...spec, unit: 'kg_L' })
  const tabled = byContents({ ...spec, table: contentsDensity, name: 'Density', unit: 'kg_L', shown: 'kg/L' })
  return ifGiven({ ...spec, of: 'tank/contents-density' }, written, tabled)
}

/** Kinematic viscosity of a tank's contents, as an area a second. */
export function viscosityOfContents(symbol = 'nu'): Input<number> {
  const spec = { symbol, meaning: 'kinematic viscosity, mm² a second', dimension: 'area' } as const
  return byContents({ ...spec, table: viscosity, name: 'Viscosity', unit: 'mm2', shown: 'mm²/s' })
}

/** By what share of its volume a tank's contents grow for each kelvin. */
export function expansionOfContents(symbol = 'beta'): Input<number> {
  const spec = { symbol, meaning: 'by what share its contents grow for each kelvin', dimension: 'ratio' } as const
  return byContents({ ...spec, table: expansion, name: 'Expansion', unit: '1', shown: 'for each kelvin' })
}

/** What a tank holds when it is full: 95 % of its capacity. */
export function fullVolume(symbol = 'V_full'): Input<number> {
  return derived({
    symbol,
    meaning: 'contents at full',
    dimension: 'volume',
    inputs: { capacity: tankCapacity('C') },
    formula: [{ line: `${symbol} = 0.95 * C`, unit: 'L', says: 'full is 95 % of what it holds to the neck' }],
  })
}

/** What a full tank's contents weigh. */
export function fullContents(symbol = 'm_c'): Input<number> {
  return derived({
    symbol,
    meaning: 'mass of its contents at full',
    dimension: 'mass',
    inputs: { full: fullVolume(), density: densityOfContents() },
    formula: [{ line: `${symbol} = V_full * rho`, unit: 'kg', says: 'its contents at full' }],
  })
}

/** What a tank weighs full, its own mass included. */
export function fullMass(symbol = 'm_full'): Input<number> {
  return derived({
    symbol,
    meaning: 'mass of the full tank',
    dimension: 'mass',
    inputs: {
      own: value({ of: 'tank/mass', symbol: 'm_t', meaning: 'mass of the empty tank', dimension: 'mass', unit: 'kg' }),
      contents: fullContents(),
    },
    formula: [{ line: `${symbol} = m_t + m_c`, unit: 'kg', says: 'the tank and its contents' }],
  })
}

/** The tanks that hold what the engine burns: all that are checked but those of water, oil or another liquid. */
export function fuelTanks(scope: Scope): readonly CheckSubject[] {
  return partsOfKind(scope.record, ['tank']).filter(isFuelTank).map(partSubject)
}

/** A figure of the fuel tank; where there is none, what it holds is missing. */
export function ofFuel(input: Input<number>): Input<number> {
  const none: Input<number> = {
    ...input,
    read: scope => {
      scope.notebook.need('tank/contents', 'no fuel tank is in the record, so what flows is not known')
      return null
    },
  }
  return ofAnother(fuelTanks, input, none)
}

const otherLiquid = /water|oil|coolant|washer|header|expansion|waste/i

function isFuelTank(part: Part): boolean {
  const said = wordsOf(part, 'contents')
  return !otherLiquid.test(said ?? `${part.id} ${part.name}`)
}

interface TableSpec {
  readonly symbol: string
  readonly meaning: string
  readonly dimension: 'density' | 'area' | 'ratio'
  readonly table: Table
  readonly name: string
  readonly unit: string
  readonly shown: string
}

function byContents(spec: TableSpec): Input<number> {
  const { symbol, meaning, dimension, table } = spec
  return {
    symbol,
    meaning,
    dimension,
    reads: ['tank/contents'],
    tables: Object.entries(table).map(([name, { source }]) => `${name}: ${source}`),
    read: scope => readByContents(spec, scope),
  }
}

function readByContents({ symbol, meaning, table, name, unit, shown }: TableSpec, scope: Scope): Found | null {
  const { path, held } = lookUp(scope, 'tank/contents')
  const said = scope.subject.thing === null ? null : wordsOf(scope.subject.thing, 'contents')
  if (held === null || said === null) {
    scope.notebook.need(path, 'what is in it is not written')
    return null
  }
  const rows = Object.keys(table).filter(word => new RegExp(`\\b${word}\\b`, 'i').test(said))
  const row = rows.length === 1 ? table[rows[0] ?? ''] : undefined
  if (row === undefined) {
    const wanted = name === 'Density' ? path.replace(/contents$/, 'contents-density') : path
    scope.notebook.need(wanted, `the table has no ${name.toLowerCase()} of ${said}`)
    return null
  }
  scope.notebook.use({ path, words: said, place: held.place, session: held.session, figure: held.figure })
  scope.notebook.look({ table: name, row: `${rows[0] ?? ''}: ${row.value} ${shown}`, source: row.source })
  return { type: 'figure', term: statedLeaf('table', { symbol, meaning, value: row.value, unit }) }
}
