import type { Verdict } from '../checker/verdict.ts'
import type { ReadOptions } from '../quantities/quantity.ts'
import { figureInOthers } from './other-units.ts'

type Gallon = ReadOptions['gallon']

/** The result of an answer in the other system: `104.0 ± 2.2 lb`; null where there is no result, or no other unit of its kind. */
export function resultInOthers({ result }: Pick<Verdict, 'result'>, gallon: Gallon): string | null {
  return result === null ? null : figureInOthers(result, gallon)
}

/** The limit in the other system: `at most 220 lb`; null where there is none. */
export function limitInOthers({ limit }: Pick<Verdict, 'limit'>, gallon: Gallon): string | null {
  if (limit === null) return null
  const ends = [
    ['at least', limit.min],
    ['at most', limit.max],
  ] as const
  const said = ends.flatMap(([words, end]) => {
    const text = end === null ? null : figureInOthers({ value: end, unit: limit.unit }, gallon)
    return text === null ? [] : [`${words} ${text}`]
  })
  return said.length === 0 ? null : said.join(', ')
}
