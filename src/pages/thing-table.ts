import type { FactValue } from '../facts/fact.ts'
import type { Quantity } from '../quantities/quantity.ts'
import type { Held, Thing } from '../record/record.ts'
import { figureKey } from './atlas.ts'
import type { TableRow } from './blocks.ts'
import type { Cell, Inline, Leader, Mark } from './cells.ts'
import { plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { type Origin, type PageScope, valueText } from './page-scope.ts'
import { column, row, table } from './tables.ts'
import { wordsAddress } from './thing-addresses.ts'

interface ThingText {
  readonly caption: string
  readonly isCaptionShown?: boolean
  /** Properties that the page shows elsewhere. */
  readonly not?: readonly string[]
}

/** All that was said of a thing: what stands, where it was written, what was said before, what used it. */
export function thingTable(scope: PageScope, thing: Pick<Thing, 'id' | 'properties'>, text: ThingText): PartOfPage[] {
  const rows = Object.entries(thing.properties)
    .filter(
      ([key, history]) =>
        history.length > 0 && !(text.not ?? []).some(name => key === name || key.startsWith(`${name}.`)),
    )
    .map(([key, history]) => propertyRow(scope, { key, history, own: thing.id }))
  if (rows.length === 0) return []
  return [
    table({
      caption: text.caption,
      isCaptionShown: text.isCaptionShown ?? false,
      columns: [
        column('What'),
        column('Figure, and where it was written', 'main'),
        column('Before'),
        column('Used by', 'wide'),
      ],
      rows,
    }),
  ]
}

interface Property {
  readonly key: string
  readonly history: readonly Held<FactValue>[]
  readonly own: string
}

function propertyRow(scope: PageScope, { key, history, own }: Property): TableRow {
  const held = history.at(-1)
  const isGone = held?.value.type === 'nothing'
  return row(
    [
      wordsCell(propertyWords(key)),
      held === undefined ? wordsCell('') : { kind: 'leader', leader: heldLeader(scope, held) },
      wordsCell(history.slice(0, -1).flatMap((earlier, index) => beforeWords(scope, earlier, index > 0))),
      { kind: 'marks', marks: held === undefined ? [] : checkMarks(scope, held, own), otherwise: '' },
    ],
    null,
    isGone ? 'gone' : 'plain',
  )
}

/** `fuse.rating` as a reader says it: fuse rating. */
export function propertyWords(key: string): string {
  return key.replace(/[.-]/g, ' ')
}

/** A value and its line; what was taken back says so. */
export function heldLeader(scope: PageScope, held: Held<FactValue>): Leader {
  if (held.value.type === 'quantity') return scope.leader(held.value.quantity.text, held)
  const text = held.value.type === 'nothing' ? 'taken back' : valueText(held.value)
  return { ...scope.leader('', held), number: text, runs: [{ text, unit: false }] }
}

function beforeWords(scope: PageScope, held: Held<FactValue>, follows: boolean): Inline[] {
  const text = held.value.type === 'nothing' ? 'taken back' : valueText(held.value)
  return [
    ...(follows ? [plain(', ')] : []),
    scope.link(text, wordsAddress(held)),
    plain(` (${scope.balloon(held.session).text})`),
  ]
}

/** The checks that used a value, as marks: on a thing's own page those about itself first, without its name. */
export function checkMarks(scope: PageScope, { session, figure }: Origin, own: string | null = null): Mark[] {
  const uses = figure === null ? [] : (scope.atlas.uses.get(figureKey(session, figure)) ?? [])
  const marks = uses.flatMap((use): { isOwn: boolean; mark: Mark }[] => {
    if (use.verdict === null || use.of === null) return []
    const isOwn = use.of.subject === own
    return [
      { isOwn, mark: { verdict: use.verdict, text: isOwn ? use.of.words : use.words, href: scope.to(use.address) } },
    ]
  })
  return [...marks.filter(({ isOwn }) => isOwn), ...marks.filter(({ isOwn }) => !isOwn)].map(({ mark }) => mark)
}

/** What stands of one property, as a cell; empty where nothing does. */
export function standingCell(scope: PageScope, held: Held<FactValue> | null): Cell {
  return held === null ? wordsCell('') : { kind: 'leader', leader: heldLeader(scope, held) }
}

/** A figure that stands, as a cell; empty where there is none. */
export function heldCell(scope: PageScope, held: Held<Quantity> | null): Cell {
  return held === null ? wordsCell('') : { kind: 'leader', leader: scope.leader(held.value.text, held) }
}
