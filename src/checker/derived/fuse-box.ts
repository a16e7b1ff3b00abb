import type { Input } from '../input.ts'
import { lookUp, usedWords } from '../look-up.ts'
import { type Selector, subjectOf } from '../subjects.ts'
import { loadAsWritten, sumOfBox } from './circuit-current.ts'

/** The loads of the box that is asked about, together: live circuits, continuous and intermittent. */
export function totalOfBox(symbol: string): Input<number> {
  return {
    symbol,
    meaning: 'loads of the box together',
    dimension: 'current',
    reads: ['circuit/fuse.box', 'circuit/duty', ...loadAsWritten(symbol).reads],
    read: scope => sumOfBox(symbol, scope.subject.id).read(scope),
  }
}

/** The circuit that feeds the box that is asked about; none where it names none that is in the record. */
export const feedOfBox: Selector = scope => {
  const { thing } = scope.subject
  const feed = thing === null || lookUp(scope, 'fuse-box/feed').held === null ? null : usedWords(scope, thing, 'feed')
  const circuit = scope.record.circuits.find(({ id }) => id === feed)
  return circuit === undefined ? [] : [subjectOf('circuit', circuit)]
}
