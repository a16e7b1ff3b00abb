import type { Found, Input } from '../input.ts'
import { figureAt, optional } from '../inputs/value.ts'
import { optionalWords } from '../inputs/words.ts'
import { isLive, partsOfKind, targetOf } from '../look-up.ts'
import { type CheckSubject, type Scope, withSubject } from '../scope.ts'
import { subjectOf } from '../subjects.ts'
import { circuitCurrent } from './circuit-current.ts'

/** What is written of one half's way: its words, its wire, and what its terminal takes and carries. */
export interface Side {
  readonly carries: Found
  readonly circuit: Found
  readonly area: Found
  readonly least: Found
  readonly most: Found
  readonly rating: Found
  readonly load: Found
}

/** Reads one half's way. Null: something that is needed is missing, and was named. */
export function readSide(scope: Scope, pin: CheckSubject): Side | null {
  const at = withSubject(scope, pin)
  const [least, most, rating] = [terminal(at, 'section-min'), terminal(at, 'section-max'), terminal(at, 'rating')]
  const area = wire(least !== null && most !== null && [least, most].some(({ type }) => type === 'figure')).read(at)
  const [carries, circuit] = [carried.read(at), ofCircuit.read(at)]
  const load = rating?.type === 'figure' ? loadBehind(at, circuit) : none
  if (least === null || most === null || rating === null || area === null || load === null) return null
  return { carries: carries ?? none, circuit: circuit ?? none, area, least, most, rating, load }
}

const none: Found = { type: 'none' }
const carried = optionalWords({ of: 'pin/carries', meaning: 'what it carries' })
const ofCircuit = optionalWords({ of: 'pin/circuit', meaning: 'its circuit' })

/** A wire's section, which is needed where the terminal says what it takes. */
function wire(isNeeded: boolean): Input<number | null> {
  const spec = {
    of: 'pin/wire.area',
    symbol: 'A',
    meaning: 'section of the wire',
    dimension: 'area',
    unit: 'mm2',
    exact: true,
  } as const
  const section = optional(spec)
  return {
    ...section,
    read: scope => {
      const found = section.read(scope)
      if (found?.type !== 'none' || !isNeeded) return found
      if (carried.read(scope)?.type !== 'words' && ofCircuit.read(scope)?.type !== 'words') return found
      if (scope.subject.thing !== null)
        scope.notebook.need(
          targetOf(scope.subject.thing, `${scope.subject.prefix}wire.area`).path,
          'the section of the wire is not written',
        )
      return null
    },
  }
}

const kinds = ['connector', 'terminal', 'trailer-socket'] as const

/** What a terminal takes or carries: said of the connector, else of the part of that name. */
function terminal(scope: Scope, key: 'section-min' | 'section-max' | 'rating'): Found | null {
  const { thing } = scope.subject
  if (thing === null) return none
  const part = partsOfKind(scope.record, kinds).find(({ id }) => id === thing.id)
  const targets = [thing, ...(part === undefined ? [] : [part])].map(one => targetOf(one, key))
  const target = targets.find(({ held }) => held !== null)
  if (target === undefined) {
    scope.notebook.note(`The ${key} of ${thing.id} is not written, so it is not asked.`)
    return none
  }
  const spec =
    key === 'rating' ? ({ dimension: 'current', unit: 'A' } as const) : ({ dimension: 'area', unit: 'mm2' } as const)
  return figureAt(target, { symbol: 'x', meaning: `${key} of the terminal`, exact: true, ...spec }, scope)
}

/** What the way's circuit draws, where it names one that is live. */
function loadBehind(scope: Scope, named: Found | null): Found | null {
  const circuit = named?.type === 'words' ? scope.record.circuits.find(({ id }) => id === named.words) : undefined
  if (circuit === undefined || !isLive(circuit)) {
    scope.notebook.note(
      `Way ${scope.subject.name} of ${scope.subject.thing?.id ?? ''} names no live circuit, so its load is not held against the rating.`,
    )
    return none
  }
  return circuitCurrent('I').read(withSubject(scope, subjectOf('circuit', circuit)))
}
