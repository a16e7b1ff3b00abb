import { describe, expect, test } from 'vitest'
import { frontOf, plain, told } from './note-of.ts'

const comma = (whole: string, value: string) =>
  `Unexpected comma in \`${whole}\`, expected quotes: in braces the comma ends the value at \`${value}\`.`

describe('a value in braces that lost part of its text at a comma', () => {
  const lost: [string, string, unknown, string[]][] = [
    [
      'words',
      'spend:\n  - { what: primer, grey, cost: £31 }',
      [
        [
          'spend',
          [
            [
              ['what', 'primer, grey'],
              ['cost', '£31'],
            ],
          ],
        ],
      ],
      [`flow-comma 3:13-3:19 ${comma('primer, grey', 'primer')} => "primer, grey"`],
    ],
    [
      'a number with a comma for thousands',
      'a: { cost: £1,250 }',
      [['a', [['cost', '£1,250']]]],
      [`flow-comma 2:12-2:14 ${comma('£1,250', '£1')} => "£1,250"`],
    ],
    [
      'twice',
      'a: { what: left, right, rear, cost: 3 }',
      [
        [
          'a',
          [
            ['what', 'left, right, rear'],
            ['cost', '3'],
          ],
        ],
      ],
      [`flow-comma 2:12-2:16 ${comma('left, right, rear', 'left')} => "left, right, rear"`],
    ],
    [
      'over a line end',
      'a: { what: left,\n    right }',
      [['a', [['what', 'left, right']]]],
      [`flow-comma 2:12-2:16 ${comma('left, right', 'left')} => "left, right"`],
    ],
    [
      'behind quotes',
      'a: { what: "left", right }',
      [['a', [['what', 'left']]]],
      [`flow-comma 2:12-2:18 ${comma('left, right', 'left')} => "left, right"`],
    ],
    [
      'with a quote mark in it',
      'a: { what: 3" pipe, grey }',
      [['a', [['what', '3" pipe, grey']]]],
      [`flow-comma 2:12-2:19 ${comma('3" pipe, grey', '3" pipe')} => '3" pipe, grey'`],
    ],
  ]
  test.each(lost)('%s: is told at the value cut short, and read on', (_, yaml, front, findings) => {
    expect(told(frontOf(yaml).findings)).toEqual(findings)
    expect(plain(frontOf(yaml).front)).toEqual(front)
  })

  const whole: [string, string][] = [
    ['quotes', 'a: { what: "primer, grey", cost: £31 }'],
    ['a list in brackets', 'a: { route: [left, right], cost: £31 }'],
    ['a comma outside braces', 'a: primer, grey'],
    ['a last comma', 'a: { b: 1, c: 2, }'],
  ]
  test.each(whole)('%s: nothing is lost', (_, yaml) => {
    expect(told(frontOf(yaml).findings)).toEqual([])
  })
})

const comment = (words: string) =>
  `Unexpected \`${words}\`, which YAML takes for a comment, expected the value in quotes, or a blank behind the \`#\` of a comment.`

describe('a hash that YAML takes for a comment', () => {
  const taken: [string, string, unknown, string[]][] = [
    [
      'before a digit',
      'number: T-60 #2\nb: 1',
      [
        ['number', 'T-60'],
        ['b', '1'],
      ],
      [`hash-comment 2:14-2:16 ${comment('#2')} => "T-60 #2"`],
    ],
    [
      'before a letter, with more words',
      'a: body #Ä red  \nb: 1',
      [
        ['a', 'body'],
        ['b', '1'],
      ],
      [`hash-comment 2:9-2:15 ${comment('#Ä red')} => "body #Ä red"`],
    ],
    ['the whole value', 'a: #9005', [['a', null]], [`hash-comment 2:4-2:9 ${comment('#9005')} => "#9005"`]],
    [
      'behind a value in quotes',
      'a: "paint" #9005',
      [['a', 'paint']],
      [`hash-comment 2:12-2:17 ${comment('#9005')} => "paint #9005"`],
    ],
    ['in a list', 'a:\n  - wire #4', [['a', ['wire']]], [`hash-comment 3:10-3:12 ${comment('#4')} => "wire #4"`]],
    [
      'in brackets over two lines',
      'a: [x, y #2\n  , z]',
      [['a', ['x', 'y', 'z']]],
      [`hash-comment 2:10-2:12 ${comment('#2')} => "y #2"`],
    ],
    [
      'with the closing brace behind it',
      'a: { number: T-60 #2, cost: £5 }\nb: 1',
      [['b', '1']],
      [
        'front-matter 2:19-2:21 Unexpected `#2, cost: £5 }`, which YAML takes for a comment with the closing `}` in it, expected the value in quotes. => "T-60 #2"',
      ],
    ],
  ]
  test.each(taken)('%s: is told at the hash', (_, yaml, front, findings) => {
    expect(told(frontOf(yaml).findings)).toEqual(findings)
    expect(plain(frontOf(yaml).front)).toEqual(front)
  })

  const real: [string, string][] = [
    ['a blank behind it', 'a: 1 # from the drawing'],
    ['a line of its own', '#length: 860 mm\na: 1\n  #b: 2'],
    ['in quotes', 'a: "T-60 #2"\nb: \'x #3\''],
    ['within a word', 'a: T-60#2'],
    ['in a block', 'a: |\n  x #2\n  #3'],
    ['marks of other kinds', 'a: 1 #--- below ---'],
  ]
  test.each(real)('%s: is left in peace', (_, yaml) => {
    expect(told(frontOf(yaml).findings)).toEqual([])
  })
})
