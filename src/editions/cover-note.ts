import type { Fact, Words } from '../facts/fact.ts'
import type { MarkedWords } from '../facts/marked-words.ts'
import type { BuildHead, Figure, SessionHead, StatedNote } from '../facts/stated-note.ts'
import { coverBody } from './cover-body.ts'
import { coverFact, type FactGround } from './cover-facts.ts'
import { isStray } from './cover-text.ts'
import type { BuildGround } from './edition-notes.ts'
import { mapStrings } from './map-strings.ts'
import { isWithin, type Taken } from './taken.ts'
import { takenOf } from './taken-of.ts'
import { isHidden, neutralMark } from './withheld.ts'

interface CoveredNote {
  readonly note: StatedNote
  /** What was taken out, for the builder's eyes only. */
  readonly taken: readonly Taken[]
}

/** One note as an edition may see it: head, facts, figures and body made anew. What was found wrong in it is left behind. */
export function coverNote(stated: StatedNote, file: string, build: BuildGround): CoveredNote {
  const taken: Taken[] = []
  const hiddenIds = hiddenFigures(stated.figures, build)
  const isHiddenFigure = (id: string | null | undefined): boolean => id != null && hiddenIds.has(id)
  const body = coverBody(stated.body, { ...build, file, isHiddenFigure, take: one => taken.push(one) })
  const inBody = [...taken]
  const isTaken = (place: Taken['place']): boolean => inBody.some(one => isWithin(place, one.place))
  const ground: FactGround = { ...build, isHiddenFigure }
  const facts = stated.facts.flatMap(fact => {
    if (isTaken(fact.place)) return []
    const left = coverFact(fact, ground)
    taken.push(...takenOf(fact, left))
    return left === null ? [] : (coverStrings(left, file, build) ?? [])
  })
  const isOut = ({ id, place, path }: Figure): boolean => isHiddenFigure(id) || isTaken(place) || isStray(path ?? '')
  const figures = stated.figures.flatMap(figure => (isOut(figure) ? [] : [coverFigure(figure, build)]))
  const note = {
    session: coverSession(stated.session, build),
    build: coverHead(stated.build, build),
    facts,
    figures,
    body,
    findings: [],
  }
  return { note, taken }
}

/** Figures in a withheld mark, amounts where cost is withheld, and those that stand in one group with such a one. */
function hiddenFigures(figures: readonly Figure[], { withheld }: BuildGround): ReadonlySet<string> {
  const isOut = ({ quantity, privacy, role }: Figure): boolean =>
    isHidden(withheld, privacy ?? []) ||
    (withheld.kinds.has('cost') && (quantity.dimension === 'money' || role === 'price'))
  const groups = new Set(figures.filter(isOut).flatMap(({ quantity }) => quantity.group ?? []))
  const isIn = (figure: Figure): boolean => figure.quantity.group !== null && groups.has(figure.quantity.group)
  return new Set(figures.filter(figure => isOut(figure) || isIn(figure)).map(({ id }) => id))
}

function coverFigure(figure: Figure, { rename, isDonorPath }: BuildGround): Figure {
  const { privacy: _, ...rest } = figure
  if (figure.path === null) return rest
  return isDonorPath(figure.path) ? { ...rest, path: null, role: 'prose' } : { ...rest, path: rename(figure.path) }
}

/** Words lose what is marked in them; a name in which a mark's own text was lost goes whole. A mark left as typed takes the fact along. */
function coverStrings(fact: Fact, file: string, build: BuildGround): Fact | null {
  const lost = build.lostMarks.get(file) ?? []
  let stray = false
  const covered = mapStrings(fact, {
    words: build.covered,
    text: (text, path) => {
      stray ||= isStray(text)
      const field = `${fact.type}.${path}`
      const isLost = namesWritten.has(field) && lost.some(word => isLostIn({ field, text }, word))
      return isLost ? neutralMark : build.rename(text)
    },
  })
  return stray ? null : covered
}

/** Words of the other kinds are looked for wherever they stand, and are an error where a name holds them; evidence is only left out. */
function isLostIn({ field, text }: { field: string; text: string }, { text: word, as, place }: MarkedWords): boolean {
  const isEvidence =
    field === 'inspection.evidence.ref' || (field === 'reference.name' && place.file.endsWith('/inspection.yaml'))
  if (word === '') return false
  if (isEvidence && word.endsWith(`:${text}`)) return true
  return text.includes(word) && (as === 'cost' || as === 'source' || isEvidence)
}

/** Where a fact holds a name as the builder wrote it, any marks taken off. */
const namesWritten = new Set([
  'reference.name',
  'closing.named',
  'mention.replaces.id',
  'spend.system',
  'temporary.id',
  'temporary.part',
  'inspection.evidence.ref',
])

function coverSession(head: SessionHead | null, build: BuildGround): SessionHead | null {
  return head === null ? null : { ...head, title: build.covered(head.title), by: coverWriter(head.by, build) }
}

const coverWriter = (by: Words | null, { covered }: BuildGround): Words | null => (by === null ? null : covered(by))

function coverHead(head: BuildHead | null, ground: BuildGround): BuildHead | null {
  const {
    withheld: { kinds },
    covered,
  } = ground
  if (head === null) return null
  return {
    ...head,
    title: covered(head.title),
    by: coverWriter(head.by, ground),
    summary: head.summary === null ? null : covered(head.summary),
    rates: kinds.has('cost') ? {} : head.rates,
    identity: kinds.has('identity') ? [] : head.identity.map(entry => ({ ...entry, words: covered(entry.words) })),
  }
}
