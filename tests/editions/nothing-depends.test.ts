import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { canaryBuild, editionLists } from './canary-build.ts'
import { type PublishedText, publishedTexts, readBuild } from './published-bytes.ts'

type EditionName = keyof typeof editionLists

/** The edition of the test build, its withheld words changed by `change`. */
async function edition(name: EditionName, change: (word: string) => string): Promise<readonly PublishedText[]> {
  const withheld = editionLists[name] as readonly string[]
  const { files } = await canaryBuild(
    (word, as) => (as.some(kind => withheld.includes(kind) || kind === 'broken') ? change(word) : undefined),
    change('artist'),
  )
  return publishedTexts(await readBuild(files), name)
}

/** Letters for a word, digits for an amount, both of another length. */
const changed = (letters: string, digits: number) => (word: string) =>
  /^\d+$/.test(word) ? String(Number(word) * digits + digits) : `${word}${letters}`

describe('what is published does not depend on what is withheld', () => {
  test.each(['public', 'buyer', 'inspector', 'sources', 'place'] as const)(
    'the edition %s is the same to the byte whatever the withheld words and amounts are, and however long',
    async name => {
      const before = await edition(name, word => word)
      const anything = fc.record({
        letters: fc.stringMatching(/^[a-z]{1,24}$/),
        digits: fc.integer({ min: 2, max: 90 }),
      })
      await fc.assert(
        fc.asyncProperty(anything, async ({ letters, digits }) => {
          const after = await edition(name, changed(letters, digits))
          expect(differing(before, after)).toEqual([])
        }),
        { numRuns: 2, seed: 20260307 },
      )
    },
    240_000,
  )
})

function differing(before: readonly PublishedText[], after: readonly PublishedText[]): string[] {
  const texts = new Map(before.map(({ path, text }) => [path, text]))
  const changedFiles = after.filter(({ path, text }) => texts.get(path) !== text).map(({ path }) => path)
  return [...changedFiles, ...before.map(({ path }) => path).filter(path => !after.some(one => one.path === path))]
}
