import { describe, expect, test } from 'vitest'
import { figureColumns, typeset } from '../../src/pages/typeset.ts'

const marked = (text: string): string =>
  typeset(text)
    .map(run => (run.unit ? `[${run.text}]` : run.text))
    .join('')

describe('a figure is set with its units apart', () => {
  // The space before a unit is U+202F, without a break (ISO 80000-1, 7.1.4 asks for a space).
  test.each([
    ['860 mm ± 2 mm', '860\u202f[mm] ±\u202f2\u202f[mm]'],
    ['about 64 litres', 'about 64\u202f[litres]'],
    ['7 3/8 in', '7 3/8\u202f[in]'],
    ['7-3/8"', '7-3/8["]'],
    ['2.5 mm²', '2.5\u202f[mm²]'],
    ['2.5 mm2', '2.5\u202f[mm2]'],
    ['34 N·m', '34\u202f[N·m]'],
    ['25 lb ft', '25\u202f[lb ft]'],
    ['6 to 7 in', '6 to 7\u202f[in]'],
    ['860 × 380 × 300 mm', '860 × 380 × 300\u202f[mm]'],
    ['80 °C', '80\u202f[°C]'],
    ['M8 × 1.25', 'M8 × 1.25'],
    ['12 AWG', '12\u202f[AWG]'],
    ['£184.00', '£184.00'],
    ['60/55W', '60/55[W]'],
    ['5 %', '5\u202f[%]'],
    ['seven and three eighths inches', 'seven and three eighths inches'],
  ])('%s', (text, expected) => {
    expect(marked(text)).toBe(expected)
  })

  test.each(['860 mm ± 2 mm', '6\' 2¾"', '12 mm +0/-1', '4/0 AWG', 'between 6 and 7 in', '0.98 kg/L', '1 200 mm'])(
    '%s loses no character',
    text => {
      expect(
        typeset(text)
          .map(run => run.text)
          .join('')
          .replaceAll('\u202f', ' '),
      ).toBe(text)
    },
  )
})

describe('a figure comes apart into number, unit and tolerance where it can', () => {
  test.each([
    ['860 mm ± 2 mm', ['860', 'mm', '±\u202f2 mm']],
    ['7 3/8 in', ['7 3/8', 'in', '']],
    ['1,260 mm', ['1,260', 'mm', '']],
    ['18 mΩ/m', ['18', 'mΩ/m', '']],
    ['4.30', ['4.30', '', '']],
    ['−560 mm', ['−560', 'mm', '']],
    ['-560 mm', ['-560', 'mm', '']],
    ['£184.00', ['£184.00', '', '']],
    ['about 64 litres', ['about 64 litres', '', '']],
    ['6 to 7 in', ['6 to 7 in', '', '']],
    ['860 × 380 × 300 mm', ['860 × 380 × 300 mm', '', '']],
    ['M8 × 1.25', ['M8 × 1.25', '', '']],
  ])('%s', (text, [number, unit, tolerance]) => {
    expect(figureColumns(text)).toMatchObject({ number, unit, tolerance })
  })
})
