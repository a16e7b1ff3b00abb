import type { Thing } from '../record/record.ts'
import { drawCircuit } from '../wiring/draw-circuit.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, standing } from './page-scope.ts'
import { wordsAddress } from './thing-addresses.ts'
import { drawingLinks, wiringOf, wiringPart } from './wiring-of.ts'

/** A circuit from its source to its load and back, each figure leading to the words in which it was written. */
export function circuitDrawing(scope: PageScope, thing: Thing): PartOfPage[] {
  const wiring = wiringOf(scope)
  const circuit = wiring.circuits.find(({ id }) => id === thing.id)
  if (circuit === undefined) return []
  const figure = (key: 'load' | 'fuse.rating') => {
    const held = standing(thing.properties, key)
    if (held === null) return null
    const balloon = scope.balloon(held.session)
    return { href: scope.to(wordsAddress(held)), mark: balloon.square ? 'b' : balloon.text, says: balloon.says }
  }
  const drawing = drawCircuit(wiring, circuit, { ...drawingLinks(scope), figure })
  return [
    wiringPart(
      drawing,
      'In the order of the way, not to scale. Each figure leads to the words in which it was written.',
    ),
  ]
}
