import type { Front } from '../notes/front.ts'

const longest = 60 // letters of a note that a sentence can hold and still be read

/** What was written, for a sentence about it; words under a private mark are not repeated. */
export function quoted(text: string): string {
  if (/:private/i.test(text)) return 'a text with a private mark'
  const line = text.trim().replace(/\s+/g, ' ').replaceAll('`', 'ˋ')
  return `\`${line.length > longest ? `${line.slice(0, longest - 1)}…` : line}\``
}

/** The same for any value of front matter. */
export function quotedFront(front: Front): string {
  if (front.kind === 'scalar') return quoted(front.text)
  return { map: 'a mapping', list: 'a list', nothing: 'nothing' }[front.kind]
}

/** `one`, `two` or `three`, each as code, for the words that were expected. */
export function oneOf(words: readonly string[]): string {
  const code = words.map(word => `\`${word}\``)
  return code.length < 2 ? code.join('') : `${code.slice(0, -1).join(', ')} or ${code.at(-1)}`
}
