import { latest } from '../../record/lookups.ts'
import type { AsBuiltRecord, Part } from '../../record/record.ts'
import type { Input } from '../input.ts'
import { partsOfKind, targetOf, wordsOf } from '../look-up.ts'
import { lampFunctions } from '../tables/lamp-rules.ts'

/** The functions that words name, by the names of the rule; words that name none are given back in small letters. */
export function functionsIn(words: string): string[] {
  const each = words
    .toLowerCase()
    .split(/[,;/+&]|\band\b/)
    .map(one => one.replaceAll('-', ' ').replace(/\s+/g, ' ').trim())
    .filter(one => one !== '')
  const names = each.map(one => lampFunctions.find(([, said]) => said.test(one))?.[0] ?? one.replaceAll(' ', '-'))
  return [...new Set(names)]
}

/** The functions of one lamp; none where none are written. */
export function functionsOf(lamp: Part): string[] {
  const words = wordsOf(lamp, 'function')
  return words === null ? [] : functionsIn(words)
}

/** True where any lamp of the vehicle says what it is for. */
export function hasFunctions(record: AsBuiltRecord): boolean {
  return partsOfKind(record, ['lamp']).some(lamp => functionsOf(lamp).length > 0)
}

/** All functions that the vehicle's lamps have, each once. */
export function allFunctions(): Input<readonly string[]> {
  return {
    symbol: null,
    meaning: 'functions of the lamps',
    dimension: null,
    reads: ['lamp/function'],
    read: ({ record, notebook }) => {
      const lamps = partsOfKind(record, ['lamp'])
      for (const lamp of lamps) {
        const [held, words] = [latest(lamp, 'function'), wordsOf(lamp, 'function')]
        if (held === null || words === null) continue
        const { place, session, figure } = held
        notebook.use({ path: targetOf(lamp, 'function').path, words, place, session, figure })
      }
      const silent = lamps.filter(lamp => functionsOf(lamp).length === 0)
      if (silent.length > 0)
        notebook.note(
          `What these are for is not written, so they count for nothing: ${silent.map(({ name }) => name).join('; ')}.`,
        )
      return { type: 'list', words: [...new Set(lamps.flatMap(functionsOf))] }
    },
  }
}
