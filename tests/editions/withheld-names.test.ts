import { describe, expect, test } from 'vitest'
import { withheldNames } from '../../src/editions/withheld-names.ts'
import type { Finding } from '../../src/findings/finding.ts'
import { readBuild } from './published-bytes.ts'

const head = (more = ''): string => `---
title: Small build
${more}editions:
  public: { withhold: [people, place, identity] }
  buyer: { withhold: [people] }
  inspector: { withhold: [cost] }
---
What it is.
`

interface Texts {
  readonly front?: string
  readonly body?: string
  readonly build?: string
  readonly file?: string
  readonly more?: Readonly<Record<string, string>>
}

/** Findings of a build of one note. Its line 5 is the first of `front`; without any, line 6 is the first of `body`. */
async function found(texts: Texts, editions = ['public']): Promise<Finding[]> {
  const { front = '', body = '', build = '', file = '2026-03-07-first', more = {} } = texts
  const built = await readBuild({
    'content/build.md': head(build),
    [`content/sessions/${file}.md`]: `---\ntitle: First\ndate: 2026-03-07\nhours: 3\n${front}---\n${body}\n`,
    ...more,
  })
  return withheldNames(built.stated, editions)
}

const marked = ':private[Bob Smith]{as=people} held it.'
const places = (findings: readonly Finding[]): string[] =>
  findings.map(({ line, column, endColumn }) => `${line}:${column}-${endColumn}`)

describe('a withheld word that stands unmarked', () => {
  test('is told at the word, with the editions, the mark that it wants and where it is marked', async () => {
    const findings = await found({ body: `${marked}\n\nThen Bob Smith left.` }, [
      'public',
      'buyer',
      'inspector',
      'full',
    ])
    expect(findings).toEqual([
      {
        rule: 'withheld-name',
        severity: 'error',
        file: 'content/sessions/2026-03-07-first.md',
        line: 8,
        column: 6,
        endLine: 8,
        endColumn: 15,
        message:
          'Unexpected `Bob Smith` in what the editions `public` and `buyer` would publish, expected it marked or in other words: it is withheld as people',
        mend: ':private[Bob Smith]{as=people}',
        about: [],
        related: [
          {
            file: 'content/sessions/2026-03-07-first.md',
            line: 6,
            column: 1,
            endLine: 6,
            endColumn: 31,
            message: 'It is marked as people here',
          },
        ],
      },
    ])
  })

  test.each([
    ['in a heading', { body: `${marked}\n\n## Bob Smith` }, ['8:4-13']],
    ['in a cell of a table', { body: `${marked}\n\n| Who | What |\n|---|---|\n| x | Bob Smith |` }, ['10:7-16']],
    ['in the text of a link', { body: `${marked}\n\n[by Bob Smith](https://example.org)` }, ['8:5-14']],
    ['in the address of a link', { body: `${marked}\n\n[him](https://example.org/bob-smith)` }, ['8:1-37']],
    ['in the title of a link', { body: `${marked}\n\n[him](https://example.org "Bob Smith")` }, ['8:1-39']],
    ['in an alternative text', { body: `${marked}\n\n![Bob Smith](../photos/a.jpg)` }, ['8:1-30']],
    ['in the name of a photograph', { body: `${marked}\n\n![him](../photos/BobSmith2.jpg)` }, ['8:1-32']],
    ['in code', { body: `${marked}\n\n\`\`\`\nBob Smith\n\`\`\`` }, ['8:1-4']],
    ['in raw HTML', { body: `${marked}\n\nx <b title="Bob Smith">y</b>` }, ['8:13-22']],
    ['in a footnote', { body: `${marked}[^1]\n\n[^1]: Bob Smith` }, ['8:7-16']],
    ['set partly in bold', { body: `${marked}\n\n**Bob** Smith` }, ['8:3-12']],
    ['over a line end', { body: `${marked}\n\nwith Bob\nSmith` }, ['8:6-15']],
    [
      'in the identifier of a part',
      { front: 'parts: { bob-smith-seat: { mass: 3 kg } }\n', body: marked },
      ['5:10-19'],
    ],
    ['in the identifier of a circuit', { front: 'circuits: { bobsmith: { load: 7 A } }\n', body: marked }, ['5:13-21']],
    ['in a measured path', { front: 'measurements: { bob-smith: { height: 2 m } }\n', body: marked }, ['5:17-26']],
    [
      'in words of front matter',
      { front: 'tests: [ { what: seen by Bob Smith, result: pass } ]\n', body: marked },
      ['5:26-35'],
    ],
    ['in quotes', { front: 'tests: [ { what: "seen by Bob Smith", result: pass } ]\n', body: marked }, ['5:27-36']],
    ['in a job', { body: `${marked}\n\n- [ ] ring Bob Smith :job{#ring}` }, ['8:12-21']],
    ['in the identifier of a job', { body: `${marked}\n\n- [ ] ring him :job{#bob-smith}` }, ['8:1-32']],
    [
      'where a name of another thing is read',
      { front: 'parts: { seat: { replaces: ":private[bob-smith]{as=people}" } }\n' },
      ['5:29-59'],
    ],
    ['in the name of the file', { file: '2026-03-07-bob-smith', body: marked }, ['1:1-4']],
  ])('is found %s', async (_where, texts, expected) => {
    const at = places(await found(texts))
    expect(at).toEqual(expected)
  })

  test.each([
    ['in other capitals', 'Bob', 'with BOB'],
    ['with the genitive', 'Bob', 'Bob’s seat'],
    ['joined by a hyphen', 'Bob Smith', 'the bob-smith seat'],
    ['joined', 'Bob Smith', 'the bobsmith seat'],
    ['with a number behind it', 'Bob', 'bob2 was there'],
    ['composed, where it is marked decomposed', 'Zoe\u0308', 'with Zo\u00eb'],
    ['decomposed, where it is marked composed', 'Zo\u00eb', 'with Zoe\u0308'],
    ['without its accents', 'Zo\u00eb', 'with Zoe'],
    ['in full width', 'Bob', 'with Ｂｏｂ'],
    ['in letters of another script that look alike', 'Pavel', 'with \u0420\u0430v\u0435l'],
    ['with a joiner that nobody sees', 'Bob', 'with Bo\u200db'],
    ['with a soft hyphen', 'Bob', 'with Bo\u00adb'],
    ['from right to left, with marks of direction', 'דוד', 'עם \u200fדוד\u200f היה'],
    ['in a script without blanks', '田中', 'これは田中さんの工場'],
    ['with a sharp s', 'Strauß', 'with STRAUSS'],
    ['with a dotless i', 'Işık', 'with ISIK'],
  ])('is found %s', async (_how, word, text) => {
    expect(await found({ body: `:private[${word}]{as=people} came.\n\nThen ${text}.` })).toHaveLength(1)
  })

  test.each([
    ['within another word', 'Al', 'the alternator and the metal'],
    ['with letters behind it', 'Bob', 'a bobbin'],
    ['within another word of another script', 'דוד', 'דודים'],
    ['as a single letter', 'J', 'plan J and j'],
    ['as a number within another', '12', '512 mm and 120 mm'],
    ['where the word is split by others', 'Bob Smith', 'Bob and Smith'],
  ])('is not found %s', async (_how, word, text) => {
    expect(await found({ body: `:private[${word}]{as=people} came.\n\nThen ${text}.` })).toEqual([])
  })

  test('is not found where it is marked again, in any note', async () => {
    expect(
      await found({ body: `${marked}\n\n:private[**Bob** Smith]{as=people} and :private[Bob Smith]{as=place}` }),
    ).toEqual([])
  })

  test('is not sought where it stands in a block only', async () => {
    expect(await found({ body: ':::private{as=people}\nBob Smith\n:::\n\nBob Smith' })).toEqual([])
  })

  test('is told for the editions that withhold it and for no other', async () => {
    const texts = { body: ':private[Moor Lane]{as=place}\n\nMoor Lane' }
    expect(await found(texts, ['buyer', 'inspector', 'full'])).toEqual([])
    expect(await found(texts, ['public'])).toHaveLength(1)
  })

  test.each([
    ['identity, however it is spaced', 'identity: { plate: AB12 XYZ }\n', 'It wore AB 12-xyz then.', 1],
    ['identity in another note', 'identity: { chassis: CH4417 }\n', 'CH4417 is stamped there.', 1],
    ['identity that says there is none', 'identity: { plate: none yet }\n', 'There is none yet.', 0],
  ])('counts %s', async (_what, build, body, count) => {
    expect(await found({ build, body })).toHaveLength(count)
  })

  test('counts the serial number of a part', async () => {
    expect(await found({ front: 'parts: { pump: { serial: KX-7781 } }\n', body: 'The pump is kx7781.' })).toHaveLength(
      1,
    )
  })

  test('is found in the inspection points and in build.md', async () => {
    const more = { 'content/inspection.yaml': 'points: { one: { ask: Does Bob Smith hold it? } }\n' }
    const build = 'summary: made with Bob Smith\nsystems: { fuel: Fuel of Bob Smith }\n'
    const files = (await found({ body: marked, more, build })).map(({ file }) => file)
    expect(files.sort()).toEqual(['content/build.md', 'content/build.md', 'content/inspection.yaml'])
  })
})
