/** Threads to the inch by size in inches, coarse (BS 84; written down from memory). */
export const whitworth: Readonly<Record<string, number>> = {
  '1/8': 40, '3/16': 24, '1/4': 20, '5/16': 18, '3/8': 16, '7/16': 14, '1/2': 12, '9/16': 12, '5/8': 11, '3/4': 10, '7/8': 9, '1': 8,
} // biome-ignore format: a table reads better in rows
/** Threads to the inch by size in inches, fine (BS 84; written down from memory). */
export const fineBritish: Readonly<Record<string, number>> = {
  '3/16': 32, '7/32': 28, '1/4': 26, '9/32': 26, '5/16': 22, '3/8': 20, '7/16': 18, '1/2': 16, '9/16': 16, '5/8': 14,
  '11/16': 14, '3/4': 12, '7/8': 11, '1': 10,
} // biome-ignore format: a table reads better in rows

const numbered = (diameter: number, pitch: number) => ({ diameter, pitch })
/** Diameter and pitch in millimetres by number, 0 BA to 10 BA: 0.9ⁿ and 6 p^1.2, rounded (BS 93). */
export const britishAssociation: readonly { readonly diameter: number; readonly pitch: number }[] = [
  numbered(6, 1), numbered(5.3, 0.9), numbered(4.7, 0.81), numbered(4.1, 0.73), numbered(3.6, 0.66), numbered(3.2, 0.59),
  numbered(2.8, 0.53), numbered(2.5, 0.48), numbered(2.2, 0.43), numbered(1.9, 0.39), numbered(1.7, 0.35),
] // biome-ignore format: a table reads better in rows
