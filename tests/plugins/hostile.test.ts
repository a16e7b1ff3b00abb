import { describe, expect, test } from 'vitest'
import { run, whole } from './chain.ts'

/** Milliseconds, the better of two. */
function timeOf(work: () => void): number {
  const times = [1, 2].map(() => {
    const start = performance.now()
    work()
    return performance.now() - start
  })
  return Math.min(...times)
}

const shortest = 10 // milliseconds: below this the clock says little

describe('the time grows with the text and no faster', () => {
  const hostile: [what: string, text: (size: number) => string][] = [
    ['colons', size => ':'.repeat(size * 10)],
    ['near names', size => 'a :privat[b] '.repeat(size)],
    ['failed blocks', size => 'a :private b\n\n'.repeat(size)],
    ['open containers', size => ':::private{as=place}\n'.repeat(size)],
    ['open containers in paragraphs', size => 'a\n:::private{as=place}\n\n'.repeat(size)],
    ['closed containers', size => ':::private{as=place}\na\n:::\n'.repeat(size)],
    ['unknown containers', size => ':::foo\n\n'.repeat(size)],
    ['fences that close nothing', size => ':::\n\n'.repeat(size)],
    ['openings with a blank', size => '::: a\n\n'.repeat(size)],
    ['measures', size => ':measure[5 mm]{of="a/b"} '.repeat(size)],
    ['braces', size => ':private[a]{'.repeat(size)],
    ['backslashes', size => `${'\\'.repeat(size * 10)} 5 mm`],
    ['references', size => '&amp;'.repeat(size * 4)],
    ['figures', size => '5 mm '.repeat(size * 2)],
    ['doubts', size => 'some 25 pounds, '.repeat(size)],
    ['lines of a quote', size => '> a &amp; 5 mm\n'.repeat(size)],
    ['lazy lines that begin like quotes', size => `> a\n${'      > > > b 5 mm\n'.repeat(size)}`],
    ['equal tasks', size => '- [ ] wash\n'.repeat(size)],
    ['pictures', size => '![a :private](b) '.repeat(size)],
    ['emphasis', size => '*5* mm '.repeat(size)],
  ]
  test.each(hostile)('%s', (_, text) => {
    const time = (size: number): number =>
      Math.max(
        shortest,
        timeOf(() => run(whole, text(size))),
      )
    expect(time(2400) / time(300)).toBeLessThan(28) // eight times the text; its square would be sixty-four
  })
})

test('deep nesting of quotes overflows no stack', () => {
  expect(() => run(whole, `${'> '.repeat(1500)}5 mm`)).not.toThrow()
})
