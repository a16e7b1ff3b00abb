import type { Input } from '../input.ts'
import { byWords, ifGiven } from '../inputs/choose.ts'
import { derived } from '../inputs/derived.ts'
import { constant } from '../inputs/value.ts'
import { targetOf, wordsOf } from '../look-up.ts'
import { type Scope, withSubject } from '../scope.ts'
import { batteryResistance } from './battery-resistance.ts'
import { insulation } from './cable-insulation.ts'
import { nominalVoltage } from './circuit-current.ts'
import { feedOfSubject, hasCableReturn } from './circuit-graph.ts'
import { jointsResistance, type LoopOptions, outwardResistance, returnResistance } from './loop-resistance.ts'

const fiveMilliohm = { value: 5, unit: 'mOhm', said: 'chassis return 5 mΩ' } // FAA-H-8083-31: the most that a return through the structure may have
const cold = { value: 0, unit: 'Ohm', said: 'chassis return 0 Ω' }
const deepestFeed = 5 // boxes in a row; more is a feed that leads back to itself

type Extreme = 'least' | 'greatest'

interface Way {
  readonly extreme: Extreme
  /** Keeps the symbols of a feed apart: `_feed`. */
  readonly tag: string
  /** The fault goes back through the chassis once: a feed does not add it again. */
  readonly isChassisCounted: boolean
}

/** What stands in the way of the least current: cables as hot as their insulation stands, the chassis 5 mΩ, the feed and the battery. */
export function leastFaultWay() {
  const way = loop({ extreme: 'least', tag: '', isChassisCounted: false })
  return { ...way, battery: batteryResistance() }
}

/** The greatest: cables at 20 °C, no battery resistance, the chassis 0 Ω. */
export function greatestFaultCurrent(): Input<number> {
  return derived({
    symbol: 'I_g',
    meaning: 'greatest current of a short at the far end',
    dimension: 'current',
    inputs: { ...loop({ extreme: 'greatest', tag: '', isChassisCounted: false }), nominal: nominalVoltage() },
    formula: [
      { line: 'R_g = R_out + R_back + R_j + R_feed', unit: 'mOhm', says: 'the whole way of the fault, cold' },
      { line: 'I_g = U_n / R_g', unit: 'A', says: 'the greatest that a short at the far end draws' },
    ],
  })
}

/** The cable there and back, the joints and the feed of the box, each a figure by its symbol. */
function loop(way: Way) {
  const { extreme, tag, isChassisCounted } = way
  const chassis = extreme === 'least' ? fiveMilliohm : cold
  const there: LoopOptions = { tag, temperature: temperature(extreme, 'circuit/cable', `t${tag}`), chassis }
  const back: LoopOptions = { ...there, temperature: temperature(extreme, 'circuit/return', `t${tag}`) }
  return {
    outward: outwardResistance(there),
    back: isChassisCounted ? withoutChassis(back) : returnResistance(back),
    joints: jointsResistance(tag),
    feed: feedResistance(way),
  }
}

const temperature = (extreme: Extreme, of: 'circuit/cable' | 'circuit/return', symbol: string): Input<number> =>
  extreme === 'least'
    ? insulation(of, symbol)
    : constant({ symbol, meaning: 'cold cable', dimension: 'temperature', value: 20, unit: 'degC' })

/** A feed through an unmeasured chassis adds nothing: the fault goes back through that chassis once, and was counted there. */
function withoutChassis(options: LoopOptions): Input<number | null> {
  const whole = returnResistance(options)
  const spec = { symbol: whole.symbol, meaning: whole.meaning, dimension: whole.dimension }
  const none: Input<number | null> = {
    ...spec,
    reads: [],
    read: scope => {
      if (isMeasured(scope)) return whole.read(scope)
      scope.notebook.note('The chassis is counted once, as the return of the circuit.')
      return { type: 'none' }
    },
  }
  return byWords<number | null>(
    { ...spec, of: 'circuit/return' },
    { chassis: none },
    ifGiven<number | null>({ ...spec, of: 'circuit/return.area' }, whole, none),
  )
}

function isMeasured(scope: Scope): boolean {
  const { subject, record } = scope
  const earth = subject.thing === null ? null : wordsOf(subject.thing, 'earth')
  const point = record.earthPoints.find(({ id }) => id === earth)
  return point !== undefined && targetOf(point, 'resistance').held !== null
}

/** The circuit that feeds the box in which the subject is fused; none without one. */
function feedResistance(way: Way): Input<number | null> {
  const tag = `${way.tag}_feed`
  const symbol = `R${tag}`
  return {
    symbol,
    meaning: 'resistance of the feed of the fuse box',
    dimension: 'resistance',
    reads: ['circuit/fuse.box', 'fuse-box/feed'],
    read: scope => {
      const [feed] = feedOfSubject(scope)
      if (feed === undefined) return { type: 'none' }
      if (tag.split('_feed').length > deepestFeed) {
        scope.notebook.need(`circuit:${feed.id}/fuse.box`, `${feed.id} is fed by way of itself`)
        return null
      }
      const isChassisCounted = way.isChassisCounted || !hasCable(scope)
      return feedLoop({ ...way, tag, isChassisCounted }).read(withSubject(scope, feed))
    },
  }
}

const hasCable = ({ subject }: Scope): boolean => subject.thing !== null && hasCableReturn(subject.thing)

function feedLoop(way: Way): Input<number> {
  const { tag } = way
  return derived({
    symbol: `R${tag}`,
    meaning: 'resistance of the feed of the fuse box',
    dimension: 'resistance',
    inputs: loop(way),
    formula: [
      {
        line: `R${tag} = R_out${tag} + R_back${tag} + R_j${tag} + R${tag}_feed`,
        unit: 'mOhm',
        says: 'the feed of the fuse box',
      },
    ],
  })
}
