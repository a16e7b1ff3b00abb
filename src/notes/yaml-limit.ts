import { type Finding, finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'

const limitKb = 64 // About 40 times what a long session needs; also what keeps hostile YAML to a few seconds.

/** The finding that YAML is too long to be read; null where it is not. */
export function yamlOverLimit(yaml: string, place: Place): Finding | null {
  const kb = Math.ceil(Buffer.byteLength(yaml) / 1024)
  if (kb <= limitKb) return null
  const message = `Unexpected ${kb} KB of YAML, expected at most ${limitKb} KB: none of it is read. Move words into the body.`
  return finding('front-matter', place, { message })
}
