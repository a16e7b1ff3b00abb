import type { Quantity } from '../quantities/quantity.ts'
import { figureKey } from './atlas.ts'
import type { RailNote } from './blocks.ts'
import type { Inline, Mark } from './cells.ts'
import type { FigureUse } from './figure-uses.ts'
import { figure, listed, look, plain } from './inline.ts'
import type { PageScope } from './page-scope.ts'

/** What used the figures of a block, a note for each figure that something used; figures used by the same share one. */
export function railNotes(scope: PageScope, session: string | null, figures: readonly string[]): RailNote[] {
  const notes = new Map<string, { index: number; quantities: Quantity[]; uses: readonly FigureUse[] }>()
  for (const [at, id] of figures.entries()) {
    const uses = scope.atlas.uses.get(figureKey(session, id)) ?? []
    const quantity = scope.atlas.figures.get(figureKey(session, id))?.quantity
    if (uses.length === 0 || quantity === undefined) continue
    const key = uses.map(use => `${use.address} ${use.with ?? ''}`).join('\n')
    const note = notes.get(key) ?? { index: at + 1, quantities: [], uses }
    note.quantities.push(quantity)
    notes.set(key, note)
  }
  return [...notes.values()].map(note => noteFor(scope, note))
}

interface Used {
  readonly index: number
  readonly quantities: readonly Quantity[]
  readonly uses: readonly FigureUse[]
}

function noteFor(scope: PageScope, { index, quantities, uses }: Used): RailNote {
  const tables = uses.filter(use => use.verdict === null)
  const marks = uses.flatMap((use): Mark[] =>
    use.verdict === null ? [] : [{ verdict: use.verdict, text: use.words, href: scope.to(use.address) }],
  )
  const figures = [...new Set(quantities.map(shortened))]
  const named = figures.length > 3 ? [...figures.slice(0, 2), `${figures.length - 2} more`] : figures
  return {
    figure: index,
    of: listed(named.map(figure)),
    words: tables.flatMap((use, at) => tableWords(scope, use, at > 0)),
    marks,
  }
}

function tableWords(scope: PageScope, use: FigureUse, follows: boolean): Inline[] {
  const link = look(use.words.includes('/') ? 'path' : 'plain', use.words, scope.to(use.address))
  return [...(follows ? [plain(', ')] : []), link, ...(use.with === null ? [] : [look('muted', `, ${use.with}`)])]
}

/** The margin names a figure by its value; the tolerance stands in the text. */
function shortened({ text }: Quantity): string {
  return text.split(/ ?(?:±|give or take|to within)/)[0]?.trim() || text
}
