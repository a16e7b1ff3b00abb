import type { AsBuiltRecord, Part } from '../../record/record.ts'
import type { Found, Input } from '../input.ts'
import { ifGiven } from '../inputs/choose.ts'
import { ofAnother } from '../inputs/each.ts'
import { value } from '../inputs/value.ts'
import { isChecked, partsOfKind } from '../look-up.ts'
import type { CheckSubject, Scope } from '../scope.ts'
import { partSubject, type SubjectSource } from '../subjects.ts'

const fuel = /fuel|petrol|diesel/i
const otherTrade = /cool|water|radiator|heater|brake|clutch|oil|air|vacuum|wash|exhaust|vent|breather|drain/i

/** Of the fuel system; or of no named system, and by no word another's. */
const isOfFuel = ({ system, id, name }: Part): boolean =>
  system === null ? fuel.test(`${id} ${name}`) || !otherTrade.test(`${id} ${name}`) : fuel.test(system)

export type Side = 'suction' | 'pressure' | 'return'

/** On which side of the pump a line lies, by the words of its name; null where they do not say. */
export function sideOf({ id, name }: Pick<CheckSubject, 'id' | 'name'>): Side | null {
  const words = `${id} ${name}`.replaceAll('-', ' ')
  if (/return|spill/i.test(words)) return 'return'
  if (/suction|pick ?up|(?:tank|filter) to (?:the )?(?:\w+ )?pump/i.test(words)) return 'suction'
  return /feed|pressure|delivery|from (?:the )?pump|pump to|to (?:the )?(?:engine|carburettor|injection|rail)/i.test(
    words,
  )
    ? 'pressure'
    : null
}

/** Each hose and pipe that carries fuel. */
export function fuelLines(meaning: string): SubjectSource {
  return {
    kind: 'hose',
    meaning,
    find: record => linesOf(record).map(part => ({ subject: partSubject(part), isCurrent: isChecked(part) })),
  }
}

function linesOf({ parts }: AsBuiltRecord): Part[] {
  return parts.filter(part => (part.partKind === 'hose' || part.partKind === 'pipe') && isOfFuel(part))
}

/** The other lines between tank and pump. */
export function otherSuctionLines({ record, subject }: Scope): readonly CheckSubject[] {
  return linesOf(record)
    .filter(part => isChecked(part) && part.id !== subject.id)
    .map(partSubject)
    .filter(line => sideOf(line) === 'suction')
}

/** The pumps that move fuel. */
export function fuelPumps({ record }: Scope): readonly CheckSubject[] {
  return partsOfKind(record, ['pump']).filter(isOfFuel).map(partSubject)
}

/** A figure of the fuel pump; without a pump it is missing. */
export function ofPump(input: Input<number>, what: string): Input<number> {
  const none: Input<number> = {
    ...input,
    read: scope => {
      scope.notebook.need(what, 'no fuel pump is in the record')
      return null
    },
  }
  return ofAnother(fuelPumps, input, none)
}

/** Which side of the pump the subject lies on; where its name does not say, the pressure side is assumed. */
export function lineSide(): Input<string> {
  return {
    symbol: null,
    meaning: 'side of the pump on which it lies, by its name: suction, pressure or return',
    dimension: null,
    reads: ['part/name'],
    read: ({ subject, notebook }): Found => {
      const side = sideOf(subject)
      if (side === null) notebook.assume('on the pressure side of the pump: its name says neither suction nor return')
      return { type: 'words', words: side ?? 'pressure' }
    },
  }
}

/** What flows in the subject: as written of it, else all that the pump moves. */
export function lineFlow(symbol = 'q'): Input<number> {
  const spec = { symbol, meaning: 'fuel that flows', dimension: 'flow' } as const
  const own = value({ of: 'part/flow', ...spec, unit: 'L_h' })
  const whole = ofPump(value({ of: 'pump/flow', ...spec, meaning: 'what the pump moves', unit: 'L_h' }), 'pump/flow')
  const ofThePump: Input<number> = {
    ...whole,
    read: scope => {
      const found = whole.read(scope)
      if (found !== null) scope.notebook.assume('carries all that the pump moves')
      return found
    },
  }
  return ifGiven({ ...spec, of: 'part/flow' }, own, ofThePump)
}
