import type { VFile } from 'vfile'
import type { PlacedDoubt } from '../tree/figures.ts'

/** Rule and place of each message that the file has already: another plugin may have read the same figures. */
export function placesOf(file: VFile): ReadonlySet<string> {
  return new Set(file.messages.map(({ ruleId, line, column }) => `${ruleId} ${line}:${column}`))
}

export function notYetTold(doubts: readonly PlacedDoubt[], told: ReadonlySet<string>): PlacedDoubt[] {
  return doubts.filter(({ rule, position }) => !told.has(`${rule} ${position?.start.line}:${position?.start.column}`))
}
