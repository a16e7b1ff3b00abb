import { describe, expect, test } from 'vitest'
import { checkLinks } from './link-check.ts'

const page = (path: string, body: string) => ({ path, content: `<html><body>${body}</body></html>` })

describe('the link check finds what leads nowhere', () => {
  test.each([
    ['a page that is there', '<a href="b/index.html">b</a>', []],
    ['an anchor that is there', '<a href="b/index.html#q-1">b</a>', []],
    ['its own anchor', '<p id="m">x</p><a href="#m">m</a>', []],
    ['the world', '<a href="https://example.org/">x</a>', []],
    ['a file that is not there', '<a href="c/index.html">c</a>', ['index.html: c/index.html leads to no file']],
    [
      'an anchor that is not there',
      '<a href="b/index.html#q-2">b</a>',
      ['index.html: b/index.html#q-2 leads to no anchor of its page'],
    ],
    ['a picture that is not there', '<img src="photos/x.jpg" alt="">', ['index.html: photos/x.jpg leads to no file']],
    [
      'a size of a picture that is not there',
      '<source srcset="index.html 480w, photos/x.webp 960w">',
      ['index.html: photos/x.webp leads to no file'],
    ],
    [
      'an address from the root',
      '<a href="/b/index.html">b</a>',
      ['index.html: /b/index.html leads out of the record'],
    ],
    [
      'a link that runs a script',
      '<a href="javascript:alert(1)">b</a>',
      ['index.html: javascript:alert(1) leads out of the record'],
    ],
    ['an anchor twice', '<p id="m">x</p><p id="m">y</p>', ['index.html: the anchor m stands twice']],
    ['an escaped address', '<a href="b&#47;index.html">b</a>', []],
  ])('%s', (_, body, faults) => {
    expect(checkLinks([page('index.html', body), page('b/index.html', '<p id="q-1">5 mm</p>')])).toEqual(faults)
  })
})
