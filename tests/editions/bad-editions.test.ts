import sharp from 'sharp'
import { beforeAll, describe, expect, test } from 'vitest'
import { publicationOf } from '../../src/build.ts'
import { withheldNames } from '../../src/editions/withheld-names.ts'
import { filesWith, type PublishedText, publishedTexts, readBuild } from './published-bytes.ts'

// `Zqword` is withheld from the edition `some` in every build below, `zqphoto.jpg` where a table says so.

interface Odd {
  readonly editions?: string
  readonly donors?: string
  readonly title?: string
  readonly front?: string
  readonly body?: string
  readonly evidence?: string
  readonly file?: string
}

let photo: Uint8Array
beforeAll(async () => {
  photo = await sharp({ create: { width: 40, height: 30, channels: 3, background: 'grey' } })
    .jpeg()
    .toBuffer()
})

const all = '{ some: { withhold: [cost, source, people, place, identity] } }'

function read({ editions = all, donors = '{}', title = 'One', front = '', body = 'x', evidence, file }: Odd) {
  const points =
    evidence === undefined ? 'points: {}\n' : `points:\n  held: { ask: Is it held?, evidence: [ ${evidence} ] }\n`
  return readBuild({
    'content/build.md': `---\ntitle: Odd\ncurrency: GBP\ndonors: ${donors}\neditions: ${editions}\n---\nWords.\n`,
    'content/inspection.yaml': points,
    'content/photos/zqphoto.jpg': photo,
    [`content/sessions/${file ?? '2026-03-07-one'}.md`]: `---\ntitle: ${title}\ndate: 2026-03-07\n${front}---\n${body}\n`,
  })
}

const leaks = (texts: readonly PublishedText[]): string[] =>
  ['zqword', 'zqphoto'].flatMap(word => filesWith(texts, word))

/** The words of one page's main part, tags off. */
function wordsOf(texts: readonly PublishedText[], start: string): string {
  const page = texts.find(({ path }) => path.startsWith(start) && path.endsWith('index.html'))?.text ?? ''
  const main = /<main.*<\/main>/s.exec(page)?.[0] ?? ''
  return main
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()
}

describe('a mark that is not closed', () => {
  const open =
    'Unexpected `[` behind `:private` that does not close, expected `:private[…]{as=…}` in a line or `:::private{as=…}` around blocks'
  test.each<[string, Odd, string, string]>([
    [
      'in a line',
      { body: 'Seen by :private[Zqword of\nthe yard.\n\nThe next.' },
      `5:9 ${open}`,
      '[withheld] The next.',
    ],
    ['in a heading', { body: '## By :private[Zqword\n\nThe next.' }, `5:7 ${open}`, '[withheld] The next.'],
    [
      'in the text of a link',
      { body: '[by :private[Zqword](https://example.org/)\n\nThe next.' },
      '5:5 Unexpected `private` without `as`, expected `as` to be one of cost, source, people, place, identity',
      '[withheld] The next.',
    ],
    [
      'as a container',
      { body: 'Before.\n\n:::private{as=people}\nZqword' },
      '7:1 Unexpected end of `:::private`, expected a line `:::` that closes it',
      'Before. [withheld]',
    ],
    [
      'in the title',
      { title: '"By :private[Zqword"' },
      '2:12 Unexpected private mark that does not parse, expected one such as `:private[the plate]{as=identity}`',
      '[withheld]',
    ],
  ])('is an error %s, and its block is withheld', async (_where, odd, told, shown) => {
    const built = await read(odd)
    expect(built.findings.map(({ rule, line, column, message }) => [rule, `${line}:${column} ${message}`])).toEqual([
      ['directive', told],
    ])
    const texts = await publishedTexts(built, 'some')
    expect(leaks(texts)).toEqual([])
    expect(wordsOf(texts, 'sessions/2026')).toContain(shown)
  })
})

describe('a mark that is closed', () => {
  test.each<[string, Odd, string, string]>([
    ['in a heading', { body: '## By :private[Zqword]{as=people} alone' }, 'sessions/2026', 'By [withheld] alone'],
    [
      'in a link’s text',
      { body: 'So [says :private[Zqword]{as=people}](https://example.org/zqword).' },
      'sessions/2026',
      'So says [withheld].',
    ],
    [
      'around a link',
      { body: 'So :private[[Zqword](https://example.org/zqword)]{as=people} says.' },
      'sessions/2026',
      'So [withheld] says.',
    ],
    ['in a title', { title: '"With :private[Zqword]{as=people}"' }, 'sessions/2026', 'With [withheld]'],
    [
      'in a job without a name',
      { body: '- [ ] ask :private[Zqword]{as=people} about it' },
      'jobs/',
      'ask [withheld] about it',
    ],
  ])('takes its words out of everything %s', async (_where, odd, page, shown) => {
    const built = await read(odd)
    expect([built.findings, withheldNames(built.stated, ['some'])]).toEqual([[], []])
    const texts = await publishedTexts(built, 'some')
    expect(leaks(texts)).toEqual([])
    expect(wordsOf(texts, page)).toContain(shown)
  })
})

describe('a withheld name in what cannot be covered', () => {
  const marked = ':private[Zqword]{as=people} made it.'
  const another = 'write another name: in a name no mark is read'
  const told =
    'Unexpected `Zqword` in what the edition `some` would publish, expected it marked or in other words: it is withheld as people'
  test.each<[string, Odd, string, string | null]>([
    ['an identifier', { front: 'parts: { zqword-tank: { mass: 3 kg } }\n', body: marked }, '4:10', another],
    ['a measured path', { front: 'measurements: { zqword/length: 3 m }\n', body: marked }, '4:17', another],
    ['a job’s name', { body: `- [ ] ask :private[Zqword]{as=people} :job{#ask-zqword}` }, '5:1', null],
    ['a file’s name', { file: '2026-03-07-zqword', body: marked }, '1:1', null],
    ['the address of a picture', { body: `${marked}\n\n![A tank](../photos/zqword.jpg)` }, '7:1', null],
    ['a link to the heading that held it', { body: `## By ${marked}\n\n[to it](#by-zqword-made-it)` }, '7:1', null],
    ['the address of a link', { body: `${marked}\n\n[there](https://example.org/zqword)` }, '7:1', null],
  ])('refuses that edition and says the line: %s', async (_where, odd, place, mend) => {
    const built = await read(odd)
    const names = withheldNames(built.stated, ['some'])
    expect(names.map(({ message, mend: said, line, column }) => [message, `${line}:${column}`, said])).toEqual([
      [told, place, mend],
    ])
    expect(() => publicationOf(built, 'some')).toThrow('unmarked where the edition `some` would publish')
    expect(publicationOf(built, 'full').record.edition).toBe('full')
  })
})

describe('a picture or words that are evidence too', () => {
  test.each<[string, Odd]>([
    [
      'a picture within a private container',
      {
        body: ':::private{as=people}\n![Zqword by the tank](../photos/zqphoto.jpg)\n:::',
        evidence: '"photo:zqphoto.jpg"',
      },
    ],
    [
      'a picture within a private line',
      { body: 'So :private[![Zqword](../photos/zqphoto.jpg)]{as=place}.', evidence: '"photo:zqphoto.jpg"' },
    ],
    ['a receipt', { front: 'parts: { tank: { receipt: photos/zqphoto.jpg } }\n', evidence: '"photo:zqphoto.jpg"' }],
    [
      'a picture that a private word lists',
      {
        front: 'parts: { tank: { photos: [ ":private[photos/zqphoto.jpg]{as=cost}" ] } }\n',
        evidence: '"photo:zqphoto.jpg"',
      },
    ],
    [
      'a test marked in the list of evidence',
      {
        front: 'tests: [ { what: ":private[Zqword]{as=people}", result: pass } ]\n',
        evidence: '":private[test:Zqword]{as=people}"',
      },
    ],
  ])('is told as withheld, not by its name: %s', async (_what, odd) => {
    const built = await read(odd)
    expect(withheldNames(built.stated, ['some'])).toEqual([])
    expect(built.inspection.map(({ open }) => open)).toEqual([false])
    const texts = await publishedTexts(built, 'some')
    expect(leaks(texts)).toEqual([])
    expect(
      publicationOf(built, 'some').inspection.map(({ open, evidence }) => [
        open,
        evidence.map(({ ref, ok, lacks }) => [ref, ok, lacks]),
      ]),
    ).toEqual([[false, [['[withheld]', true, null]]]])
    expect(wordsOf(texts, 'inspection/')).toContain('withheld in this edition')
  })

  test('is told where the picture stands outside a mark as well', async () => {
    const body = ':::private{as=people}\n![Zqword](../photos/zqphoto.jpg)\n:::\n\n![The tank](../photos/zqphoto.jpg)'
    const texts = await publishedTexts(await read({ body, evidence: '"photo:zqphoto.jpg"' }), 'some')
    expect(filesWith(texts, 'zqword')).toEqual([])
    expect(wordsOf(texts, 'inspection/')).toContain('zqphoto.jpg')
  })
})

describe('a donor, where sources are withheld', () => {
  const donors = '{ zqword: { name: "Zqword 7 saloon", cost: £150 } }'
  test('is not told by the one word that names it either', async () => {
    const built = await read({
      donors,
      front: 'parts: { a: { name: "Zqword clock, wiped", from: zqword } }\n',
      body: 'The ZQWORD’s own clock.',
    })
    expect(withheldNames(built.stated, ['some'])).toEqual([])
    const texts = await publishedTexts(built, 'some')
    expect(leaks(texts)).toEqual([])
    expect(wordsOf(texts, 'sessions/2026')).toContain('The [withheld]’s own clock.')
    expect(wordsOf(texts, 'parts/a/')).toContain('[withheld] clock, wiped')
  })

  test('is an error where an identifier holds its name', async () => {
    const built = await read({ donors, front: 'parts: { zqword-clock: { mass: 1 kg } }\n' })
    expect(withheldNames(built.stated, ['some']).map(({ message, line, column }) => [message, line, column])).toEqual([
      [
        'Unexpected `Zqword` in what the edition `some` would publish, expected it marked or in other words: it is withheld as source',
        4,
        10,
      ],
    ])
  })

  test('keeps ordinary words of its name in the rest', async () => {
    const built = await read({ donors: '{ van: { name: "Old zqword van" } }', body: 'An old van and a Van.' })
    expect(wordsOf(await publishedTexts(built, 'some'), 'sessions/2026')).toContain('An old van and a Van.')
  })
})

describe('what an edition withholds', () => {
  test('is everything where a word of it is none, and the word is an error', async () => {
    const built = await read({
      editions: '{ some: { withhold: [cost, poeple] } }',
      body: ':private[Zqword]{as=people} for £77.',
    })
    expect(built.findings.map(({ rule, message }) => [rule, message])).toEqual([
      [
        'unknown-value',
        'Unexpected `poeple` for `editions/some/withhold/2`, expected `cost`, `source`, `people`, `place` or `identity`',
      ],
    ])
    const texts = await publishedTexts(built, 'some')
    expect([leaks(texts), filesWith(texts, '£77')]).toEqual([[], []])
  })

  test('is asked of an edition that build.md names only', async () => {
    const built = await read({})
    expect(() => publicationOf(built, 'other')).toThrow('Unexpected edition `other`, expected one that build.md names')
  })
})
