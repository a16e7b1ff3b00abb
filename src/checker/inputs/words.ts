import type { Found, Input } from '../input.ts'
import { lookUp } from '../look-up.ts'
import type { Scope } from '../scope.ts'

interface WordsSpec {
  readonly of: string
  readonly meaning: string
}

/** Words of the record, such as a circuit's use. Without a default their absence is named. */
export function words(
  spec: WordsSpec & { readonly default?: { readonly words: string; readonly said: string } },
): Input<string> {
  return {
    ...described(spec),
    read: scope => {
      const found = readWords(spec, scope)
      if (found !== null) return found
      if (spec.default !== undefined) {
        scope.notebook.assume(spec.default.said)
        return { type: 'words', words: spec.default.words }
      }
      const { path, trouble } = lookUp(scope, spec.of)
      scope.notebook.need(path, trouble ?? `${spec.meaning} is not written`)
      return null
    },
  }
}

/** Words that may be absent: `null` for `compute`. */
export function optionalWords(spec: WordsSpec): Input<string | null> {
  return { ...described(spec), read: scope => readWords(spec, scope) ?? { type: 'none' } }
}

/** A list of words, such as the relays that a circuit goes through; empty where there is none. */
export function wordList(spec: WordsSpec): Input<readonly string[]> {
  return {
    ...described(spec),
    read: scope => {
      const found = readWords(spec, scope)
      if (found === null) return { type: 'list', words: [] }
      return found.type === 'words' ? { type: 'list', words: [found.words] } : found
    },
  }
}

const described = ({ meaning, of }: WordsSpec) => ({ symbol: null, meaning, dimension: null, reads: [of] })

function readWords(spec: WordsSpec, scope: Scope): Extract<Found, { type: 'words' | 'list' }> | null {
  const { path, held } = lookUp(scope, spec.of)
  if (held === null) return null
  const texts = textsOf(held.value)
  const used = { path, words: texts.join(', '), place: held.place, session: held.session, figure: held.figure }
  scope.notebook.use(used)
  return held.value.type === 'list' ? { type: 'list', words: texts } : { type: 'words', words: texts.join(', ') }
}

function textsOf(value: NonNullable<ReturnType<typeof lookUp>['held']>['value']): string[] {
  if (value.type === 'words') return [value.words.text.trim()]
  if (value.type === 'list') return value.entries.map(({ words }) => words.text.trim())
  if (value.type === 'quantity') return [value.quantity.text]
  return value.type === 'shapes' ? value.shapes.map(({ text }) => text) : []
}
