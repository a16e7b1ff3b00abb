import { awgArea, gaugeNumber } from '../../quantities/awg.ts'
import type { Scope } from '../scope.ts'
import { aircraftBundle, aircraftConditions, aircraftOhms, aircraftProtection } from '../tables/aircraft-wire.ts'
import { annealedCopper } from '../tables/conductor-resistance.ts'
import { freeAir, secondMaker } from '../tables/free-air.ts'
import type { Leaf } from '../term.ts'

/** What other tables have for the very gauge, under other conditions: beside the answer, never mixed into it. */
export function compareGauge(area: Leaf, degrees: number, scope: Scope): void {
  const isOf = ([gauge]: readonly [string, ...unknown[]]): boolean => Math.abs(areaOf(gauge) / area.value - 1) < 1e-6
  const bundle = aircraftBundle.find(isOf)
  const amperes = bundle?.[degrees >= 200 ? 3 : degrees >= 150 ? 2 : 1]
  if (bundle !== undefined && amperes !== undefined && degrees >= 105)
    scope.notebook.note(
      `For comparison, FAA AC 43.13-1B, table 11-9, gives ${bundle[0]} AWG ${amperes} A (${aircraftConditions}).`,
    )
  const protection = aircraftProtection.find(isOf)
  if (protection !== undefined) {
    const [gauge, breaker, fuse] = protection
    const or = breaker === null ? '' : ` or a breaker of ${breaker} A`
    scope.notebook.note(
      `For comparison, FAA AC 43.13-1B, table 11-3, puts a fuse of ${fuse} A${or} before ${gauge} AWG.`,
    )
  }
  sayFreeAir(freeAir.find(isOf), degrees, scope)
}

function sayFreeAir(row: (typeof freeAir)[number] | undefined, degrees: number, scope: Scope): void {
  if (row === undefined || degrees < 60) return
  const [gauge, at60, at75, at90] = row
  const [amperes, column] = degrees >= 90 ? [at90, 90] : degrees >= 75 ? [at75, 75] : [at60, 60]
  scope.notebook.note(
    `For comparison, Lessons In Electric Circuits, DC 12, gives ${gauge} AWG ${amperes} A (building wire in free air at 30 °C, ${column} °C insulation).`,
  )
}

/** What a second merchant prints for the very section. */
export function compareSection(area: Leaf, scope: Scope): void {
  const row = secondMaker.find(([section]) => Math.abs((section * 1e-6) / area.value - 1) < 1e-6)
  if (row === undefined) return
  scope.notebook.note(
    `For comparison, another merchant's sheet of PVC cable gives ${row[0]} mm² ${row[1]} A: makers differ, so write the rating of the very cable.`,
  )
}

const thousandFeet = 304.8 // m, exactly (NIST SP 811)

/** What aircraft wire of the very gauge has: strands, plating and tolerance are not the copper of the gauge. */
export function comparePlated(area: Leaf, scope: Scope): void {
  const gauge = Object.keys(aircraftOhms).find(one => Math.abs(areaOf(one) / area.value - 1) < 1e-6)
  if (gauge === undefined) return
  const milliohms = ((aircraftOhms[gauge] ?? 0) / thousandFeet) * 1000
  const more = milliohms / (annealedCopper / (area.value * 1e6)) - 1
  scope.notebook.note(
    `For comparison, FAA AC 43.13-1B, table 11-9, has ${milliohms.toPrecision(3)} mΩ/m for tin-plated ${gauge} AWG at 20 °C, ${sayShare(more)} the copper of the gauge that is counted here: strands, plating and tolerance differ from maker to maker.`,
  )
}

const sayShare = (more: number): string => `${Math.abs(more * 100).toFixed(0)} % ${more < 0 ? 'less' : 'more'} than`

const areaOf = (gauge: string): number => awgArea(gaugeNumber(gauge) ?? Number.NaN)
