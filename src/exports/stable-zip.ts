import { type Zippable, zipSync } from 'fflate'

const zipTime = new Date(1980, 0, 2) // the first day that every time zone can write into a zip, which begins on 1980-01-01

/** Parts in the order given, all with one time: the same parts give the same bytes. `stored` ones are not packed. */
export function stableZip(
  parts: readonly (readonly [string, Uint8Array])[],
  stored: readonly string[] = [],
): Uint8Array {
  const files: Zippable = Object.fromEntries(
    parts.map(([name, bytes]) => [name, [bytes, { level: stored.includes(name) ? 0 : 6 }]]),
  )
  return zipSync(files, { mtime: zipTime })
}
