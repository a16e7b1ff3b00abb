/** What a load is to the contact that switches it. */
export type LoadKind = 'lamp' | 'motor' | 'inductive' | 'resistive'

/** Nominal voltages in V between which a row holds, and how many times its running current a load asks of a contact. */
export const switchFactors: readonly {
  readonly from: number
  readonly to: number
  readonly named: string
  readonly factors: Readonly<Record<LoadKind, number>>
}[] = [
  { from: 10, to: 15, named: '12 V', factors: { lamp: 5, motor: 2, inductive: 2, resistive: 1 } },
  { from: 20, to: 30, named: '24 V', factors: { lamp: 8, motor: 3, inductive: 4, resistive: 2 } },
] // FAA AC 43.13-1B, table 11-4; its rows are for 12 V and for 24 to 28 V

export const switchFactorsSource = 'FAA AC 43.13-1B, table 11-4, switch derating'

/** What kind of load a use is. `other` says nothing of it. */
export const loadKindOfUse: Readonly<Record<string, LoadKind>> = {
  lighting: 'lamp',
  signal: 'lamp',
  pump: 'motor',
  starting: 'motor',
  ignition: 'inductive',
  heating: 'resistive',
  charging: 'resistive',
} // ours; a signal is a lamp unless its words say that it sounds

/** Words by which a signal is a horn, which is a coil and no lamp. */
export const soundsLoud = /\b(horn|horns|buzzer|bell|siren|sounder)\b/i

/** What kind of load a part is that a circuit feeds. */
export const loadKindOfPart: Readonly<Record<string, LoadKind>> = {
  lamp: 'lamp',
  pump: 'motor',
  fan: 'motor',
  relay: 'inductive',
} // ours
