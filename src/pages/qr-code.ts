import { encode } from 'uqr'

/** A QR code (ISO/IEC 18004) as one path, a unit of it a module wide; the quiet zone around it is not in it. */
export interface QrCode {
  readonly size: number
  readonly path: string
}

/** The quiet zone on each side, modules: ISO/IEC 18004 asks for four. */
export const quietZone = 4

const known = new Map<string, QrCode>()
const mostKnown = 4096 // codes, of some 5 kB each

/** Words as a code that is read with up to 15 % of it dirty or worn, more where it takes no more room. */
export function qrCode(text: string): QrCode {
  const before = known.get(text)
  if (before !== undefined) return before
  const { size, data } = encode(text, { ecc: 'M', boostEcc: true, border: 0 })
  const code = { size, path: data.map(rowPath).join('') }
  if (known.size < mostKnown) known.set(text, code)
  return code
}

/** Each run of dark modules in a row as one bar. */
function rowPath(row: readonly boolean[], y: number): string {
  const bars: { x: number; width: number }[] = []
  for (const [x, isDark] of row.entries()) {
    const last = bars.at(-1)
    if (isDark && last !== undefined && last.x + last.width === x) last.width++
    else if (isDark) bars.push({ x, width: 1 })
  }
  return bars.map(({ x, width }) => `M${x} ${y}h${width}v1h-${width}z`).join('')
}
