import { afterEach, describe, expect, test } from 'vitest'
import { readThroughMatter } from '../../src/notes/safe-matter.ts'
import { frontOf, noteOf, plain, told } from './note-of.ts'

const marker = globalThis as { wasRun?: unknown }
const code = 'globalThis.wasRun = true'

afterEach(() => {
  delete marker.wasRun
})

const behindFence = (language: string) =>
  `Unexpected \`${language}\` behind the opening \`---\`, expected \`---\` alone: front matter is YAML, and nothing else is read or run.`
const languages = [
  'js',
  ' js',
  'javascript',
  'JS',
  'JavaScript',
  'jsLegacy',
  'json',
  'coffee',
  'coffeescript',
  'cson',
  'ejs',
  'toml',
  'node',
  'constructor',
  'toString',
  '__proto__',
  '__defineGetter__',
  '# js',
]

describe('nothing in a note is run', () => {
  test.each(languages)('---%s is refused at its fence and the body is read', language => {
    const note = noteOf(`---${language}\n{ x: ${code} }\n---\nThe body.\n`)
    expect(marker.wasRun).toBeUndefined()
    expect(told(note.findings)).toEqual([
      `front-matter 1:1-1:${4 + language.length} ${behindFence(language.trim())} => ---`,
    ])
    expect(note.front).toBeNull()
    expect(note.body.children).toMatchObject([{ type: 'paragraph', position: { start: { line: 4 } } }])
  })

  test.each(['js', 'javascript', 'JS', ' js', 'json', 'coffee', 'toml'])('gray-matter itself refuses %s', language => {
    expect(() => readThroughMatter(`${language}\n{ x: ${code} }`, text => ({ text }))).toThrow(/refused|not registered/)
    expect(marker.wasRun).toBeUndefined()
  })

  test('gray-matter reads the same text twice with the same outcome', () => {
    const read = () => readThroughMatter('\na: [', text => ({ text }))
    expect([read(), read()]).toEqual([{ text: '\na: [' }, { text: '\na: [' }])
  })

  test('a template, a tag for code and a layout stay words', () => {
    const note = frontOf(
      "title: '{{ eleventy.env.root }}'\nlayout: ../../etc/passwd\npermalink: ../../out.html\nx: !!js/function 'function () { globalThis.wasRun = true }'",
    )
    expect(marker.wasRun).toBeUndefined()
    expect(plain(note.front)).toEqual([
      ['title', '{{ eleventy.env.root }}'],
      ['layout', '../../etc/passwd'],
      ['permalink', '../../out.html'],
    ])
    expect(told(note.findings)).toEqual([
      'front-matter 5:4-5:17 Unexpected `!!js/function`, which YAML takes for a tag, expected the value itself: quote a text that begins with `!`. => "!!js/function \'function () { globalThis.wasRun = true }\'"',
    ])
  })
})

const refusedName = (key: string) =>
  `Unexpected key \`${key}\`, expected another name: this one is refused, for programs take it for their own.`
const takenFor = (mark: string, what: string) =>
  `Unexpected \`${mark}\`, which YAML takes for ${what}, expected the value itself: quote a text that begins with \`${mark[0]}\`.`

describe('what YAML can do beyond keys and values is refused', () => {
  const refused: [string, string, unknown, string[]][] = [
    ['an anchor', 'a: &x 1\nb: 2', [['b', '2']], [`front-matter 2:4-2:6 ${takenFor('&x', 'an anchor')} => "&x 1"`]],
    ['an alias', 'a: *x*\nb: 2', [['b', '2']], [`front-matter 2:4-2:7 ${takenFor('*x*', 'an alias')} => "*x*"`]],
    ['an alias in a list', 'a: [1, *x]\nb: 2', [['b', '2']], [`front-matter 2:8-2:10 ${takenFor('*x', 'an alias')}`]],
    [
      'a tag',
      'a: !important clear\nb: 2',
      [['b', '2']],
      [`front-matter 2:4-2:14 ${takenFor('!important', 'a tag')} => "!important clear"`],
    ],
    [
      'a tag that YAML knows',
      'a: !!str 1\nb: 2',
      [['b', '2']],
      [`front-matter 2:4-2:9 ${takenFor('!!str', 'a tag')} => "!!str 1"`],
    ],
    [
      'a directive',
      '%YAML 1.1\na: yes',
      [['a', 'yes']],
      ['front-matter 2:1-2:10 Unexpected `%YAML 1.1`, which YAML takes for a directive, expected keys with values.'],
    ],
    [
      'a merge',
      '<<: { a: 1 }\nb: 2',
      [['b', '2']],
      ['front-matter 2:1-2:3 Unexpected `<<`, which merges mappings in some YAML, expected each key written out.'],
    ],
    [
      '__proto__',
      '__proto__: { admin: true }\nb: 2',
      [['b', '2']],
      [`front-matter 2:1-2:10 ${refusedName('__proto__')}`],
    ],
    [
      '__proto__ in quotes, deep',
      'a: { "__proto__": { admin: true }, c: 1 }',
      [['a', [['c', '1']]]],
      [`front-matter 2:6-2:17 ${refusedName('__proto__')}`],
    ],
    [
      'constructor and prototype',
      'constructor: 1\nprototype: 2',
      [],
      [`front-matter 2:1-2:12 ${refusedName('constructor')}`, `front-matter 3:1-3:10 ${refusedName('prototype')}`],
    ],
  ]
  test.each(refused)('%s', (_, yaml, front, findings) => {
    expect(told(frontOf(yaml).findings)).toEqual(findings)
    expect(plain(frontOf(yaml).front)).toEqual(front)
    expect(({} as { admin?: boolean }).admin).toBeUndefined()
  })

  test('a bomb of aliases is refused before it is opened', () => {
    const names = 'abcdefghij'
    const bomb = [...names]
      .map(
        (name, at) =>
          `${name}: &${name} [${
            at === 0
              ? 'x'
              : Array(10)
                  .fill(`*${names[at - 1]}`)
                  .join(', ')
          }]`,
      )
      .join('\n')
    const note = frontOf(bomb)
    expect(note.front).toBeNull()
    expect(note.findings).toHaveLength(8)
    expect(JSON.stringify(note).length).toBeLessThan(10_000)
  })
})

describe('front matter and bodies beyond any use are refused, in seconds', () => {
  const size = 65_000
  const depths: [string, string][] = [
    ['brackets', `a: ${'['.repeat(size)}`],
    ['closed brackets', `a: ${'['.repeat(2000)}${']'.repeat(2000)}`],
    ['braces', `a: ${'{a: '.repeat(size / 4)}`],
    ['list marks', '- '.repeat(size / 2)],
    ['indented keys', Array.from({ length: 300 }, (_, at) => `${' '.repeat(at)}a:`).join('\n')],
  ]
  test.each(depths)('deep %s', (_, yaml) => {
    const { findings } = frontOf(yaml)
    expect(findings).toHaveLength(1)
    expect(findings[0]?.rule).toBe('front-matter')
    expect(findings[0]?.message.length).toBeLessThan(250)
  })

  const wide: [string, string, number][] = [
    ['commas', `a: [${','.repeat(size)}]`, 1],
    ['colons', `a: ${': '.repeat(size / 2)}`, 1],
    ['anchors', `a: ${'&a '.repeat(size / 3)}`, 1],
    ['tags', `a: ${'!a '.repeat(size / 3)}`, 1],
    ['tabs', '\t'.repeat(size), 0],
    ['empty lines in a block', `a: |\n${' \n'.repeat(size / 2)}`, 0],
    ['mistakes', 'a: @x\n'.repeat(size / 6), 3],
  ]
  test.each(wide)('many %s', (_, yaml, count) => {
    expect(frontOf(yaml).findings.filter(({ rule }) => rule === 'front-matter')).toHaveLength(count)
  })

  test('front matter of 64 KB is read, and not of one byte more', () => {
    const yaml = (bytes: number) => `\na: ${'x'.repeat(bytes - 4)}` // The line end behind the opening fence counts.
    expect(told(noteOf(`---${yaml(65_536)}\n---\nBody`).findings)).toEqual([])
    const over = noteOf(`---${yaml(65_537)}\n---\nBody`)
    expect(told(over.findings)).toEqual([
      'front-matter 1:1-1:4 Unexpected 65 KB of YAML, expected at most 64 KB: none of it is read. Move words into the body.',
    ])
    expect([over.front, over.body.children.length]).toEqual([null, 1])
  })

  test('front matter of many megabytes of empty lines is refused at once', () => {
    expect(told(noteOf(`---\na: 1\n${'\n'.repeat(5_000_000)}---\nBody`).findings)).toEqual([
      'front-matter 1:1-1:4 Unexpected 4883 KB of YAML, expected at most 64 KB: none of it is read. Move words into the body.',
      'unreadable-note 1:1-1:1 Unexpected 4883 KB of text in one note, expected at most 256 KB: the text of this note is not read.',
    ])
  })
})
