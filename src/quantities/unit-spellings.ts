import { ambiguousUnits } from './ambiguous-units.ts'
import { isDigit, isGap, isLetter, isWordPart } from './characters.ts'
import { namesOfMoney, namesOfPence } from './currencies.ts'
import { units } from './units.ts'

interface Spelling {
  readonly exact: string
  readonly anyCase: boolean
  readonly id: string
}

/** The branches of the tree of spellings: a row of 128 steps each, of which 0 leads nowhere. */
const width = 128
const firstColumn = 32
const steps: number[] = new Array(width).fill(0)
const spellings: Spelling[][] = [[]]
const rare = new Map<number, number>()

const micro = 0x3bc
const ohm = 0x3a9

function plainCode(code: number): number {
  if (code > 32 && code < 128) return code
  if (isGap(code)) return 32
  if (code === 0xb5) return micro
  return code === 0x2126 ? ohm : code
}

function foldedCode(code: number): number {
  const plain = plainCode(code)
  if (plain < 128) return plain >= 65 && plain <= 90 ? plain + 32 : plain
  return String.fromCharCode(plain).toLowerCase().charCodeAt(0)
}

const isAnyCase = (name: string): boolean =>
  (name.length > 2 && name === name.toLowerCase()) || (name.length > 5 && name.includes(' '))

/** The column of a character: its own code, or for one beyond ASCII that units are written with one of a control character. */
function columnOf(code: number): number {
  const folded = foldedCode(code)
  return folded >= firstColumn && folded < width ? folded : (rare.get(folded) ?? 0)
}

function addName(name: string, id: string): void {
  let branch = 0
  let exact = ''
  for (let at = 0; at < name.length; at += 1) {
    exact += String.fromCharCode(plainCode(name.charCodeAt(at)))
    const folded = foldedCode(name.charCodeAt(at))
    if (folded >= width && !rare.has(folded)) rare.set(folded, rare.size + 1)
    const step = branch * width + columnOf(folded)
    if (steps[step] === 0) {
      steps[step] = spellings.push([]) - 1
      for (let column = 0; column < width; column += 1) steps.push(0)
    }
    branch = steps[step] ?? 0
  }
  spellings[branch]?.push({ exact, anyCase: isAnyCase(name), id })
}

function addNames(names: readonly string[], id: string): void {
  for (const name of names) {
    const single = name.endsWith('+') ? name.slice(0, -1) : name
    addName(single, id)
    if (single !== name) addName(`${single}s`, id)
  }
}

for (const { id, names } of units) addNames(names, id)
for (const { key, names } of ambiguousUnits)
  addNames(
    names.split('|').filter(name => name !== ''),
    key,
  )
for (const [name, currency] of namesOfMoney) addName(name, `money:${currency}`)
for (const name of namesOfPence) addName(name, 'money:GBP')
addNames(['100km+', '100 km+', '100 kilometre+', '100 kilometer+', 'hundred km', 'hundred kilometres'], '100km')

const table = Uint16Array.from(steps)
const ends = Uint8Array.from(spellings, ({ length }) => length)

const columns = Uint8Array.from({ length: width }, (_, code) => columnOf(code))

function columnAt(text: string, at: number): number {
  const code = text.charCodeAt(at)
  return code < width ? (columns[code] ?? 0) : columnOf(code)
}

const tightMinutes = /^(?:\d{1,2}m|[0-5]\d(?![\p{L}\p{N}:/-]|[.,]\d))/u

/** `5ft6in`, `1h20m`, `2h30`: figures of the next smaller unit follow at once. */
function isLedOnBySmaller(text: string, end: number): boolean {
  const before = text.charCodeAt(end - 1) | 32
  if (before === 116) return /^ft\d{1,2}(?![\d.,/])/i.test(text.slice(end - 2, end + 3))
  return before === 104 && tightMinutes.test(text.slice(end, end + 4))
}

/** Whether a unit may end at a place: no word goes on, unless it is a power or the x of `10mmx20mm`. */
function mayEnd(text: string, end: number): boolean {
  const code = text.charCodeAt(end)
  const before = text.charCodeAt(end - 1)
  if (!isWordPart(code)) return true
  if (!isLetter(before))
    return !((text[end - 1] === "'" || text[end - 1] === '’' || text[end - 1] === 'º') && isLetter(code))
  const after = text.charCodeAt(end + 1)
  if (isDigit(code) && isLedOnBySmaller(text, end)) return true
  if (code === 50 || code === 51) return !isWordPart(after)
  return (code === 120 || code === 88) && isDigit(after)
}

function isExact(text: string, start: number, exact: string): boolean {
  for (let at = 0; at < exact.length; at += 1) {
    if (plainCode(text.charCodeAt(start + at)) !== exact.charCodeAt(at)) return false
  }
  return true
}

function idAt(branch: number, text: string, start: number): string | null {
  let id: string | null = null
  for (const spelling of spellings[branch] ?? []) {
    if (isExact(text, start, spelling.exact)) return spelling.id
    if (spelling.anyCase) id ??= spelling.id
  }
  return id
}

/** The longest spelling of a unit at a place: its identifier or ambiguous key, and its end. */
export function matchSpelling(text: string, start: number): { id: string; end: number } | null {
  let branch = 0
  let found: { id: string; end: number } | null = null
  for (let at = start; at < text.length; at += 1) {
    branch = table[branch * width + columnAt(text, at)] ?? 0
    if (branch === 0) break
    if (ends[branch] === 0 || !mayEnd(text, at + 1)) continue
    const id = idAt(branch, text, start)
    if (id !== null) found = { id, end: at + 1 }
  }
  return found
}
