/** One contact of a trailer socket: what the standard puts on it, its least section in mm², and words by which a builder says so. */
export interface SocketContact {
  readonly contact: string
  readonly function: string
  /** Of the core in a made-up cable; informative, null where the standard has none. */
  readonly colour: string | null
  /** Null: reserved. */
  readonly section: number | null
  /** All of these have to be found in what is carried. */
  readonly words: readonly RegExp[]
  /** None of these may be. */
  readonly not?: RegExp
  /** It may be left free; where the contact named here is used, it may not. */
  readonly free?: true
  readonly withContact?: string
  /** Markets and years differ: what else is on it is told, and is no fault. */
  readonly differs?: true
}
