import type { Part } from '../record/record.ts'
import { plain, wordsCell } from './inline.ts'
import { massOf, massText } from './masses.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { drawBars } from './plots/bar-plot.ts'
import { column, row, table } from './tables.ts'
import { subjectAddress } from './thing-addresses.ts'

interface SystemMass {
  readonly id: string | null
  readonly name: string
  readonly weighed: readonly Part[]
  readonly unweighed: readonly Part[]
  readonly kg: number
}

/** What the parts on the vehicle weigh, by system, as bars and as a table; parts that nobody weighed are counted, not guessed. */
export function massBySystem(scope: PageScope): PartOfPage[] {
  const masses = systemMasses(scope)
  if (!masses.some(({ kg }) => kg > 0)) return []
  const bars = masses.map(({ id, name, kg }) => ({
    label: name,
    href: id === null ? null : scope.to(subjectAddress({ kind: 'system', id })),
    pieces: [{ size: kg, look: 'bar' as const }],
    text: massText(scope, kg),
  }))
  const drawn = drawBars({
    says: 'Mass of the parts that were weighed, by system',
    tells: bars.map(({ label, text }) => `${label} ${text}`).join(', '),
    bars,
  })
  return [
    {
      kind: 'drawings',
      ...drawn,
      caption: [plain('Parts on the vehicle that were weighed, each by its quantity.')],
      framed: false,
    },
    massTable(scope, masses),
  ]
}

function massTable(scope: PageScope, masses: readonly SystemMass[]): PartOfPage {
  const sum = (of: (mass: SystemMass) => number): number => masses.reduce((total, mass) => total + of(mass), 0)
  return table({
    caption: 'Mass by system',
    columns: [column('System', 'wide'), column('Weighed', 'num'), column('Not weighed', 'num'), column('Mass', 'num')],
    rows: masses.map(({ id, name, weighed, unweighed, kg }) =>
      row([
        wordsCell(id === null ? name : [scope.thing({ kind: 'system', id })]),
        wordsCell(String(weighed.length)),
        wordsCell(String(unweighed.length)),
        wordsCell(massText(scope, kg)),
      ]),
    ),
    foot: [
      row([
        wordsCell('Together'),
        wordsCell(String(sum(({ weighed }) => weighed.length))),
        wordsCell(String(sum(({ unweighed }) => unweighed.length))),
        wordsCell(
          massText(
            scope,
            sum(({ kg }) => kg),
          ),
        ),
      ]),
    ],
  })
}

function systemMasses(scope: PageScope): SystemMass[] {
  const on = scope.record.parts.filter(part => part.onVehicle)
  const named = scope.record.systems.map(({ id, name }) => ({ id, name }))
  const others = [...new Set(on.map(({ system }) => system))].filter(id => !named.some(known => known.id === id))
  const systems = [...named, ...others.map(id => ({ id, name: id ?? 'Of no system' }))]
  return systems.flatMap(({ id, name }) => {
    const own = on.filter(({ system }) => system === id)
    const weighed = own.filter(part => massOf(part) !== null)
    const kg = weighed.reduce((sum, part) => sum + (massOf(part) ?? 0), 0)
    return own.length === 0 ? [] : [{ id, name, weighed, unweighed: own.filter(part => massOf(part) === null), kg }]
  })
}
