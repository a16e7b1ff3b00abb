import type { Quantity } from '../quantities/quantity.ts'
import type { Held } from '../record/record.ts'
import type { WireLook } from './wire-look.ts'

/** `2.5 mm² green/purple`, and what of it nobody wrote. */
export function wireWords({ area, look }: { readonly area: Held<Quantity> | null; readonly look: WireLook }): string {
  const size = area?.value.text ?? 'size not written'
  const colour =
    look.written === ''
      ? 'colour not written'
      : look.ground === 'unknown'
        ? `“${look.written}”, no known colour`
        : look.written
  return area === null && look.written === '' ? 'size and colour not written' : `${size} ${colour}`
}

/** `2.40 m`: metres to the width of a tape's marks. */
export const metres = (length: number): string => `${length.toFixed(2)} m`
