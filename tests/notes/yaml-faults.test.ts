import { describe, expect, test } from 'vitest'
import { frontOf, noteOf, plain, told } from './note-of.ts'

interface Case {
  readonly yaml: string
  readonly front: unknown
  readonly findings: readonly string[]
}

const columnOf = (words: string) =>
  `Unexpected column of \`${words}\`, expected it in line with the keys that it belongs to.`
const commas = 'expected commas between what stands in it: quote a text that holds `: `, brackets, braces or a comma.'

/** Each has one mistake, and gives one finding; what stands beside it is kept. */
const oneMistake: Record<string, Case> = {
  'a colon in a value': {
    yaml: 'why: see: this\nhours: 2',
    front: [['hours', '2']],
    findings: [
      'front-matter 2:6-2:15 Unexpected second `: ` in `see: this`, expected a value in quotes. => "see: this"',
    ],
  },
  'a colon in a value deep in a part': {
    yaml: 'parts:\n  tank:\n    why: see: this\n    name: Tank\n  pump:\n    name: Pump',
    front: [
      [
        'parts',
        [
          ['tank', [['name', 'Tank']]],
          ['pump', [['name', 'Pump']]],
        ],
      ],
    ],
    findings: [
      'front-matter 4:10-4:19 Unexpected second `: ` in `see: this`, expected a value in quotes. => "see: this"',
    ],
  },
  'the only key below another': {
    yaml: 'parts:\n  tank: @one\nhours: 2',
    front: [['hours', '2']],
    findings: ['front-matter 3:9-3:13 Unexpected `@` at the start of `@one`, expected a value in quotes. => "@one"'],
  },
  'a per cent sign first': {
    yaml: 'a: % left\nb: 1',
    front: [['b', '1']],
    findings: [
      'front-matter 2:4-2:10 Unexpected `%` at the start of `% left`, expected a value in quotes. => "% left"',
    ],
  },
  'a hyphen first': {
    yaml: 'a: - left\nb: 1',
    front: [['b', '1']],
    findings: ['front-matter 2:4-2:10 Unexpected `-` in `- left`, expected a value in quotes. => "- left"'],
  },
  'a greater-than sign first': {
    yaml: 'a: > 5 mm\nb: 1',
    front: [['b', '1']],
    findings: ['front-matter 2:4-2:10 Unexpected `5 mm` in `> 5 mm`, expected a value in quotes. => "> 5 mm"'],
  },
  'an inch mark in double quotes': {
    yaml: 'a: "3" pipe"\nb: 1',
    front: [['b', '1']],
    findings: ['front-matter 2:4-2:13 Unexpected `pipe"` in `"3" pipe"`, expected a value in quotes. => \'3" pipe\''],
  },
  'an apostrophe in single quotes': {
    yaml: "a: 'it's in'\nb: 1",
    front: [['b', '1']],
    findings: ["front-matter 2:4-2:13 Unexpected `s in'` in `'it's in'`, expected a value in quotes. => \"it's in\""],
  },
  'a quote that never closes': {
    yaml: 'a: "left\nb: 1\nc: 2',
    front: [
      ['b', '1'],
      ['c', '2'],
    ],
    findings: ['front-matter 2:4-2:9 Unexpected end of `"left`, expected a closing `"`. => "left"'],
  },
  'an unknown escape': {
    yaml: 'a: "C:\\qrs"\nb: 1',
    front: [['b', '1']],
    findings: [
      'front-matter 2:7-2:9 Unexpected `\\q` in double quotes, expected an escape that YAML knows: write `\\\\q`, or use single quotes. => \\\\q',
    ],
  },
  'a brace that never closes': {
    yaml: 'a: { b: 1, c: 2\nd: 3',
    front: [['d', '3']],
    findings: ['front-matter 2:4-2:16 Unexpected end of `{ b: 1, c: 2`, expected a closing `}`. => { b: 1, c: 2 }'],
  },
  'a bracket that never closes': {
    yaml: 'a: [ b, c\nd: 3',
    front: [['d', '3']],
    findings: ['front-matter 2:4-2:10 Unexpected end of `[ b, c`, expected a closing `]`. => [ b, c]'],
  },
  'a brace too many': {
    yaml: 'a: { b: 1 }}\nd: 3',
    front: [['d', '3']],
    findings: [
      'front-matter 2:12-2:13 Unexpected `}` in `{ b: 1 }}`, expected one closing bracket for each opening one.',
    ],
  },
  'words behind a brace': {
    yaml: 'a: { b: 1 } red\nd: 3',
    front: [['d', '3']],
    findings: ['front-matter 2:13-2:16 Unexpected `red` behind the closing bracket, expected the end of the line.'],
  },
  'a missing comma': {
    yaml: 'a: { b: 1\n  c: 2 }\nd: 3',
    front: [['d', '3']],
    findings: [`front-matter 2:9-2:10 Unexpected \`1\` in \`{ b: 1\`, ${commas}`],
  },
  'brackets within brackets, unquoted': {
    yaml: 'less: [prism of [0,0] [5,0] x 64 mm]\nd: 3',
    front: [['d', '3']],
    findings: [`front-matter 2:17-2:18 Unexpected \`[\` in \`[prism of [0,0] [5,0] x 64 mm]\`, ${commas}`],
  },
  'a line without a colon': {
    yaml: 'title: x\nmade a bracket\nhours: 2',
    front: [
      ['title', 'x'],
      ['hours', '2'],
    ],
    findings: ['front-matter 3:1-3:15 Unexpected `made a bracket`, expected a key, a colon and a space.'],
  },
  'a colon without a space': {
    yaml: 'title:x\nhours: 2',
    front: [['hours', '2']],
    findings: ['front-matter 2:1-2:8 Unexpected `title:x`, expected a key, a colon and a space. => title: x'],
  },
  'a key too deep': {
    yaml: 'parts:\n  a: 1\n   b: 2\n   c: 3\n  d: 4',
    front: [
      [
        'parts',
        [
          ['a', '1'],
          ['d', '4'],
        ],
      ],
    ],
    findings: [`front-matter 4:4-4:8 ${columnOf('b: 2')}`],
  },
  'a key not deep enough': {
    yaml: 'parts:\n  a: 1\n b: 2\nd: 4',
    front: [
      ['parts', [['a', '1']]],
      ['d', '4'],
    ],
    findings: [`front-matter 4:2-4:6 ${columnOf('b: 2')}`],
  },
  'a key in a list': {
    yaml: 'a:\n  - b\n  c: d\ne: 1',
    front: [
      ['a', ['b']],
      ['e', '1'],
    ],
    findings: [`front-matter 4:3-4:7 ${columnOf('c: d')}`],
  },
  'tabs to nest by': {
    yaml: 'parts:\n\ttank:\n\t\tname: Tank\nd: 4',
    front: [
      ['parts', [['tank', [['name', 'Tank']]]]],
      ['d', '4'],
    ],
    findings: ['front-matter 3:1-3:2 Unexpected tab before a key, expected spaces: YAML nests by spaces only. =>   '],
  },
  'a value without a key': {
    yaml: ': x\nb: 1',
    front: [['b', '1']],
    findings: ['front-matter 2:3-2:4 Unexpected value without a key, expected a key, a colon and a space.'],
  },
  'a mapping as a key': {
    yaml: '{a: 1}: 2\nb: 1',
    front: [['b', '1']],
    findings: ['front-matter 2:1-2:10 Unexpected `{a: 1}: 2` in front matter, expected a key that is a word.'],
  },
  'a list': {
    yaml: '- x\n- y',
    front: null,
    findings: ['front-matter 2:1-3:4 Unexpected list, expected keys with values, such as `title: …`.'],
  },
  'words only': {
    yaml: 'just words',
    front: null,
    findings: ['front-matter 2:1-2:11 Unexpected `just words`, expected keys with values, such as `title: …`.'],
  },
  'a key twice': {
    yaml: 'hours: 2\nhours: 3\nb: 1',
    front: [
      ['hours', '2'],
      ['b', '1'],
    ],
    findings: ['repeated-key 3:1-3:6 Unexpected second `hours`, expected it once: the first one, on line 2, stands.'],
  },
  'a key twice, once in quotes and braces': {
    yaml: 'a: { b: 1, "b": 2 }',
    front: [['a', [['b', '1']]]],
    findings: ['repeated-key 2:12-2:15 Unexpected second `b`, expected it once: the first one, on line 2, stands.'],
  },
}

describe('one mistake in front matter gives one finding, and the rest is kept', () => {
  test.each(Object.entries(oneMistake))('%s', (_, { yaml, front, findings }) => {
    expect(told(frontOf(yaml).findings)).toEqual(findings)
    expect(plain(frontOf(yaml).front)).toEqual(front)
    expect(frontOf(yaml).body.children).toHaveLength(1)
  })

  test.each(Object.entries(oneMistake))(
    '%s, in a file with CRLF, is told at the same place',
    (_, { yaml, front, findings }) => {
      const note = noteOf(`---\r\n${yaml.replaceAll('\n', '\r\n')}\r\n---\r\nThe body.\r\n`)
      expect(told(note.findings)).toEqual(findings)
      expect(plain(note.front)).toEqual(front)
    },
  )

  test('mistakes beside each other are each told', () => {
    expect(told(frontOf('a: @x\nb: "y\nc: 1\nc: 2').findings)).toEqual([
      'front-matter 2:4-2:6 Unexpected `@` at the start of `@x`, expected a value in quotes. => "@x"',
      'front-matter 3:4-3:6 Unexpected end of `"y`, expected a closing `"`. => "y"',
      'repeated-key 5:1-5:2 Unexpected second `c`, expected it once: the first one, on line 4, stands.',
    ])
  })

  test('the second of two keys names the place of the first', () => {
    const [finding] = frontOf('hours: 2\nhours: 3').findings
    expect(finding?.related).toEqual([
      {
        file: 'content/sessions/2026-03-07-tank.md',
        line: 2,
        column: 1,
        endLine: 2,
        endColumn: 6,
        message: '`hours` is first written here.',
      },
    ])
  })
})

describe('keys and values are read from the source text', () => {
  test('numbers, dates and words of other YAML stay as typed, in the order written', () => {
    const yaml = 'b: 4.30\na: 01\nc: 0x10\nd: yes\ne: 2026-03-07\nf: 12:30\ng: 1_000\n"10": true\n2: .5\n01: no\n1: off'
    expect(plain(frontOf(yaml).front)).toEqual([
      ['b', '4.30'],
      ['a', '01'],
      ['c', '0x10'],
      ['d', 'yes'],
      ['e', '2026-03-07'],
      ['f', '12:30'],
      ['g', '1_000'],
      ['10', 'true'],
      ['2', '.5'],
      ['01', 'no'],
      ['1', 'off'],
    ])
  })

  test('~, null and an empty value are nothing; in quotes they are text', () => {
    const { front } = frontOf('a: ~\nb: null\nc:\nd: "~"\ne: \'null\'\nf: ""')
    expect(front?.entries.map(({ key, value }) => `${key} ${value.kind}`)).toEqual([
      'a nothing',
      'b nothing',
      'c nothing',
      'd scalar',
      'e scalar',
      'f scalar',
    ])
  })

  test('values of every style are told from plain ones', () => {
    const { front } = frontOf('a: x\nb: \'x\'\nc: "x"\nd: |\n  x\ne: >\n  x')
    expect(front?.entries.map(({ value }) => value.kind === 'scalar' && `${value.text} ${value.quoted}`)).toEqual([
      'x false',
      'x true',
      'x true',
      'x\n true',
      'x\n true',
    ])
  })

  test('inspection.yaml is read whole, without fences', () => {
    const note = noteOf('rule: Approval\npoints:\n  brakes: { ask: "Two circuits?" }\n', 'content/inspection.yaml')
    expect(note).toMatchObject({
      kind: 'inspection',
      id: 'inspection',
      findings: [],
      body: { type: 'root', children: [] },
    })
    expect(plain(note.front)).toEqual([
      ['rule', 'Approval'],
      ['points', [['brakes', [['ask', 'Two circuits?']]]]],
    ])
    expect(note.front?.entries[1]?.keyPlace).toMatchObject({ line: 2, column: 1, endLine: 2, endColumn: 7 })
  })
})
