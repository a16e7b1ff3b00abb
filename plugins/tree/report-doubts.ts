import type { VFile } from 'vfile'
import type { PlacedDoubt } from './figures.ts'
import { report } from './report.ts'

/** Tells what could not be read as one thing only, where it stands. */
export function reportDoubts(file: VFile, doubts: readonly PlacedDoubt[]): void {
  for (const { rule, position, message, text, mend } of doubts)
    report(file, { rule, place: position, reason: message, actual: text, mend })
}
