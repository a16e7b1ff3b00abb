import type { Input } from '../input.ts'
import { value } from '../inputs/value.ts'
import { fillableTank } from './level-volume.ts'

const mark = value({
  of: 'tank/fill-line',
  symbol: 'h',
  meaning: 'height of the fill line above the inside of the bottom',
  dimension: 'length',
  unit: 'mm',
})

/** What a tank holds when it is filled to its line. */
export function statedFill(symbol = 'V_fill'): Input<number> {
  return {
    symbol,
    meaning: 'what is in it at its fill line',
    dimension: 'volume',
    reads: ['tank/fill-line', 'tank/wall', 'tank/length', 'tank/width', 'tank/height', 'volume/outside', 'volume/less'],
    read: scope => {
      const height = mark.read(scope)
      const shape = fillableTank(scope)
      if (height?.type !== 'figure' || shape === null) {
        if (height !== null && scope.notebook.missing.length === 0)
          scope.notebook.need(`${scope.subject.id}/wall`, 'the wall as written leaves no inside')
        return null
      }
      scope.notebook.assume('fill line measured from the inside of the bottom')
      const hasCutOut = scope.record.volumes.some(({ part, less }) => part === scope.subject.id && less.length > 0)
      if (hasCutOut) scope.notebook.assume('cut-outs stand on the bottom of the tank')
      return { type: 'figure', term: shape.upTo(height.term, symbol) }
    },
  }
}
