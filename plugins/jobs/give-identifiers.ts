import type { FoundJob } from './find-jobs.ts'

/** An identifier for each job, in their order: as written, else made from the words; a made one that is taken gets `-2`. */
export function giveIdentifiers(jobs: readonly FoundJob[]): string[] {
  const taken = new Set(jobs.flatMap(({ written }) => written ?? []))
  const last = new Map<string, number>()
  return jobs.map(({ written, words }) => {
    if (written !== null) return written
    const base = identifierOf(words)
    let count = last.get(base) ?? 1
    let id = count === 1 ? base : `${base}-${count}`
    while (taken.has(id)) id = `${base}-${++count}`
    last.set(base, count)
    taken.add(id)
    return id
  })
}

/** NFKD, marks removed, lower case, every run of other than a–z and 0–9 one hyphen, ends trimmed. */
export function identifierOf(words: string): string {
  const plain = words
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
  const identifier = plain.replace(/[^a-z0-9]+/gu, '-').replace(/^-|-$/gu, '')
  return identifier === '' ? `job-${sumOf(words)}` : identifier
}

/** Words in another script leave nothing: a sum of their letters tells them apart, the same in every note (FNV-1a, 32 bits). */
function sumOf(words: string): string {
  let sum = 0x811c9dc5
  for (const letter of words) sum = Math.imul(sum ^ (letter.codePointAt(0) ?? 0), 0x01000193) >>> 0
  return sum.toString(36)
}
