import type { FactValue } from '../facts/fact.ts'
import type { Held, Thing } from '../record/record.ts'
import type { Circuit } from '../wiring/circuit.ts'
import type { Inline } from './cells.ts'
import { figure, listed, plain } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { findThing, type PageScope, valueText } from './page-scope.ts'
import { words } from './tables.ts'
import { wordsAddress } from './thing-addresses.ts'
import { propertyWords } from './thing-table.ts'

/** Voltages that the notes have of what stands along the way, the latest first, to lay beside the table. */
export function readingsPart(scope: PageScope, circuit: Circuit): PartOfPage[] {
  const ids = [circuit.part?.id ?? '', circuit.feeds ?? '', ...circuit.route].map(stop =>
    stop.toLowerCase().replaceAll(' ', '-'),
  )
  const found = [...new Set(ids)].flatMap(id => {
    const thing = findThing(scope.record, { kind: 'part', id })
    return thing === null ? [] : readingsOf(scope, circuit, thing)
  })
  return found.length === 0 ? [] : [words('note', [plain('In the notes: '), ...listed(found, '; '), plain('.')])]
}

function readingsOf(scope: PageScope, circuit: Circuit, thing: Thing): Inline[][] {
  return Object.entries(thing.properties).flatMap(([key, all]) => {
    const read = all.filter(({ value }) => isVoltage(value)).reverse()
    if (read.length === 0 || !isOf(circuit, thing, key)) return []
    // The front matter and the words of one note may both state it: said once.
    const told = read.filter((held, at) => at === 0 || !isSame(held, read[at - 1]))
    const [last, ...before] = told.map(held => linked(scope, held))
    return [
      [
        scope.thing({ kind: 'part', id: thing.id }),
        plain(`, ${propertyWords(key)}: `),
        ...(last ?? []),
        ...(before.length === 0 ? [] : [plain(', before that '), ...listed(before)]),
      ],
    ]
  })
}

const isSame = (one: Held<FactValue>, other: Held<FactValue> | undefined): boolean =>
  other !== undefined && one.session === other.session && valueText(one.value) === valueText(other.value)

const isVoltage = (value: FactValue): boolean => value.type === 'quantity' && value.quantity.dimension === 'voltage'

/** Several circuits meet at one lamp cluster: its reading counts where it is named for this one, or the cluster is what this one feeds. */
function isOf(circuit: Circuit, thing: Thing, key: string): boolean {
  const named = circuit.id.split('-')
  return circuit.part?.id === thing.id || key === 'voltage' || key.split('-').some(word => named.includes(word))
}

function linked(scope: PageScope, held: Held<FactValue>): Inline[] {
  const to = scope.to(wordsAddress(held))
  return figure(valueText(held.value)).map(one => ({ ...one, href: to }))
}
