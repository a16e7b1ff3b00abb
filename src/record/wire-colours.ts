import { readColour } from '../facts/colour.ts'

/** Colours by name, the ground colour first, however they were written: `gn/vt` is green and violet; null where one is not known. */
export function wireColours(text: string): readonly string[] | null {
  return readColour(text)?.colours ?? null
}
