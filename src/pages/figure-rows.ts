import type { Figure } from '../facts/stated-note.ts'
import { figureKey } from './atlas.ts'
import type { Table, TableRow } from './blocks.ts'
import type { Cell, Inline } from './cells.ts'
import { look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { readPath } from './read-path.ts'
import { column, row, table } from './tables.ts'
import { checkMarks, propertyWords } from './thing-table.ts'
import { typeset } from './typeset.ts'

/** Figures where they were written, by the thing that they are of, each with what used it. */
export function figureRows(scope: PageScope, session: string | null, figures: readonly Figure[]): PartOfPage[] {
  if (figures.length === 0) return []
  const groups = new Map<string, { heading: Inline[]; rows: TableRow[] }>()
  for (const written of figures) {
    const path = written.path === null ? null : readPath(scope.record, written.path)
    const key = path === null ? '' : `${path.subject.kind === 'volume' ? 'part' : path.subject.kind}:${path.subject.id}`
    const group = groups.get(key) ?? {
      heading: path === null ? [plain('Besides')] : [kindWord(path.subject.kind), scope.thing(path.subject)],
      rows: [],
    }
    group.rows.push(figureRow(scope, session, written))
    groups.set(key, group)
  }
  return [
    table({
      caption: 'Figures written at the head of the note',
      isCaptionShown: true,
      columns: [column('What'), column('Figure', 'main'), column('Used by', 'wide')],
      groups: [...groups.values()].map((group): Table['groups'][number] => ({ id: null, ...group })),
    }),
  ]
}

/** A figure of this note as it was written, leading to what used it. */
export function writtenCell(scope: PageScope, session: string | null, { id, quantity }: Figure): Cell {
  const use = scope.atlas.uses.get(figureKey(session, id))?.[0]
  return {
    kind: 'figure',
    runs: typeset(quantity.text),
    href: use === undefined ? null : scope.to(use.address),
    anchor: id,
  }
}

function kindWord(kind: string): Inline {
  const words: Readonly<Record<string, string>> = { circuit: 'Circuit ', connector: 'Connector ', loom: 'Loom ' }
  return plain(words[kind] ?? '')
}

function figureRow(scope: PageScope, session: string | null, written: Figure): TableRow {
  const uses = scope.atlas.uses.get(figureKey(session, written.id)) ?? []
  const marks = checkMarks(scope, { session, figure: written.id })
  const property = written.path === null ? '' : readPath(scope.record, written.path).property
  const name = plain(property === '' ? `line ${written.place.line}` : propertyWords(property))
  const whole = written.quantity.whole
  const means = uses.find(use => use.with !== null)?.with
  return row([
    wordsCell(
      [name],
      [
        ...(means === null || means === undefined ? [] : [plain(`with ${means}`)]),
        ...(whole === null ? [] : [look('said', whole)]),
      ],
    ),
    writtenCell(scope, session, written),
    { kind: 'marks', marks, otherwise: '' },
  ])
}
