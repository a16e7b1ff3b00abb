/** Kinematic viscosity in mm²/s by what flows; the thicker end, which is the safe side for a loss. */
export const viscosity: Readonly<Record<string, { readonly value: number; readonly source: string }>> = {
  petrol: { value: 0.8, source: 'petrol at 20 °C, upper end of handbooks, from memory' },
  diesel: { value: 4.5, source: 'EN 590, upper limit at 40 °C, from memory; cold diesel is thicker' },
  water: { value: 1.004, source: 'OpenStax College Physics 2e, 12.4: 1.002 mPa·s at 20 °C' },
}
