import { wireColours } from '../record/wire-colours.ts'

/** How a wire looks: its colours as written, the names of the style sheet's classes, and the code of IEC 60757. */
export interface WireLook {
  /** As written; empty where nothing was. */
  readonly written: string
  /** Class of the insulation's own colour; `unknown` where the words are no colour, null where none were written. */
  readonly ground: string | null
  /** Class of the tracer, null for a wire of one colour. */
  readonly band: string | null
  /** `GNVT`; null where a colour has no code. */
  readonly code: string | null
}

// IEC 60757:2021, table 1, codes as publicly tabulated.
const codes: Readonly<Record<string, string>> = {
  black: 'BK',
  brown: 'BN',
  red: 'RD',
  orange: 'OG',
  yellow: 'YE',
  green: 'GN',
  blue: 'BU',
  violet: 'VT',
  grey: 'GY',
  white: 'WH',
  pink: 'PK',
  gold: 'GD',
  turquoise: 'TQ',
  silver: 'SR',
}

/** Shades that the style sheet draws as themselves; any other is drawn as its plain colour, and the words say which. */
const drawnShades: ReadonlySet<string> = new Set([
  'light blue',
  'light green',
  'light grey',
  'dark blue',
  'dark green',
  'dark grey',
])

/** Reads the colours of a wire, null where nothing was written of them. */
export function wireLook(written: string | null): WireLook {
  if (written === null || written.trim() === '') return { written: '', ground: null, band: null, code: null }
  const colours = wireColours(written)
  if (colours === null) return { written, ground: 'unknown', band: null, code: null }
  const [ground = '', band] = colours
  const found = colours.map(colour => codes[colour])
  return {
    written,
    ground: className(ground),
    band: band === undefined ? null : className(band),
    code: found.every(code => code !== undefined) ? found.join('') : null,
  }
}

/** The colour without which the others cannot be told apart in an index: `green` of `dark green/purple`. */
export function groundColour(written: string): string | null {
  return wireColours(written)?.[0] ?? null
}

function className(colour: string): string {
  return drawnShades.has(colour) ? colour.replace(' ', '-') : (colour.split(' ').at(-1) ?? colour)
}
