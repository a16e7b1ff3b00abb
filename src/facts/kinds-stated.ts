import type { FrontMap } from '../notes/front.ts'
import { entriesOf, entryOf, textOf } from './front-tree.ts'
import type { ThingPath } from './identifier.ts'

/** The kinds of parts that a note names, by the part's identifier. */
export type KindsStated = ReadonlyMap<string, string>

/** The kind of a thing where its note says it; the vehicle has the properties of a chassis. */
export function kindOf({ subject }: ThingPath, kinds: KindsStated): string | null {
  return subject.kind === 'vehicle' ? 'chassis' : subject.kind === 'part' ? (kinds.get(subject.id) ?? null) : null
}

/** The kinds of the parts that this note names. */
export function kindsStated(front: FrontMap | null): KindsStated {
  return new Map(
    entriesOf(entryOf(front, 'parts')?.value).flatMap(({ key, value }) => {
      const kind = value.kind === 'map' ? textOf(value, 'kind') : null
      return kind === null ? [] : [[key, kind] as const]
    }),
  )
}
