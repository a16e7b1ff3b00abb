import type { Verdict } from '../checker/verdict.ts'
import { formatWarranted } from '../quantities/format.ts'
import { quantityAt } from '../record/lookups.ts'
import type { AsBuiltRecord, Part, Thing } from '../record/record.ts'
import type { PageScope } from './page-scope.ts'
import { subjectAddress, verdictAddress, wordsAddress } from './thing-addresses.ts'
import type { Hung } from './weights-drawing.ts'

/** One answer of the check: its value in kg or mm, the same to read, and the page that works it. */
export interface AxleAnswer {
  readonly value: number
  readonly text: string
  readonly href: string
}

/** What stands on the axles in one state of the vehicle; null where the check could not tell. */
export interface AxleState {
  readonly front: AxleAnswer | null
  readonly rear: AxleAnswer | null
  readonly total: AxleAnswer | null
  readonly centre: AxleAnswer | null
}

const check = 'axle-loads'

/** The answers of the check, unladen or laden. */
export function axleState(scope: PageScope, isLaden: boolean): AxleState {
  const of = (aspect: string): AxleAnswer | null => {
    const whole = isLaden ? `${aspect}-laden` : aspect
    const verdict = scope.atlas.verdicts.find(one => one.check === check && one.aspect === whole)
    if (verdict === undefined || verdict.result === null) return null
    const { value, uncertainty, unit } = verdict.result
    return { value, text: formatWarranted(value, uncertainty, unit), href: scope.to(verdictAddress(verdict)) }
  }
  return { front: of('front'), rear: of('rear'), total: of('total'), centre: of('centre') }
}

/** Whether the loads were weighed at the axles, and not summed from the parts. */
export function areAxlesWeighed(scope: PageScope): boolean {
  return ['front', 'rear'].every(aspect => {
    const verdict = scope.atlas.verdicts.find(one => one.check === check && one.aspect === aspect)
    return verdict?.working.values.some(({ symbol }) => symbol?.text === (aspect === 'front' ? 'W_f' : 'W_r')) === true
  })
}

/** Parts on the vehicle that have no mass, or no place. */
export function unweighedParts({ parts }: AsBuiltRecord): Part[] {
  return parts.filter(part => part.onVehicle && (quantityAt(part, 'mass') === null || quantityAt(part, 'at') === null))
}

/** What laden adds, each at its place: the contents of full tanks as the check worked them out, and the stated loads. */
export function addedMasses(scope: PageScope): Hung[] {
  const laden = scope.atlas.verdicts.find(one => one.check === check && one.aspect === 'centre-laden')
  return laden === undefined || laden.result === null
    ? []
    : [...tankContents(scope, laden), ...statedLoads(scope)].sort((a, b) => b.kg - a.kg)
}

function tankContents(scope: PageScope, { working }: Verdict): Hung[] {
  const tanks = scope.record.parts.filter(part => part.onVehicle && part.partKind === 'tank')
  const worked = working.steps.filter(({ symbol, unit }) => symbol.text === 'm_a' && unit === 'kg')
  if (worked.length !== tanks.length) return []
  return tanks.flatMap((tank, index) => {
    const kg = worked[index]?.value ?? 0
    const href = scope.to(subjectAddress({ kind: 'part', id: tank.id }))
    return hung(tank, { name: `Full contents of ${tank.name}`, kg, href })
  })
}

const holders: readonly (string | null)[] = ['strap', 'bracket', 'bolt', 'weld', 'axle'] // their load is what they hold

function statedLoads(scope: PageScope): Hung[] {
  const { vehicle, parts } = scope.record
  const carriers = parts.filter(part => part.onVehicle && !holders.includes(part.partKind))
  return [vehicle, ...carriers].flatMap(thing => {
    const held = quantityAt(thing, 'load')
    if (held === null || held.value.dimension !== 'mass' || held.value.si === null) return []
    const name = thing === vehicle ? 'The stated load' : `Load of ${thing.name}`
    return hung(thing, { name, kg: held.value.si, href: scope.to(wordsAddress(held)) })
  })
}

function hung(thing: Thing, given: { name: string; kg: number; href: string }): Hung[] {
  const metres = quantityAt(thing, 'at')?.value.si ?? null
  return metres === null || given.kg <= 0 ? [] : [{ ...given, atMm: metres * 1000, isAdded: true }]
}
