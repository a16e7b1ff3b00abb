import type { Thing } from '../record/record.ts'
import { pageAddress } from './addresses.ts'
import { plain } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { standing } from './page-scope.ts'
import { words } from './tables.ts'

/** What is said of a live circuit in which no fuse stands, such as the starter's: nothing opens on a short, so nothing about it can be worked out. */
export function withoutFuse(scope: PageScope, circuit: Thing): PartOfPage[] {
  const isFused = Object.keys(circuit.properties).some(
    key => key.startsWith('fuse') && standing(circuit.properties, key) !== null,
  )
  if (isFused) return []
  const check = scope.atlas.extras.checks.find(({ id }) => id === 'fault-withstand')
  const asked =
    check === undefined
      ? plain('whether the cable would withstand a fault')
      : plain(check.title.toLowerCase(), scope.to(pageAddress('checks', check.id)))
  return [
    words('caution', [
      plain(
        'No fuse is written for this circuit. If its cable chafes through, nothing opens: a battery gives hundreds of amperes until something burns. So ',
      ),
      asked,
      plain(
        ' cannot be asked. Keep it short, sleeved, clamped and clear of every edge, with a boot on each post, and the battery disconnected while you work; local codes and licensed practice decide.',
      ),
    ]),
  ]
}
