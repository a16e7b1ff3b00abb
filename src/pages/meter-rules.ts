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
}

/** What published rules and charts add to the readings of a circuit, as sentences; none of them moves a verdict. */
export function meterRules({ use, fuse }: Circuit, { nominal, current, isFeed }: Reading): string[] {
  const ohms = fuse === null ? null : fuseOhms(fuse.rating?.value ?? null, fuse.type)
  const lamp =
    use === 'lighting'
      ? `California’s rule for motor carriers, 13 CCR 1249(c), wants 85 % of the design voltage at a lamp’s socket with the engine running: ${(lampShare * nominal).toFixed(1)} V of ${nominal.toFixed(0)} V.`
      : null
  const bus = isFeed
    ? `FAA-H-8083-31 allows 2 % from battery or generator to the fuse box: ${(busShare * nominal).toFixed(2)} V of ${nominal.toFixed(0)} V.`
    : null
  return [lamp, bus, ohms === null ? null : acrossFuse(current, ohms)].filter(one => one !== null)
}

/** A fuse is a resistor that is already in the circuit: its test points give the current without a lead undone. */
function acrossFuse(amperes: number, ohms: number): string {
  const milliohms = (ohms * 1000).toFixed(1)
  const small = throughFuse(0.0001, ohms) * 1000
  return `Across the two test points of its fuse a meter reads about ${(amperes * ohms * 1000).toFixed(0)} mV with the load on, and 0.1 mV is ${small.toFixed(0)} mA that still flows: a blade fuse of 15 A has ${milliohms} mΩ cold by print, a warm one more.`
}
