import type { AsBuiltRecord } from '../record/record.ts'
import type { Half } from '../wiring/pair-connectors.ts'
import type { DrawingLinks, WiringDrawing } from '../wiring/svg.ts'
import { readWiring, type Wiring } from '../wiring/wiring.ts'
import type { Inline } from './cells.ts'
import { plain } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { findThing } from './page-scope.ts'
import { subjectAddress } from './thing-addresses.ts'

/** Read once for a record, however many pages ask. */
const known = new WeakMap<AsBuiltRecord, Wiring>()

/** The wiring of the record that a page belongs to. */
export function wiringOf({ record }: { readonly record: AsBuiltRecord }): Wiring {
  const found = known.get(record)
  if (found !== undefined) return found
  const wiring = readWiring(record)
  known.set(record, wiring)
  return wiring
}

/** Where the parts of a drawing lead from this page. */
export function drawingLinks(scope: PageScope): DrawingLinks {
  const to =
    (kind: 'circuit' | 'part' | 'connector') =>
    (id: string): string | null =>
      findThing(scope.record, { kind, id }) === null ? null : scope.to(subjectAddress({ kind, id }))
  return { circuit: to('circuit'), part: to('part'), connector: to('connector') }
}

/** A drawing of the wiring as a part of a page. */
export function wiringPart(drawing: WiringDrawing, caption: string | readonly Inline[] = []): PartOfPage {
  return { kind: 'wiring', drawing, caption: typeof caption === 'string' ? [plain(caption)] : caption }
}

/** Every half of every connector. */
export const halvesOf = (scope: PageScope): Half[] =>
  wiringOf(scope).pairs.flatMap(({ left, right }) => (right === null ? [left] : [left, right]))
