import type { Fact, FactValue, PropertyFact } from '../facts/fact.ts'
import type { BuildGround } from './edition-notes.ts'
import { neutralMark } from './withheld.ts'

/** What a note's facts need to know of the note. */
export interface FactGround extends BuildGround {
  readonly isHiddenFigure: (id: string | null) => boolean
}

type Covering<T extends Fact['type']> = (fact: Extract<Fact, { type: T }>, ground: FactGround) => Fact | null

/** Takes out of a fact what an edition withholds by what it is, not by a mark; null where nothing is left of it. */
export function coverFact(fact: Fact, ground: FactGround): Fact | null {
  return (covering[fact.type] as (fact: Fact, ground: FactGround) => Fact | null)(fact, ground)
}

const asStated = <F extends Fact>(fact: F): F => fact

/** One entry for each type of fact: a new type does not compile until somebody decides what may be seen of it. */
const covering: { readonly [T in Fact['type']]: Covering<T> } = {
  property: coverProperty,
  mention: (fact, { withheld: { kinds }, isHiddenFigure }) => ({
    ...fact,
    cost: kinds.has('cost') || isHiddenFigure(fact.cost?.figure ?? null) ? null : fact.cost,
    from: kinds.has('source') ? null : fact.from,
  }),
  spend: (fact, { withheld: { kinds }, isHiddenFigure }) => {
    if (kinds.has('cost')) return null
    const cost = isHiddenFigure(fact.cost?.figure ?? null) ? null : fact.cost
    return { ...fact, cost, from: kinds.has('source') ? null : fact.from }
  },
  donor: (fact, { withheld: { kinds }, isHiddenFigure }) => {
    if (kinds.has('source')) return null
    return { ...fact, cost: kinds.has('cost') || isHiddenFigure(fact.cost?.figure ?? null) ? null : fact.cost }
  },
  reference: (fact, { withheld: { kinds }, isDonorPath, isHiddenPhoto }) => {
    if (fact.to === 'donor') return kinds.has('source') ? null : fact
    if (fact.to === 'photo') return isHiddenPhoto(fact.name) ? null : fact
    const isPath = fact.to === 'path' || fact.to === 'measurement'
    return isPath && isDonorPath(fact.name) ? null : fact
  },
  limit: (fact, { withheld: { kinds }, isDonorPath }) => {
    const isMoney = fact.min?.dimension === 'money' || fact.max?.dimension === 'money'
    return (kinds.has('cost') && isMoney) || (fact.of !== null && isDonorPath(fact.of)) ? null : fact
  },
  requirement: (fact, { withheld: { kinds }, isDonorPath }) =>
    (kinds.has('cost') && fact.value.dimension === 'money') || isDonorPath(fact.path) ? null : fact,
  asking: (fact, { isDonorPath }) => ({
    ...fact,
    subjects: fact.subjects === null ? null : fact.subjects.filter(subject => !isDonorPath(subject)),
  }),
  edition: (fact, { withheld }) => (fact.name === withheld.edition ? fact : null),
  inspection: (fact, { isDonorPath, isHiddenPhoto }) => ({
    ...fact,
    evidence: fact.evidence.map(entry => {
      const { ref } = entry
      const isOut = isDonorPath(ref) || (ref.startsWith('photo:') && isHiddenPhoto(ref.slice('photo:'.length)))
      return isOut ? { ...entry, ref: neutralMark } : entry
    }),
  }),
  job: asStated,
  temporary: asStated,
  closing: asStated,
  test: asStated,
}

const costKeys = /(?:^|\.)(?:cost|costs|price|prices|paid|receipt)$/
const sourceKeys = /(?:^|\.)(?:from|donor|receipt)$/

function coverProperty(fact: PropertyFact, ground: FactGround): PropertyFact | null {
  const { subject, key, value, figure, bare } = fact
  const { kinds } = ground.withheld
  if (ground.isHiddenFigure(figure)) return null
  if (kinds.has('cost') && (costKeys.test(key) || isMoney(value))) return null
  if (kinds.has('source') && (sourceKeys.test(key) || subject.kind === 'donor')) return null
  if ((bare || subject.kind === 'part') && ground.isDonorPath(subject.id)) return null
  if (kinds.has('identity') && key === 'serial' && value.type !== 'nothing')
    return { ...fact, value: { type: 'words', words: { text: neutralMark, marks: [] } } }
  return { ...fact, value: coverValue(value, ground) }
}

const isMoney = (value: FactValue): boolean => value.type === 'quantity' && value.quantity.dimension === 'money'

function coverValue(value: FactValue, ground: FactGround): FactValue {
  if (value.type === 'list')
    return { ...value, entries: value.entries.filter(({ words }) => !ground.isHiddenPhoto(words.text)) }
  if (value.type !== 'shapes') return value
  return { ...value, shapes: value.shapes.filter(({ figures }) => !figures.some(ground.isHiddenFigure)) }
}
