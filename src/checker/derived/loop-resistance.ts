import type { Input } from '../input.ts'
import { byWords, ifGiven } from '../inputs/choose.ts'
import { derived } from '../inputs/derived.ts'
import { constant, type Default, value } from '../inputs/value.ts'
import { statedLeaf } from '../leaf.ts'
import { lookUp, targetOf, usedWords } from '../look-up.ts'
import { type Scope, withSubject } from '../scope.ts'
import { subjectOf } from '../subjects.ts'
import { copperCoefficient } from '../tables/conductor-resistance.ts'
import { conductorResistance } from './conductor-resistance.ts'
import { zoneTemperature } from './zone-temperature.ts'

/** How a loop's resistance is worked. */
export interface LoopOptions {
  /** Keeps the symbols of a feed apart: `_feed`. */
  readonly tag?: string
  /** The cable's temperature, its symbol `t` with the tag; the zone's where none is said. */
  readonly temperature?: Input<number>
  /** What an unmeasured chassis counts; 0 Ω where nothing is said. */
  readonly chassis?: Default
}

const alpha = constant({
  symbol: 'alpha',
  meaning: 'temperature coefficient of copper',
  dimension: 'ratio',
  value: copperCoefficient,
  unit: '1',
})

/** The cable from box or battery to the load. */
export function outwardResistance({
  tag = '',
  temperature = zoneTemperature(`t${tag}`),
}: LoopOptions = {}): Input<number> {
  const perMetre = conductorResistance('circuit/cable', `r_20${tag}`)
  const length = value({
    of: 'circuit/length',
    symbol: `L${tag}`,
    meaning: 'length one way',
    dimension: 'length',
    unit: 'm',
  })
  return derived({
    symbol: `R_out${tag}`,
    meaning: 'resistance of the cable there',
    dimension: 'resistance',
    inputs: { perMetre, alpha, temperature, length },
    formula: [
      {
        line: `r_t${tag} = r_20${tag} * (1 + alpha * (t${tag} - 20 degC))`,
        unit: 'mOhm_m',
        says: 'each metre of the cable, warm',
      },
      { line: `R_out${tag} = r_t${tag} * L${tag}`, unit: 'mOhm', says: 'the way there' },
    ],
  })
}

/** The way back: a cable of its own, or the chassis, as its earth point was measured, else as assumed. */
export function returnResistance(options: LoopOptions = {}): Input<number> {
  const { tag = '' } = options
  const spec = { symbol: `R_back${tag}`, meaning: 'resistance of the return', dimension: 'resistance' } as const
  const wanted = value({ of: 'circuit/return', ...spec, unit: 'Ohm' })
  const cable = ifGiven({ ...spec, of: 'circuit/return.area' }, returnCable(options), wanted)
  return byWords({ ...spec, of: 'circuit/return' }, { chassis: chassisReturn(spec, options) }, cable)
}

function chassisReturn(
  spec: { readonly symbol: string; readonly meaning: string; readonly dimension: 'resistance' },
  { tag = '', chassis }: LoopOptions,
): Input<number> {
  return {
    ...spec,
    reads: ['circuit/return', 'circuit/earth', 'earth-point/resistance'],
    read: scope => {
      const earth = scope.subject.thing === null ? null : usedWords(scope, scope.subject.thing, 'earth')
      const point = scope.record.earthPoints.find(({ id }) => id === earth)
      if (point !== undefined && targetOf(point, 'resistance').held !== null) {
        const measured = value({
          ...spec,
          of: 'earth-point/resistance',
          meaning: `chassis to ${point.name}, measured`,
          unit: 'mOhm',
        })
        return measured.read(withSubject(scope, subjectOf('earth-point', point)))
      }
      const {
        value: ohms,
        unit,
        said,
      } = chassis ?? {
        value: 0,
        unit: 'Ohm',
        said: tag === '' ? 'chassis return 0 Ω' : `chassis return of ${scope.subject.id} 0 Ω`,
      }
      scope.notebook.assume(said)
      return {
        type: 'figure',
        term: statedLeaf('assumed', {
          symbol: spec.symbol,
          meaning: 'chassis return, not measured',
          value: ohms,
          unit,
        }),
      }
    },
  }
}

function returnCable({ tag = '', temperature = zoneTemperature(`t${tag}`) }: LoopOptions): Input<number> {
  return derived({
    symbol: `R_back${tag}`,
    meaning: 'resistance of the return',
    dimension: 'resistance',
    inputs: {
      perMetre: conductorResistance('circuit/return', `r_20_back${tag}`),
      alpha,
      temperature,
      length: returnLength(tag),
    },
    formula: [
      {
        line: `r_t_back${tag} = r_20_back${tag} * (1 + alpha * (t${tag} - 20 degC))`,
        unit: 'mOhm_m',
        says: 'each metre of the return, warm',
      },
      { line: `R_back${tag} = r_t_back${tag} * L_back${tag}`, unit: 'mOhm', says: 'the way back' },
    ],
  })
}

/** A return cable's own length, else that of its circuit, which is said. */
function returnLength(tag: string): Input<number> {
  const spec = { symbol: `L_back${tag}`, meaning: 'length of the return', dimension: 'length', unit: 'm' } as const
  const ofCircuit = value({ of: 'circuit/length', ...spec })
  const asSupply: Input<number> = {
    ...ofCircuit,
    read: (scope: Scope) => {
      if (lookUp(scope, 'circuit/length').held !== null) scope.notebook.assume('return cable as long as the supply')
      return ofCircuit.read(scope)
    },
  }
  return ifGiven({ ...spec, of: 'circuit/return.length' }, value({ of: 'circuit/return.length', ...spec }), asSupply)
}

/** All crimps and contacts of the loop, added once; none where none are written, and said. */
export function jointsResistance(tag = ''): Input<number> {
  const assuming = (said: string): Input<number> =>
    value({
      of: 'circuit/joints',
      symbol: `R_j${tag}`,
      meaning: 'joints of the loop',
      dimension: 'resistance',
      unit: 'mOhm',
      default: { value: 0, unit: 'Ohm', said },
    })
  return {
    ...assuming('joints 0 Ω'),
    read: scope => assuming(tag === '' ? 'joints 0 Ω' : `joints of ${scope.subject.id} 0 Ω`).read(scope),
  }
}
