import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { wireLook } from '../../src/wiring/wire-look.ts'

describe('the look of a wire', () => {
  // Codes of IEC 60757:2021, table 1.
  test.each([
    ['green/purple', 'green', 'violet', 'GNVT'],
    ['GN-VT', 'green', 'violet', 'GNVT'],
    ['GNYE', 'green', 'yellow', 'GNYE'],
    ['brown with white tracer', 'brown', 'white', 'BNWH'],
    ['black', 'black', null, 'BK'],
    ['slate', 'grey', null, 'GY'],
    ['light blue', 'light-blue', null, null],
    ['light pink/red', 'pink', 'red', null],
    ['puce', 'unknown', null, null],
    ['', null, null, null],
  ])('of %s is ground %s, band %s, code %s, and the words stay as written', (written, ground, band, code) => {
    expect(wireLook(written)).toEqual({ written, ground, band, code })
  })

  test('has a class in the style sheets for every colour that is read', () => {
    const css = ['wires', 'wiring'].map(name => readFileSync(`site/styles/${name}.css`, 'utf8')).join('\n')
    const names = [
      'black',
      'brown',
      'red',
      'orange',
      'yellow',
      'green',
      'blue',
      'violet',
      'grey',
      'white',
      'pink',
      'gold',
      'turquoise',
      'silver',
      'tan',
      'beige',
      'cream',
      'natural',
      'clear',
      'light blue',
      'light green',
      'light grey',
      'dark blue',
      'dark green',
      'dark grey',
      'puce',
    ]
    expect(names.filter(name => !new RegExp(`\\.w\\.${wireLook(name).ground}\\b`).test(css))).toEqual([])
  })
})
