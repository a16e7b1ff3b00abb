import type { Place } from '../findings/place.ts'
import type { Answer } from './answer.ts'
import { leavesOf, type Term } from './term.ts'
import { fromSi } from './unit.ts'
import type { VerdictInput } from './verdict.ts'

const at = ({ file, line, column }: Place): Pick<VerdictInput, 'file' | 'line' | 'column'> => ({ file, line, column })

/** Every figure and word of the record that the answer stands on, with its place. */
export function inputsBehind({ result, limit, scope }: Answer): VerdictInput[] {
  const leaves = [...termsBehind(result?.term ?? null, limit).flatMap(leavesOf), ...scope.notebook.figures]
  const figures = leaves.flatMap(({ path, place, quantity, value, unit }) =>
    path === null || place === null
      ? []
      : [{ path, value: quantity?.number ?? fromSi(value, unit), unit, ...at(place) }],
  )
  const words = scope.notebook.words.map(({ path, words: value, place }) => ({ path, value, unit: null, ...at(place) }))
  const all = [...figures, ...words]
  return all.filter((input, index) => all.findIndex(({ path }) => path === input.path) === index)
}

/** What the result and both limits were worked from. */
export function termsBehind(result: Term | null, limit: Answer['limit']): Term[] {
  const ends = [limit?.own, limit?.override].flatMap(standing => [standing?.min?.term, standing?.max?.term])
  return [result, ...ends].filter(term => term !== null && term !== undefined)
}
