import { describe, expect, test } from 'vitest'
import { readBody } from '../../src/notes/read-body.ts'
import { plainOptions } from '../../src/notes/read-note.ts'
import { printNote } from '../../src/pages/note-rows.ts'
import { plainContext } from './plain-context.ts'

function sentencesOf(markdown: string): string[] {
  const html = printNote(readBody('a.md', markdown, plainOptions).body, plainContext)
    .rows.map(row => row.html)
    .join('')
  return [...html.matchAll(/<span class="s">(.*?)<\/span>(?=\s|<\/(?:p|li|td)>|<span class="s">|<ul>)/gs)].map(
    ([, inner]) => (inner ?? '').replace(/<[^>]+>/g, ''),
  )
}

describe('a paragraph is cut into its sentences', () => {
  test.each([
    ['It fits. It leaks.', ['It fits.', 'It leaks.']],
    ['Does it fit? No! Then cut.', ['Does it fit?', 'No!', 'Then cut.']],
    ['Bolts, approx. M8, went in.', ['Bolts, approx. M8, went in.']],
    ['The gap (min. 5 mm) holds. Good.', ['The gap (min. 5\u202fmm) holds.', 'Good.']],
    ['It *fits. It* leaks. Done.', ['It fits. It leaks.', 'Done.']],
    ['One `a. B` two. Three.', ['One a. B two.', 'Three.']],
    ['See **this.** Then that.', ['See this.', 'Then that.']],
  ])('%s', (markdown, expected) => {
    expect(sentencesOf(markdown)).toEqual(expected)
  })

  test('words of a list item and of the list inside it are cut apart', () => {
    expect(sentencesOf('- First. Second.\n  - Inner one. Inner two.')).toEqual([
      'First.',
      'Second.',
      'Inner one.',
      'Inner two.',
    ])
  })
})
