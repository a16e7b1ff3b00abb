/** One value that goes into a calculation; inputs of one source are the same variable and move together. */
export interface UncertainInput {
  readonly name: string
  readonly value: number
  /** Standard uncertainty. */
  readonly standard: number
  readonly low: number
  readonly high: number
  readonly source: string
}

/** A calculation in SI numbers: one result, or several by name. */
export type Compute = (values: Readonly<Record<string, number>>) => Readonly<Record<string, number>>
