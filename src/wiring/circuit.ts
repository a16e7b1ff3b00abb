import type { Quantity } from '../quantities/quantity.ts'
import type { Held, Part } from '../record/record.ts'
import type { WireLook } from './wire-look.ts'

/** One run of wire: there, or back. */
export interface Conductor {
  readonly number: string
  readonly circuit: string
  readonly area: Held<Quantity> | null
  readonly look: WireLook
  readonly length: Held<Quantity> | null
  readonly loom: string | null
  readonly from: string
  readonly to: string
  /** Relays and switches at which it is cut. */
  readonly cutAt: readonly string[]
  /** What is crimped on either end, in the builder's words; null where no note tells. */
  readonly terminals: { readonly from: string | null; readonly to: string | null }
}

export interface Fuse {
  readonly box: string | null
  readonly way: string | null
  readonly rating: Held<Quantity> | null
  readonly type: string | null
  /** Its distance from the source. */
  readonly after: Held<Quantity> | null
}

/** A relay or switch that a circuit goes through. */
interface Through {
  readonly id: string
  readonly name: string
  readonly partKind: string | null
  readonly terminal: string | null
}

/** A circuit as one who wires it reads it. */
export interface Circuit {
  readonly id: string
  readonly name: string
  /** `W7`. */
  readonly number: string
  readonly state: string
  readonly use: string | null
  readonly duty: string | null
  readonly system: string | null
  readonly supply: string | null
  readonly zone: string | null
  /** In words, a part by its name. */
  readonly feeds: string | null
  readonly load: Held<Quantity> | null
  readonly part: Part | null
  readonly fuse: Fuse | null
  /** Relays and switches on the way. */
  readonly through: readonly Through[]
  /** Stops by name, ends included. */
  readonly route: readonly string[]
  readonly feed: Conductor
  /** A return by a wire of its own. */
  readonly back: Conductor | null
  readonly return: 'chassis' | 'cable' | 'not written'
  readonly earth: { readonly id: string; readonly name: string } | null
  readonly loom: string | null
  readonly joints: Held<Quantity> | null
  /** What a reader should know before trusting it, as sentences. */
  readonly doubts: readonly string[]
}

/** Whether the wire is on the vehicle or is meant to be. */
export const isThere = ({ state }: Pick<Circuit, 'state'>): boolean => state !== 'removed'
