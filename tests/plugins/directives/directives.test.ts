import remarkDirective from 'remark-directive'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { describe, expect, test } from 'vitest'
import directives from '../../../plugins/directives/index.ts'
import { bare, plain, run } from '../chain.ts'
import { nodesOf, outline } from '../nodes-of.ts'

const alone = bare().use(directives).freeze()

describe('a name that is no directive stays as typed', () => {
  const words = [
    'result:pass',
    'at 12:30 and 7:05',
    'red:black',
    'red:black[x]{a=b}',
    'ratio 1:30[a *b* c]{.d} end',
    '::foo',
    '::foo[a *b*]{c="&amp; \\* d"}',
    ':::foo\ntext\n:::',
    ':::foo[label *x*]{#a}\n\n- one\n- two\n\n:::\n\nafter',
    '::::foo\n:::bar\n\ntext\n\n:::\n::::',
    'the:connector, two:jobs, a:measure, dark:mark',
    'Owner: private',
    'a \\:private[x]{as=place} b',
    '`:private[x]`',
    '> quoted :foo[two\n> lines]{a=b\n> c=d} end',
    '| a:b | c:d[e] |\n|-|-|\n| 1:2 | x |',
    '# head:ing 12:30',
    'https://example.org:80/a:private and <https://example.org/:private[x]>',
  ]
  test.each(words)('%j parses as it does without directives', text => {
    const { tree, messages } = run(alone, text)
    expect(tree).toEqual(plain.parse(text))
    expect(messages).toEqual([])
  })
})

describe('a whole mark is left to its plugin', () => {
  const marks = [
    [':private[the plate]{as=identity}', 'textDirective'],
    [':measure[860 mm]{of="fuel-tank/length"}', 'textDirective'],
    ['- [ ] seal :job{#seal before=road}', 'textDirective'],
    [':::private{as=place}\nwords\n:::', 'containerDirective'],
    [':::connector{#a}\nwords\n:::', 'containerDirective'],
    ['::::private{as=place}\n:::connector{#a}\nwords\n:::\n::::', 'containerDirective'],
    ['> :::private{as=place}\n> words\n> :::', 'containerDirective'],
    ['- :::private{as=place}\n  words\n  :::', 'containerDirective'],
    [':::private{as=place}\n:::', 'containerDirective'],
    [':::private{as=place}\n> words\n:::', 'containerDirective'],
    [':private[a [b] c]{as=place}(d)', 'textDirective'],
  ] as const
  test.each(marks)('%j', (text, type) => {
    const { tree, messages } = run(alone, text)
    expect(messages).toEqual([])
    expect(nodesOf(tree, type).length).toBeGreaterThan(0)
    expect(nodesOf(tree, 'privateBlock')).toEqual([])
    expect(tree).toEqual(bare.parse(text))
  })
})

const inLine = '`:private[…]{as=…}` in a line or `:::private{as=…}` around blocks'
const kinds = 'expected `as` to be one of cost, source, people, place, identity'

describe('a mark that failed is told at its colon, and its block is withheld', () => {
  const failures: [text: string, message: string][] = [
    ['a :private b', '1:3-1:11 directive Unexpected `:private` without a label, expected `:private[…]{as=…}`'],
    [':private[]{as=place}', '1:1-1:9 directive Unexpected `:private` without a label, expected `:private[…]{as=…}`'],
    ['a :private[x] b', `1:3-1:11 directive Unexpected \`private\` without \`as\`, ${kinds}`],
    ['a :private[x]{as=plaice} b', `1:3-1:11 directive Unexpected \`as=plaice\` of \`private\`, ${kinds}`],
    ['a :private[x]{as=Place} b', `1:3-1:11 directive Unexpected \`as=Place\` of \`private\`, ${kinds}`],
    [':::private\nx\n:::', `1:1-1:11 directive Unexpected \`private\` without \`as\`, ${kinds}`],
    ['a :privat[x]{as=place}', '1:3-1:10 directive Unexpected directive `privat`, expected `private`'],
    ['a :Private[x]{as=place}', '1:3-1:11 directive Unexpected directive `Private`, expected `private`'],
    ['a :pirvate[x]{as=place}', '1:3-1:11 directive Unexpected directive `pirvate`, expected `private`'],
    [':mesure[5 mm]{of="a/b"}', '1:1-1:8 directive Unexpected directive `mesure`, expected `measure`'],
    [':jobb{#a}', '1:1-1:6 directive Unexpected directive `jobb`, expected `job`'],
    ['::mark[2]{at="1%,1%"}', '1:1-1:7 directive Unexpected `::mark`, expected `:mark[2]{at="40%,25%"}` in a line'],
    [':::conector{#a}\nx\n:::', '1:1-1:12 directive Unexpected directive `conector`, expected `connector`'],
    [':::privat{as=place}\nx\n:::', '1:1-1:10 directive Unexpected directive `privat`, expected `private`'],
    ['::private[x]{as=place}', `1:1-1:10 directive Unexpected \`::private\`, expected ${inLine}`],
    [
      ':connector[x]{#a}',
      '1:1-1:11 directive Unexpected `:connector`, expected `:::connector{#identifier}` around a pin table',
    ],
    [
      '::: private\nx\n:::',
      '1:1-1:4 directive Unexpected blank behind `:::`, expected its name at once, such as `:::private{as=place}`',
    ],
    [
      ':::private{as=place}\nx',
      '1:1-1:11 directive Unexpected end of `:::private`, expected a line `:::` that closes it',
    ],
    [
      '::::private{as=place}\nx\n:::',
      '1:1-1:12 directive Unexpected end of `::::private`, expected a line `::::` that closes it',
    ],
    [
      '> :::private{as=place}\n> x',
      '1:3-1:13 directive Unexpected end of `:::private`, expected a line `:::` that closes it',
    ],
    [
      ':::private{as=place}\nx\n:::\n:::',
      '4:1-4:4 directive Unexpected `:::` that closes nothing, expected one closing fence for each container',
    ],
    [
      'a :private[x]{as="pl} b',
      `1:3-1:11 directive Unexpected \`{\` behind \`:private\` that does not close, expected ${inLine}`,
    ],
    [
      'a :private[x] {as=place} b',
      `1:3-1:11 directive Unexpected \`{\` behind \`:private\` that does not close, expected ${inLine}`,
    ],
    [
      'a :private[x{as=place} b',
      `1:3-1:11 directive Unexpected \`[\` behind \`:private\` that does not close, expected ${inLine}`,
    ],
    [
      ':measure[5 mm]{of="a} b',
      '1:1-1:9 directive Unexpected `{` behind `:measure` that does not close, expected `:measure[…]{of="thing/property"}` in a line',
    ],
    [
      ':::private{as="pl}\nx\n:::',
      '1:1-1:11 directive Unexpected `:::private` that did not parse, expected `:::private{…}` alone on its line',
    ],
    [
      ':::private{as=place} words\nx\n:::',
      '1:1-1:11 directive Unexpected `:::private` that did not parse, expected `:::private{…}` alone on its line',
    ],
    [
      'a ::private[x]{as=place}',
      '1:3-1:12 directive Unexpected `::private` that did not parse, expected `:private[…]{…}`',
    ],
    [
      'a :private:[x]{as=place}',
      '1:3-1:11 directive Unexpected `:private` that did not parse, expected `:private[…]{…}`',
    ],
    [
      '![a :private[x]{as=place}](b.png)',
      '1:5-1:13 directive Unexpected `:private` in an alternative text or title, expected it outside, where it is read',
    ],
    [
      '![a](b.png ":private[x]{as=place}")',
      '1:13-1:21 directive Unexpected `:private` in an alternative text or title, expected it outside, where it is read',
    ],
    [
      '[a](b.md ":private[x]{as=place}")',
      '1:11-1:19 directive Unexpected `:private` in an address or title, expected it outside, where it is read',
    ],
    [
      '<div>\n:private[x]{as=place}\n</div>',
      '2:1-2:9 directive Unexpected `:private` in raw HTML, expected it outside, where it is read',
    ],
    [
      '| a | b |\n|-|-|\n| :private[x | y]{as=place} | z |',
      `3:3-3:11 directive Unexpected \`[\` behind \`:private\` that does not close, expected ${inLine}`,
    ],
  ]
  test.each(failures)('%j', (text, message) => {
    const { tree, messages } = run(alone, text)
    expect(messages).toEqual([message])
    expect(
      tree.children.flatMap(child =>
        child.type === 'privateBlock' ? child.as : nodesOf(child, 'privateBlock').map(block => block.as),
      ),
    ).toEqual(['broken'])
    expect(nodesOf(tree, 'textDirective')).toEqual([])
    expect(nodesOf(tree, 'leafDirective')).toEqual([])
  })

  test('each failed mark of a note has its own message', () => {
    const { tree, messages } = run(alone, 'a :private b :privat[c]\n\nfine\n\n:jobs[x]')
    expect(messages.map(message => message.split(' ')[0])).toEqual(['1:3-1:11', '1:14-1:21', '5:1-5:6'])
    expect(outline(tree)).toEqual([
      'root',
      '  privateBlock broken',
      '    paragraph',
      '      text "a :private b :privat[c]"',
      '  paragraph',
      '    text "fine"',
      '  privateBlock broken',
      '    paragraph',
      '      text ":jobs[x]"',
    ])
  })
})

describe('what is withheld around a broken container', () => {
  const outlines: [what: string, text: string, lines: string[]][] = [
    [
      'an opening with a blank reaches to its closing fence',
      '::: private\nsecret\n\nmore\n\n:::\n\nopen',
      [
        'root',
        '  privateBlock broken',
        '    paragraph',
        '      text "::: private\\nsecret"',
        '    paragraph',
        '      text "more"',
        '    paragraph',
        '      text ":::"',
        '  paragraph',
        '    text "open"',
      ],
    ],
    [
      'an opening that is never closed reaches to the end',
      'open\n\n::: private\nsecret\n\nmore',
      [
        'root',
        '  paragraph',
        '    text "open"',
        '  privateBlock broken',
        '    paragraph',
        '      text "::: private\\nsecret"',
        '    paragraph',
        '      text "more"',
      ],
    ],
    [
      'a container closed twice is withheld to the second fence',
      ':::private{as=place}\na\n:::\n\nsecret\n\n:::\n\nopen',
      [
        'root',
        '  privateBlock broken',
        '    containerDirective',
        '      paragraph',
        '        text "a"',
        '    paragraph',
        '      text "secret"',
        '    paragraph',
        '      text ":::"',
        '  paragraph',
        '    text "open"',
      ],
    ],
    [
      'an unknown container inside a private one closes it, and its own fence closes nothing',
      ':::private{as=place}\n:::foo\n\na\n\n:::\n\nsecret\n\n:::\n\nopen',
      [
        'root',
        '  privateBlock broken',
        '    containerDirective',
        '      paragraph',
        '        text ":::foo"',
        '      paragraph',
        '        text "a"',
        '    paragraph',
        '      text "secret"',
        '    paragraph',
        '      text ":::"',
        '  paragraph',
        '    text "open"',
      ],
    ],
    [
      'an item of a list is withheld by itself',
      '- a :private b\n- c',
      [
        'root',
        '  list',
        '    listItem',
        '      privateBlock broken',
        '        paragraph',
        '          text "a :private b"',
        '    listItem',
        '      paragraph',
        '        text "c"',
      ],
    ],
    [
      'a container of a near name keeps its words and its fences',
      ':::Private[the *yard*]{as=place}\n\n> secret\n\n:::',
      [
        'root',
        '  privateBlock broken',
        '    paragraph',
        '      text ":::Private[the "',
        '      emphasis',
        '        text "yard"',
        '      text "]{as=place}"',
        '    blockquote',
        '      paragraph',
        '        text "secret"',
        '    paragraph',
        '      text ":::"',
      ],
    ],
    [
      'a fence in a lazy line of a list closes the unknown container around the list',
      ':::foo\ntext\n\n- a\n:::\n\nopen',
      [
        'root',
        '  paragraph',
        '    text ":::foo\\ntext"',
        '  list',
        '    listItem',
        '      paragraph',
        '        text "a\\n:::"',
        '  paragraph',
        '    text "open"',
      ],
    ],
  ]
  test.each(outlines)('%s', (_, text, lines) => {
    expect(outline(run(alone, text).tree)).toEqual(lines)
  })
})

test('positions of words that were put back are those of the file', () => {
  const { tree } = run(alone, '> a :privat[b *c*]{as=place} d')
  expect(
    nodesOf(tree, 'text').map(({ value, position }) => [value, position?.start.offset, position?.end.offset]),
  ).toEqual([
    ['a :privat[b ', 2, 14],
    ['c', 15, 16],
    [']{as=place} d', 17, 30],
  ])
})

test('a chain without remark-directive is refused with the mend', () => {
  expect(() => unified().use(remarkParse).use(directives).freeze()).toThrow(
    'Unexpected chain without remark-directive, expected it before the plugin directives',
  )
  expect(() => unified().use(remarkParse).use(remarkDirective).use(directives).freeze()).not.toThrow()
})
