import type { Place } from '../findings/place.ts'
import { kinds } from './kinds.ts'
import { nearest } from './near-words.ts'
import { quoted } from './quoted.ts'
import { report, type Sheet } from './sheet.ts'

/** A kind that has no properties of its own: worth a note, never more. */
export function reportKind(sheet: Sheet, { kind, part, place }: { kind: string; part: string; place: Place }): void {
  if (Object.hasOwn(kinds, kind)) return
  const near = nearest(kind, Object.keys(kinds))
  const expected = near === null ? 'a kind whose properties are known, such as `tank` or `pump`' : `\`${near}\``
  report(sheet, 'unknown-kind', {
    place,
    message: `Unexpected kind ${quoted(kind)} of \`${part}\`, expected ${expected}`,
    mend: near,
    about: [part],
  })
}
