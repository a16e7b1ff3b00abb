/** Writes a text so that YAML reads exactly this text: in double quotes, or in single ones where that needs no escape. */
export function quoteYaml(text: string): string {
  if (!/["\\]/.test(text)) return `"${text}"`
  if (!text.includes("'")) return `'${text}'`
  return `"${text.replace(/["\\]/g, '\\$&')}"`
}
