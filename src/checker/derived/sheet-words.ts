import { quantityAt } from '../../record/lookups.ts'
import type { Input } from '../input.ts'
import { wordsOf } from '../look-up.ts'
import type { Scope } from '../scope.ts'
import { digitsOf } from '../show-figure.ts'
import { sheetMetals } from '../tables/sheet-metal.ts'

const metalOf = ({ subject }: Scope) => {
  const words = subject.thing === null ? null : wordsOf(subject.thing, 'material')
  return words === null ? undefined : sheetMetals.find(metal => metal.words.test(words))
}

/** The same figure; where it is missing and the metal is one whose standard was read, what that promises stands beside, as a pointer. */
export function besideStandard(input: Input<number>): Input<number> {
  return {
    ...input,
    read: scope => {
      const before = scope.notebook.missing.length
      const found = input.read(scope)
      const metal = metalOf(scope)
      const need = scope.notebook.missing[before]
      if (found === null && need !== undefined && need.isWritten !== true && metal?.yieldStress != null)
        scope.notebook.missing[before] = {
          ...need,
          why: `${need.why}; ${metal.source}, has at least ${metal.yieldStress} MPa for ${metal.name}`,
        }
      return found
    },
  }
}

/** What a bend's radius is beside the least that its metal's standard gives for one of 90°; nothing where no row was read. */
export function sayLeastRadius(scope: Scope): string[] {
  const { thing } = scope.subject
  const metal = metalOf(scope)
  const [radius, thickness] = ['inside-radius', 'thickness'].map(key =>
    thing === null ? null : (quantityAt(thing, key)?.value.si ?? null),
  )
  if (metal === undefined || radius == null || thickness == null) return []
  const [radiusMm, thicknessMm] = [radius * 1000, thickness * 1000]
  const row = metal.bends.find(([over, upTo]) => thicknessMm > over && thicknessMm <= upTo)
  if (row === undefined) return []
  const least = row[2] * thicknessMm
  const says = radiusMm < least * (1 - 1e-9) ? 'this bend is tighter and may crack' : 'this bend is no tighter'
  return [
    `${metal.source}, has at least ${digitsOf(least)} mm inside a bend of 90° in ${digitsOf(thicknessMm)} mm of ${metal.name}; ${says}.`,
  ]
}
