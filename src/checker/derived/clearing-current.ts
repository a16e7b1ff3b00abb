import type { Input } from '../input.ts'
import { ifGiven } from '../inputs/choose.ts'
import { derived } from '../inputs/derived.ts'
import { optional, value } from '../inputs/value.ts'
import { lookUp, usedWords } from '../look-up.ts'
import type { Scope } from '../scope.ts'
import { workOut } from '../term.ts'
import { fuseRating } from './fuse-rating.ts'

const spec = { symbol: 'I_c', meaning: 'current that opens the fuse quickly', dimension: 'current' } as const
const largestBlade = 40 // A; above it a fuse whose type is not said is taken for no blade fuse

// A maker's sheet of 5 × 20 mm fast-acting fuses to UL 248-14.
const glassTimes =
  "A maker's sheet of glass fuses, 5 × 20 mm and fast-acting by UL 248-14, lets one take up to 3600 s at 1.35 times its rating and up to 120 s at twice it: ask the maker for the current that opens yours within half a second."

/** The current that opens a circuit's fuse quickly: its maker's figure, else that of a blade fuse. */
export function clearingCurrent(): Input<number> {
  const maker = value({ of: 'circuit/fuse.clears', ...spec, unit: 'A', exact: true })
  return ifGiven({ ...spec, of: 'circuit/fuse.clears' }, maker, ofBlade(maker))
}

/** Asks a blade fuse's rule, and the maker's figure of any other. */
function ofBlade(maker: Input<number>): Input<number> {
  const rule = derived({
    ...spec,
    inputs: { fuse: fuseRating() },
    formula: [{ line: 'I_c = 3.5 * I_n', unit: 'A', says: 'opens a blade fuse within half a second' }],
  })
  return {
    ...rule,
    reads: [...rule.reads, 'circuit/fuse.type'],
    read: scope => {
      const isBlade = isBladeFuse(scope)
      return isBlade === null ? null : (isBlade ? rule : maker).read(scope)
    },
  }
}

/** By the fuse's type; where none is said, up to 40 A, which is then assumed. Null: its rating is missing. */
function isBladeFuse(scope: Scope): boolean | null {
  const { thing } = scope.subject
  const type = thing === null ? null : usedWords(scope, thing, 'fuse.type')
  if (type !== null && /\bglass\b/i.test(type)) scope.notebook.note(glassTimes)
  if (type !== null) return /\bblade\b/i.test(type)
  const rating = fuseRating().read(scope)
  if (rating?.type !== 'figure') return null
  const isSmall = workOut(rating.term) <= largestBlade * (1 + 1e-9)
  if (isSmall) scope.notebook.assume('blade fuse')
  return isSmall
}

/** The most that a fuse can break, by its maker; it may be absent, and is then not asked. */
export function breakingCapacity(): Input<number | null> {
  const breaking = optional({
    of: 'circuit/fuse.breaking',
    symbol: 'I_br',
    meaning: 'breaking capacity of the fuse',
    dimension: 'current',
    unit: 'A',
    exact: true,
  })
  return {
    ...breaking,
    read: scope => {
      if (lookUp(scope, 'circuit/fuse.breaking').held === null)
        scope.notebook.note('The breaking capacity of the fuse is not written, so it is not asked.')
      return breaking.read(scope)
    },
  }
}
