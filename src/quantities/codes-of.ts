/** Whether the code of a character is one of some. */
export interface Codes {
  has(code: number): boolean
}

const plainCodes = 128 // ASCII, looked up in a table: these are asked for at every figure

/** The codes of the characters of a text, all of one UTF-16 unit. */
export function codesOf(characters: string): Codes {
  const plain = new Uint8Array(plainCodes)
  const others = new Set<number>()
  for (const character of characters) {
    const code = character.charCodeAt(0)
    if (code < plainCodes) plain[code] = 1
    else others.add(code)
  }
  return { has: code => (code < plainCodes ? plain[code] === 1 : others.has(code)) }
}
