import type { Input } from '../input.ts'
import { isLive, usedWords, wordsOf } from '../look-up.ts'
import type { CheckSubject, Scope } from '../scope.ts'
import { withSubject } from '../scope.ts'
import { fuseWays, type Selector, type SubjectSource, subjectOf } from '../subjects.ts'
import { type Term, workOut } from '../term.ts'
import { fuseRating } from './fuse-rating.ts'

/** Each way of a fuse box in which a live circuit is fused, but not one that only starts the engine. */
export function waysInUse(): SubjectSource {
  const source = fuseWays('each way of a fuse box in which a live circuit is fused')
  return {
    ...source,
    find: record =>
      source.find(record).map(candidate => ({
        ...candidate,
        isCurrent: record.circuits.some(circuit => isLive(circuit) && isOnWay(circuit, candidate.subject)),
      })),
  }
}

/** The live circuits on the way that is asked about; what starts the engine is not asked. */
export const circuitsOnWay: Selector = ({ record, subject }) =>
  record.circuits
    .filter(circuit => isLive(circuit) && isOnWay(circuit, subject))
    .map(circuit => subjectOf('circuit', circuit))

const isOnWay = (circuit: Parameters<typeof wordsOf>[0], { id }: CheckSubject): boolean =>
  `${wordsOf(circuit, 'fuse.box') ?? ''}/${wordsOf(circuit, 'fuse.way') ?? ''}` === id &&
  wordsOf(circuit, 'duty') !== 'starting'

/** What is wrong with the way itself, in words: its box has not so many. None where it is there, bears a name, or the box was not counted. */
export function wayFault(): Input<string | null> {
  return {
    symbol: null,
    meaning: 'ways that the box has',
    dimension: null,
    isOptional: true,
    reads: ['fuse-box/ways'],
    read: ({ record, subject }) => {
      const box = record.fuseBoxes.find(({ id }) => subject.id.startsWith(`${id}/`))
      const way = subject.id.slice((box?.id.length ?? 0) + 1)
      const isThere = box?.ways == null || !/^\d+$/.test(way) || (Number(way) >= 1 && Number(way) <= box.ways)
      return isThere
        ? { type: 'none' }
        : { type: 'words', words: `names a way that its box, of ${box.ways} ways, has not` }
    },
  }
}

/** `intermittent` where all circuits of the way are; else `continuous`. What is assumed of one is said. */
export function dutyOfWay(): Input<string> {
  return {
    symbol: null,
    meaning: 'duty of the way',
    dimension: null,
    reads: ['circuit/duty'],
    read: scope => ({
      type: 'words',
      words: circuitsOnWay(scope).every(one => dutyOf(one, scope) === 'intermittent') ? 'intermittent' : 'continuous',
    }),
  }
}

function dutyOf({ thing, id }: CheckSubject, scope: Scope): string {
  const duty = thing === null ? null : usedWords(scope, thing, 'duty')
  if (duty === null) scope.notebook.assume(`duty of ${id} \`continuous\``)
  return duty ?? 'continuous'
}

/** The fuse of the way: the least that its circuits name, where they should name one. */
export function fuseOfWay(symbol: string): Input<number> {
  const one = fuseRating(symbol)
  return {
    ...one,
    read: scope => {
      const found = circuitsOnWay(scope).map(subject => one.read(withSubject(scope, subject)))
      const terms = found.flatMap(each => (each?.type === 'figure' ? [each.term] : []))
      return terms.length < found.length || terms.length === 0 ? null : { type: 'figure', term: least(terms) }
    },
  }
}

const least = (terms: readonly Term[]): Term => terms.reduce((low, one) => (workOut(one) < workOut(low) ? one : low))
