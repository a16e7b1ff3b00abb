/** Colour words by what builders write: names, the codes of IEC 60757, and what catalogues make of them. */
const names: Readonly<Record<string, string>> = {
  black: 'black',
  bk: 'black',
  blk: 'black',
  blck: 'black',
  brown: 'brown',
  bn: 'brown',
  brn: 'brown',
  red: 'red',
  rd: 'red',
  r: 'red',
  orange: 'orange',
  og: 'orange',
  or: 'orange',
  org: 'orange',
  o: 'orange',
  yellow: 'yellow',
  ye: 'yellow',
  yel: 'yellow',
  yw: 'yellow',
  y: 'yellow',
  green: 'green',
  gn: 'green',
  grn: 'green',
  blue: 'blue',
  bu: 'blue',
  blu: 'blue',
  violet: 'violet',
  purple: 'violet',
  vt: 'violet',
  vio: 'violet',
  pur: 'violet',
  v: 'violet',
  mauve: 'violet',
  grey: 'grey',
  gray: 'grey',
  gy: 'grey',
  gry: 'grey',
  slate: 'grey',
  white: 'white',
  wh: 'white',
  wht: 'white',
  w: 'white',
  pink: 'pink',
  pk: 'pink',
  pnk: 'pink',
  gold: 'gold',
  gd: 'gold',
  turquoise: 'turquoise',
  tq: 'turquoise',
  silver: 'silver',
  sr: 'silver',
  tan: 'tan',
  beige: 'beige',
  cream: 'cream',
  natural: 'natural',
  clear: 'clear',
}

/** Letters that may be two colours: blue is BU, B and BL in one catalogue or another. */
const doubtful: Readonly<Record<string, readonly string[]>> = {
  b: ['black', 'blue', 'brown'],
  bl: ['black', 'blue'],
  g: ['green', 'grey'],
  gr: ['green', 'grey'],
  p: ['pink', 'purple'],
  k: ['black', 'pink'],
  s: ['slate', 'silver'],
}

/** Words that say how the second colour is laid on. */
const manner = new Set([
  'with',
  'and',
  'on',
  'a',
  'tracer',
  'trace',
  'stripe',
  'stripes',
  'striped',
  'band',
  'line',
  'wire',
  'wires',
])

/** `green/purple`, `GN-VT`, `GNYE`, `brown with white tracer`: colours by name, the ground colour first; null where one is not known. */
export function readColour(text: string): { colours: string[] } | null {
  const colours: string[] = []
  let shade = ''
  for (const word of wordsIn(text)) {
    if (word === 'light' || word === 'dark' || word === 'lt' || word === 'dk') {
      shade = word.startsWith('l') ? 'light ' : 'dark '
      continue
    }
    if (manner.has(word)) continue
    const colour = colourOf(word)
    if (colour === undefined) return null
    colours.push(shade + colour)
    shade = ''
  }
  return colours.length === 0 || shade !== '' ? null : { colours }
}

/** The first letter or two of a colour that may be two colours, with what they may be. */
export function doubtfulColour(text: string): { letters: string; may: readonly string[] } | null {
  const written = wordsIn(text)
  const letters = written.find(word => Object.hasOwn(doubtful, word))
  const areColours = written.every(
    word => manner.has(word) || Object.hasOwn(doubtful, word) || colourOf(word) !== undefined,
  )
  return letters === undefined || !areColours ? null : { letters, may: doubtful[letters] ?? [] }
}

/** The codes of IEC 60757; its clause 5.1 writes several colours without a mark between: `RDBU`. */
const codes = /^(?:bk|bn|rd|og|ye|gn|bu|vt|gy|wh|pk|gd|tq|sr){2,}$/

/** Words and codes; `GNYE`, written together, is green and yellow. */
function wordsIn(text: string): string[] {
  const words = text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter(word => word !== '')
  return words.flatMap(word => (codes.test(word) ? (word.match(/../g) ?? []) : [word]))
}

const colourOf = (word: string): string | undefined => (Object.hasOwn(names, word) ? names[word] : undefined)
