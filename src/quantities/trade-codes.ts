/** Codes of UN/ECE Recommendation 20, by which orders and customs papers name units, as the QUDT vocabulary and schema.org's vehicle terms print them: only those that were read. */
const tradeCodes: Readonly<Record<string, string>> = {
  mm: 'MMT',
  m: 'MTR',
  in: 'INH',
  kg: 'KGM',
  lb: 'LBR',
  L: 'LTR',
  gal_us: 'GLL',
  gal_imp: 'GLI',
  psi: 'PS',
  bar: 'BAR',
  Nm: 'NU',
  km_h: 'KMH',
  mph: 'HM',
  degC: 'CEL',
}

/** The code of a unit in orders and customs papers, `KGM` for `kg`; null where none was read. */
export function tradeCode(unit: string): string | null {
  return Object.hasOwn(tradeCodes, unit) ? (tradeCodes[unit] ?? null) : null
}
