import { describe, expect, test } from 'vitest'
import { stated } from './stated.ts'

describe('figures in private marks', () => {
  const privacy = (text: string): unknown[] =>
    stated(text).figures.map(({ quantity, privacy: kinds }) => [quantity.text, kinds ?? []])

  test('a figure says in which kinds of mark it stands, whoever named it', () => {
    const text =
      '---\ntitle: Tank\nparts: { lid: { why: "3 mm short, :private[4 mm by her rule]{as=people}" } }\n---\n:::private{as=place}\nIt is :measure[860 mm]{of="fuel-tank/length"}, :private[5 mm]{as=people} off.\n\n| Part | Cost |\n|-|-|\n| Clip | £4 |\n:::\n\nAnd 6 mm.\n'
    expect(privacy(text)).toEqual([
      ['3 mm', []],
      ['4 mm', ['people']],
      ['860 mm', ['place']],
      ['5 mm', ['people', 'place']],
      ['£4', ['place']],
      ['6 mm', []],
    ])
  })

  test('a figure in a text or a block whose mark did not parse is for the full edition only', () => {
    const all = ['cost', 'source', 'people', 'place', 'identity']
    expect(
      privacy('---\ntitle: Tank\nparts: { lid: { why: "3 mm :private[short]" } }\n---\nA :private[5 mm] lip.\n'),
    ).toEqual([
      ['3 mm', all],
      ['5 mm', all],
    ])
  })

  test('the rating of a connector in a private block is private too', () => {
    expect(
      privacy(
        '---\ntitle: Tank\n---\n::::private{as=source}\n:::connector{#stalk rating="10 A"}\n| Pin | Wire |\n|-|-|\n| 1 | 1 mm² red |\n:::\n::::\n',
      ),
    ).toEqual([
      ['10 A', ['source']],
      ['1 mm²', ['source']],
    ])
  })
})
