import { awgArea, gaugeNumber } from '../../quantities/awg.ts'
import type { Found, Input } from '../input.ts'
import { figureAt } from '../inputs/value.ts'
import { statedLeaf } from '../leaf.ts'
import { lookUp } from '../look-up.ts'
import type { Scope } from '../scope.ts'
import { gaugeColumns, gaugeRows, gaugeSource, thinWall, thinWallSource } from '../tables/cable-rating.ts'
import type { Leaf } from '../term.ts'
import { insulation } from './cable-insulation.ts'
import { compareGauge, compareSection } from './compared-ratings.ts'

/** The rating of one cable at 30 °C by a table: a section by that of thin-wall cable, a gauge by its insulation's column. */
export function tabulatedRating(of: string, symbol: string): Input<number> {
  return {
    symbol,
    meaning: 'rating of one cable at 30 °C',
    dimension: 'current',
    reads: [`${of}.area`, `${of}.insulation`],
    tables: [thinWallSource, gaugeSource],
    read: scope => readRating(of, symbol, scope),
  }
}

function readRating(of: string, symbol: string, scope: Scope): Found | null {
  const target = lookUp(scope, `${of}.area`)
  if (target.held === null) {
    scope.notebook.need(target.path, 'section or gauge of the cable is not written')
    return null
  }
  const found = figureAt(
    target,
    { symbol: 'A', meaning: 'section of the cable', dimension: 'area', unit: 'mm2', exact: true, isSize: true },
    scope,
  )
  if (found?.type !== 'figure' || found.term.type !== 'leaf') return null
  const amperes = found.term.quantity?.unit === 'AWG' ? byGauge(of, found.term, scope) : bySection(found.term, scope)
  if (amperes === null) return unrated(of, found.term, scope)
  return {
    type: 'figure',
    term: statedLeaf('table', {
      symbol,
      meaning: 'rating of one cable at 30 °C, by the table',
      value: amperes,
      unit: 'A',
    }),
  }
}

/** Between two rows the lesser section's is taken. */
function bySection(area: Leaf, scope: Scope): number | null {
  const section = area.value * 1e6
  const row = thinWall.filter(([from]) => from <= section * (1 + 1e-9)).at(-1)
  if (row === undefined) return null
  const [from, amperes] = row
  compareSection(area, scope)
  scope.notebook.look({ table: 'Cable rating, thin wall', row: `${from} mm²: ${amperes} A`, source: thinWallSource })
  return amperes
}

/** Between two gauges the thinner one's row is taken, between two columns the cooler one's. */
function byGauge(of: string, area: Leaf, scope: Scope): number | null {
  const insulated = insulation(of, 'T_i').read(scope)
  if (insulated?.type !== 'figure' || insulated.term.type !== 'leaf') return null
  const degrees = insulated.term.value - 273.15 // °C
  const column = gaugeColumns.findLastIndex(from => from <= degrees + 1e-9)
  const row = gaugeRows.filter(([gauge]) => areaOf(gauge) <= area.value * (1 + 1e-9)).at(-1)
  const amperes = column < 0 ? undefined : row?.[column + 1]
  if (row === undefined || typeof amperes !== 'number') return null
  compareGauge(area, degrees, scope)
  scope.notebook.look({
    table: 'Cable rating by gauge',
    row: `${row[0]} AWG, ${gaugeColumns[column] ?? ''} °C: ${amperes} A`,
    source: gaugeSource,
  })
  return amperes
}

const areaOf = (gauge: string): number => awgArea(gaugeNumber(gauge) ?? Number.NaN)

/** No row: what would do is the maker's own rating. Insulation that is not written has been named. */
function unrated(of: string, area: Leaf, scope: Scope): null {
  const isInsulationLacking = scope.notebook.missing.some(({ path }) => path.endsWith('.insulation'))
  if (!isInsulationLacking)
    scope.notebook.need(
      lookUp(scope, `${of}.rating`).path,
      `no table rates ${area.text ?? 'it'}; the maker's rating is not written`,
    )
  return null
}
