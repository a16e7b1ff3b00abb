import type { PlacedShape } from '../facts/fact.ts'
import type { Held } from '../record/record.ts'
import { wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, heading, row, table } from './tables.ts'

/** The shape of a tank as it was written: outside, wall, and what is cut away or stands inside. */
export function volumeTable(scope: PageScope, part: string): PartOfPage[] {
  const volume = scope.record.volumes.find(known => known.part === part)
  if (volume === undefined) return []
  const shape = (label: string, held: Held<PlacedShape>) =>
    row([
      wordsCell(label),
      {
        kind: 'leader',
        leader: scope.leader(held.value.text, {
          session: held.session,
          figure: held.figure ?? held.value.figures[0] ?? null,
        }),
      },
    ])
  const rows = [
    ...(volume.outside === null ? [] : [shape('outside', volume.outside)]),
    ...(volume.wall === null
      ? []
      : [
          row([
            wordsCell('wall'),
            { kind: 'leader' as const, leader: scope.leader(volume.wall.value.text, volume.wall) },
          ]),
        ]),
    ...volume.less.map(less => shape('less', less)),
  ]
  if (rows.length === 0) return []
  return [
    heading('Its shape', 'shape'),
    table({
      caption: 'The shape of its volume',
      columns: [column('What'), column('As written, and where', 'main')],
      rows,
    }),
  ]
}
