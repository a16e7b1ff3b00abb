import type { Conductor } from './circuit.ts'
import { conductorWords } from './circuit-return.ts'
import type { SymbolName } from './symbols.ts'
import type { WireLook } from './wire-look.ts'

/** A wire as a drawing shows it. */
export interface DrawnWire {
  readonly look: WireLook
  readonly words: string
}

/** One thing on the way of a circuit, with the wire that leads to it from the one before. */
export interface Station {
  readonly symbol: SymbolName
  readonly words: string
  /** Figures under the words: a key of the circuit, and what it is. */
  readonly figure: 'load' | 'fuse.rating' | null
  readonly wire: DrawnWire | null
  /** Where it leads: a part, a connector or another circuit. */
  readonly leads: { readonly kind: 'part' | 'connector' | 'circuit'; readonly id: string } | null
}

/** A run of wire as a drawing shows it. */
export const drawn = (wire: Conductor): DrawnWire => ({ look: wire.look, words: conductorWords(wire) })
