import type { FrontEntry } from '../notes/front.ts'
import { report, type Sheet } from './sheet.ts'

/** Whether a name stands with nothing behind it, `pump: ~` or `pump: {}`. */
export const isEmpty = ({ value }: Pick<FrontEntry, 'value'>): boolean =>
  value.kind === 'nothing' || (value.kind === 'map' && value.entries.length === 0)

/** Says of a name with nothing behind it what that leaves: `it goes by its identifier`. */
export function reportNothing(
  sheet: Sheet,
  entry: FrontEntry,
  { path, leaves }: { path: string; leaves: string },
): void {
  if (!isEmpty(entry)) return
  const message = `Unexpected nothing for \`${path}\`, expected what is known of it; ${leaves}`
  report(sheet, 'nothing-said', { place: entry.keyPlace, message, about: [path] })
}
