const before =
  /\b(?:by|rose|rises?|drop(?:s|ped)?|fell|falls?|gain(?:s|ed)?|lost|loses?|climb(?:s|ed)|cool(?:s|ed)|warm(?:s|ed)|(?:rise|drop|difference|increase|fall|gain|change|swing|delta|spread|gap) of)\s$/i
const behind =
  /^\s(?:rise|drop|difference|increase|fall|swing|hotter|cooler|colder|warmer|higher|lower|above ambient|above the ambient|over ambient|more|less)\b/i
const longestBefore = 16
const longestBehind = 22

/** Whether a temperature is a difference, as in `rose by 20 °C` and `20 °C hotter`. */
export function isTemperatureDifference(text: string, { start, end }: { start: number; end: number }): boolean {
  if (before.test(text.slice(Math.max(0, start - longestBefore), start))) return true
  return behind.test(text.slice(end, end + longestBehind))
}
