import type { Circuit } from '../wiring/circuit.ts'
import { fuseOhms, throughFuse } from '../wiring/fuse-millivolts.ts'

const lampShare = 0.85 // of the design voltage, at the socket, engine running: 13 CCR 1249(c), California's motor carriers
const busShare = 0.02 // of the regulated voltage, from battery or generator to the bus: FAA-H-8083-31

interface Reading {
  readonly nominal: number
  /** Amperes. */
  readonly current: number
  /** A fuse box takes its supply from this circuit. */
  readonly isFeed: boolean
  /** Amperes at which the battery is rated for a cold start; null where none is written. */
  readonly coldCranking: number | null
}

/** What published rules and charts add to the readings of a circuit, as sentences; none of them moves a verdict. */
export function meterRules({ use, fuse }: Circuit, { nominal, current, isFeed, coldCranking }: Reading): string[] {
  const ohms = fuse === null ? null : fuseOhms(fuse.rating?.value ?? null, fuse.type)
  const lamp =
    use === 'lighting'
      ? `California’s rule for motor carriers, 13 CCR 1249(c), wants 85 % of the design voltage at a lamp’s socket with the engine running: ${(lampShare * nominal).toFixed(1)} V of ${nominal.toFixed(0)} V.`
      : null
  const bus = isFeed
    ? `FAA-H-8083-31 allows 2 % from battery or generator to the fuse box: ${(busShare * nominal).toFixed(2)} V of ${nominal.toFixed(0)} V.`
    : null
  const test = isFeed && coldCranking !== null ? loadTest(coldCranking) : null
  return [lamp, bus, test, ohms === null ? null : acrossFuse(current, ohms)].filter(one => one !== null)
}

/** Half of the cold cranking current, down to tens, as a maker's table of 2000 has it: 600 A 300 A, 625 A 310 A, 770 A 380 A. */
const loadTest = (amperes: number): string =>
  `Where all that hangs on it is dim, look at the battery first: a load test takes half of its cold cranking current, ${Math.floor(amperes / 20) * 10} A of ${amperes.toFixed(0)} A.`

/** A fuse is a resistor that is already in the circuit: its test points give the current without a lead undone. */
function acrossFuse(amperes: number, ohms: number): string {
  const milliohms = (ohms * 1000).toFixed(1)
  const small = throughFuse(0.0001, ohms) * 1000
  return `Across the two test points of its fuse a meter reads about ${(amperes * ohms * 1000).toFixed(0)} mV with the load on, and 0.1 mV is ${small.toFixed(0)} mA that still flows: a blade fuse of 15 A has ${milliohms} mΩ cold by print, a warm one more.`
}
