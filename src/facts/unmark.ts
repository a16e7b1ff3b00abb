import type { PrivateKind } from '../../plugins/private/node.ts'
import { privateKinds, wordOf } from './closed-words.ts'
import type { Words } from './fact.ts'
import { isNear } from './near-words.ts'

export interface UnmarkedWords {
  readonly words: Words
  /** Where a position of the unmarked text stands in the written one. */
  readonly origin: (at: number) => number
  /** Where the first mark that did not parse begins in the written text; null where all did. */
  readonly broken: number | null
}

/** Anything that may be meant as a private mark: colons, blanks after three of them, letters. */
const anyMark = /:{3,}[ \t]*[A-Za-z]+|:{1,2}[A-Za-z]+/g
const attribute = /^\{\s*as=(?:"([a-z]+)"|'([a-z]+)'|([a-z]+))\s*\}/

/** From a mark's colon to behind its braces, and the label in it. */
interface Cut {
  readonly from: number
  readonly to: number
  readonly label: number
  readonly labelEnd: number
  readonly as: PrivateKind
}

/**
 * Words of front matter with `:private[…]{as=…}` taken off. Marks fail closed: where one does not parse,
 * the text stays as written and the whole of it is marked with every kind.
 */
export function unmark(written: string): UnmarkedWords {
  const cuts: Cut[] = []
  for (const { 0: head, index } of written.matchAll(anyMark)) {
    if (index < (cuts.at(-1)?.to ?? 0) || !isMeant(head)) continue
    const cut = head === ':private' ? readMark(written, index) : null
    if (cut === null) return { words: withheld(written), origin: position => position, broken: index }
    cuts.push(cut)
  }
  return { ...cutOut(written, cuts), broken: null }
}

/** Whether colons and a name are `private`, or a slip of it. */
function isMeant(head: string): boolean {
  const name = head.replace(/^:+\s*/, '')
  return name === 'private' || isNear(name, 'private')
}

/** Words that nothing but the full edition may show. */
function withheld(text: string): Words {
  return { text, marks: privateKinds.map(as => ({ start: 0, end: text.length, as })) }
}

/** `:private[the plate]{as=identity}` from its colon on; null where it does not parse. */
function readMark(written: string, from: number): Cut | null {
  const open = from + ':private'.length
  const close = written[open] === '[' ? closingBracket(written, open) : null
  if (close === null) return null
  const match = attribute.exec(written.slice(close + 1))
  const as = wordOf(match?.[1] ?? match?.[2] ?? match?.[3], privateKinds)
  const label = written.slice(open + 1, close)
  const isNested = [...label.matchAll(anyMark)].some(([head]) => isMeant(head))
  if (match === null || as === null || label.trim() === '' || isNested) return null
  return { from, label: open + 1, labelEnd: close, to: close + 1 + match[0].length, as }
}

function closingBracket(written: string, open: number): number | null {
  let depth = 0
  for (let at = open; at < written.length; at++) {
    if (written[at] === '[') depth += 1
    else if (written[at] === ']') depth -= 1
    if (depth === 0) return at
  }
  return null
}

function cutOut(written: string, cuts: readonly Cut[]): Pick<UnmarkedWords, 'words' | 'origin'> {
  let text = ''
  let at = 0
  const marks: { start: number; end: number; as: PrivateKind }[] = []
  const kept: { text: number; written: number }[] = [{ text: 0, written: 0 }]
  for (const cut of cuts) {
    text += written.slice(at, cut.from)
    kept.push({ text: text.length, written: cut.label })
    marks.push({ start: text.length, end: text.length + cut.labelEnd - cut.label, as: cut.as })
    text += written.slice(cut.label, cut.labelEnd)
    kept.push({ text: text.length, written: cut.to })
    at = cut.to
  }
  text += written.slice(at)
  const origin = (position: number): number => {
    const piece = kept.findLast(({ text: from }) => from <= position) ?? { text: 0, written: 0 }
    return piece.written + position - piece.text
  }
  return { words: { text, marks }, origin }
}
