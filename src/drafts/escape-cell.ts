/** Words as one cell of a GFM table that prints them as they are: nothing in them is a mark, a link or a directive. */
export function escapeCell(text: string): string {
  return text
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[\\`*_[\]<>|~&#]|:(?=[\p{L}:])/gu, sign => `\\${sign}`)
}
