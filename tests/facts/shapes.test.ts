import { describe, expect, test } from 'vitest'
import type { Shape } from '../../src/facts/fact.ts'
import { factsOf, figures, statedFront, told } from './stated.ts'

const volume = (line: string) => statedFront(`volumes:\n  fuel-tank:\n    ${line}`)
const expected =
  'expected a shape such as `box 860 x 380 x 300 mm`, `cylinder 300 x 860 mm` or `prism of [0,0] [520,0] [520,140] x 640 mm`'

/** A shape with its lengths in millimetres. */
function sizes(shape: Shape): unknown {
  const mm = (quantity: { si: number | null }): number => Math.round((quantity.si ?? Number.NaN) * 1e6) / 1e3
  if (shape.form === 'box') return ['box', mm(shape.length), mm(shape.width), mm(shape.height)]
  if (shape.form === 'cylinder') return ['cylinder', mm(shape.diameter), mm(shape.length)]
  return ['prism', shape.corners.map(([x, y]) => [mm(x), mm(y)]), mm(shape.length)]
}

describe('volumes in words', () => {
  test.each([
    ['outside: box 860 x 380 x 300 mm', [['box', 860, 380, 300]]],
    ['outside: box 860 × 380 × 300 mm', [['box', 860, 380, 300]]],
    ['outside: Box 86 cm x 380 mm x 300 mm', [['box', 860, 380, 300]]],
    ['outside: box 10 x 5 x 4 in', [['box', 254, 127, 101.6]]],
    ['outside: cylinder 300 x 860 mm', [['cylinder', 300, 860]]],
    [
      'outside: prism of [0,0] [520,0] [520,140] x 640 mm',
      [
        [
          'prism',
          [
            [0, 0],
            [520, 0],
            [520, 140],
          ],
          640,
        ],
      ],
    ],
    [
      'outside: prism of [0, 0] [52.5, 0] [52.5, -14] x 64 cm',
      [
        [
          'prism',
          [
            [0, 0],
            [525, 0],
            [525, -140],
          ],
          640,
        ],
      ],
    ],
    [
      'less: [ box 374 x 90 x 40 mm, cylinder 40 x 300 mm ]',
      [
        ['box', 374, 90, 40],
        ['cylinder', 40, 300],
      ],
    ],
    ['less: box 374 x 90 x 40 mm', [['box', 374, 90, 40]]],
    [
      'less: [ "prism of [0,0] [520,0] [520,140] x 640 mm" ]',
      [
        [
          'prism',
          [
            [0, 0],
            [520, 0],
            [520, 140],
          ],
          640,
        ],
      ],
    ],
  ])('`%s` is read', (line, shapes) => {
    const note = volume(line)
    expect(told(note)).toEqual([])
    const read = factsOf(note, 'property').flatMap(({ value }) => (value.type === 'shapes' ? value.shapes : []))
    expect(read.map(({ shape }) => sizes(shape))).toEqual(shapes)
  })

  test.each([
    [
      'outside: box 860 x 380 mm',
      `6:14-30 not-a-quantity Unexpected \`box 860 x 380 mm\` for \`volume:fuel-tank/outside\`, ${expected}`,
    ],
    [
      'outside: box 860 x 380 x 300',
      `6:14-33 not-a-quantity Unexpected \`box 860 x 380 x 300\` for \`volume:fuel-tank/outside\`, ${expected}`,
    ],
    [
      'outside: 860 x 380 x 300 mm',
      `6:14-32 not-a-quantity Unexpected \`860 x 380 x 300 mm\` for \`volume:fuel-tank/outside\`, ${expected}`,
    ],
    [
      'outside: box 860 mm by 380 mm by 300 mm',
      `6:14-44 not-a-quantity Unexpected \`box 860 mm by 380 mm by 300 mm\` for \`volume:fuel-tank/outside\`, ${expected}`,
    ],
    [
      'outside: sphere 300 mm',
      `6:14-27 not-a-quantity Unexpected \`sphere 300 mm\` for \`volume:fuel-tank/outside\`, ${expected}`,
    ],
    [
      'outside: prism of [0,0] [520,0] x 640 mm',
      `6:14-45 not-a-quantity Unexpected \`prism of [0,0] [520,0] x 640 mm\` for \`volume:fuel-tank/outside\`, ${expected}`,
    ],
    [
      'outside: prism of [0,0] [520] [520,140] x 640 mm',
      `6:14-53 not-a-quantity Unexpected \`prism of [0,0] [520] [520,140] x 640 mm\` for \`volume:fuel-tank/outside\`, ${expected}`,
    ],
    [
      'outside: cylinder 300 L',
      '6:23-28 dimension Unexpected `300 L` for `volume:fuel-tank/outside`, expected a length such as `860 mm`',
    ],
    ['wall: 3 L', '6:11-14 dimension Unexpected `3 L` for `volume:fuel-tank/wall`, expected a length such as `860 mm`'],
  ])('`%s` is told', (line, finding) => {
    expect(told(volume(line))).toEqual([finding])
  })

  test('the corners of a prism are figures in its unit, in the order written', () => {
    const note = volume('outside: prism of [0,0] [520,0] [520,140] x 640 mm')
    expect(figures(note).map(figure => figure.replace(' (volume volume:fuel-tank/outside)', ''))).toEqual([
      'q-1 0',
      'q-2 0',
      'q-3 520',
      'q-4 0',
      'q-5 520',
      'q-6 140',
      'q-7 640 mm',
    ])
    expect(factsOf(note, 'property')).toMatchObject([
      { value: { type: 'shapes', shapes: [{ figures: ['q-1', 'q-2', 'q-3', 'q-4', 'q-5', 'q-6', 'q-7'] }] } },
    ])
  })
})
