import { quantityAt } from '../record/lookups.ts'
import type { Thing } from '../record/record.ts'
import { categoriesIn, sayCategory } from '../wiring/lamp-categories.ts'
import { plain } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { standing, valueText } from './page-scope.ts'
import { words } from './tables.ts'
import { wiringOf } from './wiring-of.ts'

const usual = 12 // V, where the build names no voltage

/** What to write as the load of a circuit that has none, where its lamp is named by its category. */
export function lampPart(scope: PageScope, thing: Thing): PartOfPage[] {
  const circuit = wiringOf(scope).circuits.find(({ id }) => id === thing.id)
  if (circuit === undefined || circuit.load !== null) return []
  const ofPart = Object.keys(circuit.part?.properties ?? {}).map(key => {
    const held = circuit.part === null ? null : standing(circuit.part.properties, key)
    return held === null ? '' : valueText(held.value)
  })
  const found = categoriesIn([circuit.name, circuit.feeds ?? '', ...ofPart].join('; '))
  if (found.length === 0) return []
  const nominal = quantityAt(scope.record.settings, 'nominal')?.value.si ?? usual
  const said = found.map(one => sayCategory(one, nominal)).join(' ')
  return [
    words('note', [
      plain(
        `No load is written. ${said} Count the lamps that burn together, measure if you can, and write it as \`load:\`.`,
      ),
    ]),
  ]
}
