import { describe, expect, test } from 'vitest'
import { anchorName, pageAddress, relativeHref } from '../../src/pages/addresses.ts'
import { verdictAddress } from '../../src/pages/thing-addresses.ts'
import { folderName } from '../../src/record/folder-name.ts'

describe('addresses lead from a page to a place on another, from a disk too', () => {
  test.each([
    ['index.html', 'sessions/a/index.html', 'sessions/a/index.html'],
    ['sessions/a/index.html', 'index.html', '../../index.html'],
    ['sessions/a/index.html', 'sessions/b/index.html#q-4', '../b/index.html#q-4'],
    ['sessions/a/index.html', 'sessions/a/index.html#q-4', '#q-4'],
    ['checks/x/y/z/index.html', 'checks/x/index.html', '../../index.html'],
    ['parts/a/index.html', 'parts/50 % tank #2/index.html', '../50%20%25%20tank%20%232/index.html'],
    ['parts/a/index.html', 'styles/tokens.css', '../../styles/tokens.css'],
  ])('from %s to %s: %s', (from, to, href) => {
    expect(relativeHref(from, to)).toBe(href)
  })
})

describe('a name becomes one folder that stays where it belongs', () => {
  test.each([
    ['fuel-tank', 'fuel-tank'],
    ['../../etc', '~..~2f..~2fetc'],
    ['..', '~..'],
    ['', '~'],
    ['index.html', '~index.html'],
    ['a/b', 'a~2fb'],
    ['a\\b', 'a~5cb'],
    ['a~2fb', 'a~7e2fb'],
    ['tank & loom', 'tank & loom'],
    ['nul\u0000l', 'nul~00l'],
    ['dot.', '~dot.'],
  ])('%j → %s', (name, folder) => {
    expect(folderName(name)).toBe(folder)
  })

  test('the pages of two answers never share an address', () => {
    const addresses = [
      { check: 'requirement', subject: 'a/b', aspect: null },
      { check: 'requirement', subject: 'a,b', aspect: null },
      { check: 'requirement', subject: 'a', aspect: 'b' },
      { check: 'requirement', subject: 'a', aspect: null },
    ].map(verdictAddress)
    expect(addresses).toEqual([
      'checks/requirement/a,b/index.html',
      'checks/requirement/a,,b/index.html',
      'checks/requirement/a/b/index.html',
      'checks/requirement/a/index.html',
    ])
  })

  test('pages and anchors are named after their things', () => {
    expect(pageAddress('parts', 'fuel-tank')).toBe('parts/fuel-tank/index.html')
    expect(anchorName('m', 'circuit:fuel-pump/fuse.rating')).toBe('m-circuit_fuel-pump_fuse.rating')
  })
})
