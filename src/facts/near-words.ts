import leven, { closestMatch } from 'leven'

const shortest = 4 // letters of a word of which two may be wrong

/** The known word that was most likely meant: one edit away in any case of letters, or two where it begins alike. */
export function nearest(word: string, known: readonly string[]): string | null {
  const target = word.trim().toLowerCase()
  const same = known.find(candidate => candidate.toLowerCase() === target || isSwap(candidate, target))
  const alike = target.length < shortest ? [] : known.filter(candidate => candidate[0] === target[0])
  return (
    same ?? closestMatch(target, known, { maxDistance: 1 }) ?? closestMatch(target, alike, { maxDistance: 2 }) ?? null
  )
}

/** One edit, one swap of neighbours or a capital apart; names that differ only in digits or in a last word of one letter are not near. */
export function isNear(one: string, other: string): boolean {
  if (one === other || one.replace(/\d+/g, '0') === other.replace(/\d+/g, '0')) return false
  const [a, b] = [one.toLowerCase(), other.toLowerCase()]
  if (leven(a, b, { maxDistance: 2 }) > 1 && !isSwap(a, b)) return false
  return !(endsInOneLetter(a) && endsInOneLetter(b) && a.slice(0, -1) === b.slice(0, -1))
}

const endsInOneLetter = (name: string): boolean => /(^|[- ])[a-z]$/.test(name)

/** `lenght` for `length`. */
function isSwap(one: string, other: string): boolean {
  if (one.length !== other.length) return false
  const at = [...one].findIndex((letter, index) => letter !== other[index])
  if (at < 0 || at + 1 >= one.length) return false
  return one.slice(0, at) + (one[at + 1] ?? '') + (one[at] ?? '') + one.slice(at + 2) === other
}
