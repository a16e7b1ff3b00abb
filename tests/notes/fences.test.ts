import { describe, expect, test } from 'vitest'
import { noteOf, plain, told } from './note-of.ts'

/** What a note's tree holds and where: `paragraph@4:1`. */
function blocks(text: string): string[] {
  return noteOf(text).body.children.map(
    ({ type, position }) => `${type}@${position?.start.line}:${position?.start.column}`,
  )
}

const title = [['title', 'Tank in']]

describe('front matter opens on line 1 and closes with the next line that is --- alone', () => {
  const accepted: [string, string, unknown, string[]][] = [
    ['plain', '---\ntitle: Tank in\n---\nBody', title, ['paragraph@4:1']],
    ['blanks behind both fences', '---  \ntitle: Tank in\n--- \t\nBody', title, ['paragraph@4:1']],
    ['CRLF', '---\r\ntitle: Tank in\r\n---\r\nBody', title, ['paragraph@4:1']],
    ['lone CR', '---\rtitle: Tank in\r---\rBody', title, ['paragraph@4:1']],
    ['a byte order mark', '\uFEFF---\ntitle: Tank in\n---\nBody', title, ['paragraph@4:1']],
    ['no line end behind the closing fence', '---\ntitle: Tank in\n---', title, []],
    [
      'a rule in the body',
      '---\ntitle: Tank in\n---\na\n\n---\n\nb',
      title,
      ['paragraph@4:1', 'thematicBreak@6:1', 'paragraph@8:1'],
    ],
    ['empty lines at the head of the body', '---\ntitle: Tank in\n---\n\n\nBody', title, ['paragraph@6:1']],
    [
      'a block that holds a fence with words',
      '---\na: |\n  x\n  --- not a fence\n  ---\nb: 1\n---\nBody',
      [
        ['a', 'x\n--- not a fence\n---\n'],
        ['b', '1'],
      ],
      ['paragraph@8:1'],
    ],
    ['nothing between', '---\n---\nBody', [], ['paragraph@3:1']],
    ['comments only', '---\n# later\n---\nBody', [], ['paragraph@4:1']],
    ['no front matter', '# Tank in\n\nBody', null, ['heading@1:1', 'paragraph@3:1']],
    ['no front matter, a heading underlined', 'Tank in\n---\nBody', null, ['heading@1:1', 'paragraph@3:1']],
    ['no front matter, a rule first', '----\n\nBody', null, ['thematicBreak@1:1', 'paragraph@3:1']],
    [
      'no front matter, words with a colon between rules',
      'Body.\n\n---\n\nfuel: none left\n\n---\n',
      null,
      ['paragraph@1:1', 'thematicBreak@3:1', 'paragraph@5:1', 'thematicBreak@7:1'],
    ],
    ['an empty note', '', null, []],
  ]
  test.each(accepted)('%s', (_, text, front, body) => {
    expect(told(noteOf(text).findings)).toEqual([])
    expect(plain(noteOf(text).front)).toEqual(front)
    expect(blocks(text)).toEqual(body)
  })

  const refused: [string, string, unknown, string[], string[]][] = [
    [
      'an empty line above',
      '\n\n---\ntitle: Tank in\n---\nBody',
      title,
      ['paragraph@6:1'],
      ['front-matter 3:1-3:4 Unexpected blank line before front matter, expected `---` on line 1.'],
    ],
    [
      'a heading above',
      '# Tank\n\n---\ntitle: Tank in\n---\nBody',
      title,
      ['heading@1:1', 'paragraph@6:1'],
      [
        'front-matter 3:1-3:4 Unexpected `# Tank` before front matter, expected `---` on line 1: move the text below the closing `---`.',
      ],
    ],
    [
      'a blank before the fence',
      ' ---\ntitle: Tank in\n---\nBody',
      title,
      ['paragraph@4:1'],
      ['front-matter 1:1-1:5 Unexpected ` ---` above front matter, expected `---` alone on line 1. => ---'],
    ],
    [
      'four hyphens',
      '----\ntitle: Tank in\n----\nBody',
      title,
      ['paragraph@4:1'],
      [
        'front-matter 1:1-1:5 Unexpected `----` above front matter, expected `---` alone on line 1. => ---',
        'front-matter 3:1-3:5 Unexpected `----` below front matter, expected `---` alone to close it. => ---',
      ],
    ],
    [
      'two hyphens',
      '--\ntitle: Tank in\n---\nBody',
      title,
      ['paragraph@4:1'],
      ['front-matter 1:1-1:3 Unexpected `--` above front matter, expected `---` alone on line 1. => ---'],
    ],
    [
      'dashes that a phone made of hyphens',
      '—-\ntitle: Tank in\n—\nBody',
      title,
      ['paragraph@4:1'],
      [
        'front-matter 1:1-1:3 Unexpected `—-` above front matter, expected `---` alone on line 1. => ---',
        'front-matter 3:1-3:2 Unexpected `—` below front matter, expected `---` alone to close it. => ---',
      ],
    ],
    [
      'three dots',
      '---\ntitle: Tank in\n...\nBody',
      title,
      ['paragraph@4:1'],
      ['front-matter 3:1-3:4 Unexpected `...` below front matter, expected `---` alone to close it. => ---'],
    ],
    [
      'a closing fence with words, alone in its column',
      '---\ntitle: Tank in\n--- not a fence\nhours: 2\n---\nBody',
      [
        ['title', 'Tank in'],
        ['hours', '2'],
      ],
      ['paragraph@6:1'],
      [
        'front-matter 3:1-3:16 Unexpected `--- not a fence` in front matter, expected a key, or `---` alone to close front matter.',
      ],
    ],
    [
      'no closing fence',
      '---\ntitle: Tank in\n\n# Fitting\n\nNote: done.',
      title,
      ['heading@4:1', 'paragraph@6:1'],
      [
        'front-matter 1:1-1:4 Unexpected end of the note inside front matter, expected a second line `---` to close it.',
      ],
    ],
    [
      'no closing fence and no body',
      '---\ntitle: Tank in',
      title,
      [],
      [
        'front-matter 1:1-1:4 Unexpected end of the note inside front matter, expected a second line `---` to close it.',
      ],
    ],
    [
      'a language that is YAML',
      '---yaml\ntitle: Tank in\n---\nBody',
      title,
      ['paragraph@4:1'],
      [
        'front-matter 1:1-1:8 Unexpected `yaml` behind the opening `---`, expected `---` alone: front matter is YAML, and nothing else is read or run. => ---',
      ],
    ],
  ]
  test.each(refused)('%s is told, and what can be read is read', (_, text, front, body, findings) => {
    expect(told(noteOf(text).findings)).toEqual(findings)
    expect(plain(noteOf(text).front)).toEqual(front)
    expect(blocks(text)).toEqual(body)
  })

  test('the opening fence is where a note says what is absent', () => {
    expect(noteOf('---  \ntitle: x\n---').fence).toEqual({
      file: 'content/sessions/2026-03-07-tank.md',
      line: 1,
      column: 1,
      endLine: 1,
      endColumn: 4,
    })
    expect(noteOf('Body').fence).toMatchObject({ line: 1, column: 1, endLine: 1, endColumn: 1 })
  })
})
