/** By what share of its volume a tank's contents grow for each kelvin, by its `contents`. */
export const expansion: Readonly<Record<string, { readonly value: number; readonly source: string }>> = {
  petrol: { value: 0.00095, source: 'OpenStax College Physics 2e, 13.2, table of thermal expansion' },
  diesel: { value: 0.00084, source: 'fuel pages that give 0.83 to 0.84 in a thousand; no standard was read' },
}

export const steelExpansion = 0.000035 // 1/K, of its volume, OpenStax College Physics 2e, 13.2; other tank metals grow more
