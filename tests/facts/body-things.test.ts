import { describe, expect, test } from 'vitest'
import { factsOf, figures, references, stated } from './stated.ts'

/** A body under two lines of front matter; its first line is line 4 of the file. */
const body = (text: string) => stated(`---\ntitle: Tank\n---\n${text}\n`)

describe('jobs, links and pictures', () => {
  test('a task is a job, with what it holds up', () => {
    const note = body('- [ ] seal the engine hatch, 12 mm bead :job{#seal-hatch before=road}\n- [x] bleed the brakes')
    expect(
      factsOf(note, 'job').map(({ id, explicit, words, done, before }) => [id, explicit, words.text, done, before]),
    ).toEqual([
      ['seal-hatch', true, 'seal the engine hatch, 12 mm bead', false, 'road'],
      ['bleed-the-brakes', false, 'bleed the brakes', true, null],
    ])
    expect(figures(note)).toEqual(['q-1 12 mm (prose)'])
  })

  test('links and pictures must lead somewhere', () => {
    const note = body(
      '[the tank](part:fuel-tank), [](measurement:fuel-tank/length), [before](2026-03-01-floor.md), [out](https://example.org)\n\n![The tank](../photos/tank.jpg "The tank, 860 mm")\n\n![Again](photos/tank.jpg)',
    )
    expect(references(note)).toEqual([
      'part fuel-tank (must-exist)',
      'measurement fuel-tank/length (must-exist)',
      'note sessions/2026-03-01-floor.md (must-exist)',
      'photo photos/tank.jpg (must-exist)',
      'photo photos/tank.jpg (must-exist)',
    ])
    expect(note.figures).toEqual([])
  })
})

describe('private marks around what is stated', () => {
  test('words inside a private block are marked whole, and their own marks are kept', () => {
    const note = body(':::private{as=place}\n- [ ] fetch :private[Ada]{as=people} from the yard\n:::')
    expect(factsOf(note, 'job').map(({ words }) => words)).toEqual([
      {
        text: 'fetch Ada from the yard',
        marks: [
          { start: 0, end: 23, as: 'place' },
          { start: 6, end: 9, as: 'people' },
        ],
      },
    ])
  })

  test('words inside a block whose mark did not parse are for the full edition only', () => {
    const note = body(':::private{as=nobody}\n- [ ] fetch it from the yard\n:::')
    expect(note.findings.map(({ rule }) => rule)).toEqual(['directive'])
    expect(factsOf(note, 'job').map(({ words }) => words.marks.map(({ as }) => as))).toEqual([
      ['cost', 'source', 'people', 'place', 'identity'],
    ])
  })

  test('the words of how something was measured are marked too', () => {
    const note = body(':::private{as=people}\nIt is :measure[860 mm]{of="fuel-tank/length" with="Ada’s tape"}.\n:::')
    expect(factsOf(note, 'property')).toMatchObject([
      { with: { text: 'Ada’s tape', marks: [{ start: 0, end: 10, as: 'people' }] } },
    ])
  })
})
