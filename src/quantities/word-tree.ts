const letters = 32 // steps of a branch: the place in the alphabet, 1 to 26

const placeOf = (code: number): number => {
  const place = (code | 32) - 96
  return place > 0 && place <= 26 ? place : 0
}

/** A list of words of small letters, each of which is found in a text letter by letter, in whatever case. */
export class WordTree {
  private readonly steps: Uint16Array
  /** The place in the list, from 1, of the word that ends on a branch; 0 where none does. */
  private readonly ends: Uint16Array

  constructor(words: readonly string[]) {
    const steps: number[] = new Array(letters).fill(0)
    const ends = [0]
    for (const [index, word] of words.entries()) {
      let branch = 0
      for (let at = 0; at < word.length; at += 1) {
        const step = branch * letters + placeOf(word.charCodeAt(at))
        if (steps[step] === 0) {
          steps[step] = ends.push(0) - 1
          for (let place = 0; place < letters; place += 1) steps.push(0)
        }
        branch = steps[step] ?? 0
      }
      ends[branch] = index + 1
    }
    this.steps = Uint16Array.from(steps)
    this.ends = Uint16Array.from(ends)
  }

  /** The place in the list, from 1, of the whole word that begins at a place of a text; 0 where none of them stands there. */
  find(text: string, start: number): number {
    let branch = 0
    for (let at = start; ; at += 1) {
      const place = placeOf(text.charCodeAt(at))
      if (place === 0) return this.ends[branch] ?? 0
      branch = this.steps[branch * letters + place] ?? 0
      if (branch === 0) return 0
    }
  }
}
