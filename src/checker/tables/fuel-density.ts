/** Density in kg/L of what a tank holds, by its `contents`; the heavier end of what the standard allows, which is the safe side. */
export const contentsDensity: Readonly<Record<string, { readonly value: number; readonly source: string }>> = {
  petrol: { value: 0.775, source: 'EN 228, upper limit at 15 °C' },
  diesel: { value: 0.845, source: 'EN 590, upper limit at 15 °C' },
  water: { value: 1, source: 'water at 4 °C' },
}
