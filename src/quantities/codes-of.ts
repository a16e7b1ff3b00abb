/** The codes of the characters of a text, all of one UTF-16 unit. */
export const codesOf = (characters: string): ReadonlySet<number> =>
  new Set([...characters].map(character => character.charCodeAt(0)))
