import type { Code, Construct, Effects, Extension, State, TokenizeContext, Tokenizer } from 'micromark-util-types'
import { isMark } from './names.ts'
import { nestingOf } from './nesting.ts'

const colon = 58 // the code under which an extension keeps what begins with `:`

/** Whether an extension of the parser reads directives. */
export function readsDirectives(extension: Extension): boolean {
  return extension.text?.[colon] !== undefined && extension.flow?.[colon] !== undefined
}

/** The same extension, which leaves to the parser as plain text what is no mark: it stays exactly as typed. */
export function refuseWords(extension: Extension): Extension {
  return {
    ...extension,
    text: { ...extension.text, [colon]: guarded(extension.text?.[colon]) },
    flow: { ...extension.flow, [colon]: guarded(extension.flow?.[colon]).map(shallow) },
  }
}

function guarded(constructs: Construct | Construct[] | undefined): Construct[] {
  return [constructs ?? []].flat().map(construct => ({ ...construct, tokenize: guard(construct.tokenize) }))
}

/** Looks at colons and name first; only a mark is handed on. */
function guard(tokenize: Tokenizer): Tokenizer {
  return function (this: TokenizeContext, effects: Effects, ok: State, nok: State): State {
    return effects.check({ tokenize: tokenizeHead, partial: true }, tokenize.call(this, effects, ok, nok), nok)
  }
}

const deepest = 8 // containers in containers: each level is parsed again, so that open ones by the thousand would stop the tool

/** Refuses what stands deeper than anybody nests: it stays text, and is told as a mark that did not parse. */
function shallow(construct: Construct): Construct {
  const { tokenize } = construct
  return {
    ...construct,
    tokenize(this: TokenizeContext, effects: Effects, ok: State, nok: State): State {
      const nesting = nestingOf(this.parser)
      const first = this.now().line
      if (nesting.depthAt(first) >= deepest) return nok
      const done: State = code => {
        nesting.add({ first, last: this.now().line })
        return ok(code)
      }
      return tokenize.call(this, effects, done, nok)
    },
  }
}

const longestName = 32 // UTF-16 units: no name is near one of ours beyond

//   :::private{as=place}
//   ^^^^^^^^^^ colons, then the name
function tokenizeHead(effects: Effects, ok: State, nok: State): State {
  let colons = 0
  let name = ''
  return function start(code: Code): State | undefined {
    effects.enter('data')
    return marker(code)
  }

  function marker(code: Code): State | undefined {
    if (code !== colon) return word(code)
    effects.consume(code)
    colons++
    return marker
  }

  function word(code: Code): State | undefined {
    const written = code === null || code < 0 ? '' : String.fromCharCode(code)
    if (isNameUnit(written) && name.length < longestName) {
      effects.consume(code)
      name += written
      return word
    }
    effects.exit('data')
    return isMark({ colons, name, next: written }) ? ok(code) : nok(code)
  }
}

function isNameUnit(written: string): boolean {
  return written === '-' || written === '_' || (written !== '' && !/[\s\p{P}\p{S}]/u.test(written))
}
