import { latest } from '../../record/lookups.ts'
import type { Part } from '../../record/record.ts'
import { partsOfKind } from '../look-up.ts'
import type { CheckSubject, Scope } from '../scope.ts'
import { partSubject } from '../subjects.ts'

export type HolderKind = 'strap' | 'bracket' | 'bolt' | 'weld'

/** What of each kind shows that it is meant to hold a weight: without one of these a bracket is only folded, a bolt only listed. */
const telling: Readonly<Record<HolderKind, readonly string[]>> = {
  strap: ['count', 'width', 'thickness', 'yield-stress', 'load', 'arm'],
  bracket: ['yield-stress', 'load', 'arm'],
  bolt: ['thread', 'stress-area', 'proof-stress', 'load'],
  weld: ['leg-size', 'load', 'allowable-stress'],
}

export const holderKinds = ['strap', 'bracket', 'bolt', 'weld'] as const

/** The parts of one kind that hold the tank and say with what. */
export function holdersOf(scope: Scope, kind: HolderKind): readonly CheckSubject[] {
  return belonging(scope, kind)
    .filter(part => isTelling(part, kind))
    .map(partSubject)
}

/** The parts that belong to the tank and say nothing of what they can carry. */
export function silentHolders(scope: Scope): readonly Part[] {
  return holderKinds.flatMap(kind => belonging(scope, kind).filter(part => !isTelling(part, kind)))
}

const isTelling = (part: Part, kind: HolderKind): boolean => telling[kind].some(key => latest(part, key) !== null)

function belonging(scope: Scope, kind: HolderKind): readonly Part[] {
  const tank = scope.record.parts.find(({ id }) => id === scope.subject.id)
  const all = partsOfKind(scope.record, ['tank'])
  if (tank === undefined) return []
  return partsOfKind(scope.record, [kind]).filter(part => belongs(part, tank, all))
}

/** A holder that names a tank is that tank's; else a strap that names nothing else, or what is written of the tank's own system. */
function belongs(part: Part, tank: Part, tanks: readonly Part[]): boolean {
  const words = `${part.id} ${part.name}`.toLowerCase()
  const named = tanks.filter(({ id }) => words.includes(id) || words.includes(id.replaceAll('-', ' ')))
  if (named.length > 0) return named.includes(tank)
  if (part.system !== null && tank.system !== null && part.system !== tank.system) return false
  if (/\btanks?\b/.test(words)) return true
  const isSure =
    part.partKind === 'strap' || /\bstraps?\b/.test(words) || (part.system !== null && tank.system !== null)
  return isSure && !others.test(words)
}

const others =
  /battery|radiator|seat|belt|roll|beam|exhaust|engine|gearbox|pump|filter|lamp|spare|tow|body|tub|wing|bumper|step|pipe|hose|line|pedal|fan|axle|spring|sender|gauge/
