import { describe, expect, test } from 'vitest'
import { bindLeaf, placesOf } from '../../src/paper/bind-leaf.ts'
import { chaptersOf } from '../../src/paper/chapters.ts'
import { readLeaf } from '../../src/paper/leaf.ts'

const page = (main: string, look = ''): string =>
  `<!doctype html><html lang="en-GB"><head></head><body${look}><nav>bar</nav><main class="sheet" id="main">${main}</main><footer>foot</footer></body></html>`

const leaves = [
  readLeaf('index.html', page('<h1>Cart</h1>')),
  readLeaf('parts/index.html', page('<h1>Parts</h1><h2 id="on">On it</h2>')),
  readLeaf('parts/a&b, c/index.html', page('<h1>A</h1>')),
]

function bound(main: string): string {
  const leaf = readLeaf('sessions/one/index.html', page(`<h1>One</h1>${main}`))
  const html = bindLeaf(leaf, 1, placesOf([...leaves, leaf]))
  const [, inner = html] =
    /^<section class="leaf deep-1"><div class="sheet"><h2 id="leaf-3" class="h1">One<\/h2>(.*)<\/div><\/section>\n$/s.exec(
      html,
    ) ?? []
  return inner
}

describe('a page within the document', () => {
  test.each([
    ['a link to a page', '<a href="../../parts/index.html">p</a>', '<a href="#leaf-1">p</a>'],
    ['a link to an anchor', '<a href="../../parts/index.html#on">p</a>', '<a href="#a1-0">p</a>'],
    [
      'an anchor that is not there leads to its page',
      '<a href="../../parts/index.html#off">p</a>',
      '<a href="#leaf-1">p</a>',
    ],
    ['a name with signs in it', '<a href="../../parts/a%26b%2C%20c/index.html">p</a>', '<a href="#leaf-2">p</a>'],
    ['a link to a file of the site', '<a href="../../record.json">p</a>', '<a>p</a>'],
    ['a link that cannot be read', '<a href="../../%zz">p</a>', '<a>p</a>'],
    [
      'a page elsewhere',
      '<a href="https://example.org/?a=1&#38;b">p</a>',
      '<a>p</a><span class="address"> (https://example.org/?a=1&#38;b)</span>',
    ],
    [
      'a page elsewhere without a scheme',
      '<a href="//example.org/x">p</a>',
      '<a>p</a><span class="address"> (//example.org/x)</span>',
    ],
    [
      'an address to write to',
      '<a href="mailto:a@example.org">p</a>',
      '<a>p</a><span class="address"> (a@example.org)</span>',
    ],
    [
      'an own anchor',
      '<h2 id="h-x">X</h2><a href="#h-x">x</a>',
      '<h3 id="a3-0" class="h2">X</h3><a href="#a3-0">x</a>',
    ],
    [
      'a shape of all pages',
      '<svg><use href="#s-pass"></use><path fill="url(#s-hatch)"/></svg>',
      '<svg><use href="#s-pass"></use><path fill="url(#s-hatch)"/></svg>',
    ],
    [
      'a shape of its own',
      '<svg><path id="z" d="M0 0"/><use href="#z"/></svg>',
      '<svg><path id="a3-0" d="M0 0"/><use href="#a3-0"/></svg>',
    ],
    [
      'a picture in two kinds',
      '<picture><source srcset="../../photos/x.webp"><img src="../../photos/x-1.jpg" srcset="a 1x" loading="lazy" alt="X"></picture>',
      '<picture><img src="photos/x-1.jpg" alt="X"></picture>',
    ],
    ['a table', '<th id="t">a</th><td headers="t u">b</td>', '<th id="a3-0">a</th><td headers="a3-0 u">b</td>'],
    ['an attribute that looks like another', '<p title="an id=" class="x">y</p>', '<p title="an id=" class="x">y</p>'],
    ['the noughts of the manifest’s own sum', `<p>That of it: ${'00000000 '.repeat(8).trim()}</p>`, ''],
  ])('%s', (_, written, expected) => {
    expect(bound(written)).toBe(expected)
  })

  test('brings no bar, no title block, and no heading above the sixth rank', () => {
    expect(bound('<h6>x</h6>')).toBe('<h6 class="h6">x</h6>')
    expect(leaves[0]?.html).toBe('<h1>Cart</h1>')
  })

  test('refuses a page without a sheet', () => {
    expect(() => readLeaf('x/index.html', '<p>x</p>')).toThrow(
      'Unexpected page `x/index.html` without a sheet, expected <main>',
    )
  })
})

describe('the chapters', () => {
  const paths = [
    'checks/a/index.html',
    'checks/a/b/index.html',
    'checks/c/index.html',
    'checks/index.html',
    'circuits/x/index.html',
    'index.html',
    'later/index.html',
    'measurements/by-session/index.html',
    'measurements/index.html',
    'search/index.html',
    'wiring/index.html',
  ]

  test('take each page once, leave out what only a screen can use and checks that were asked nothing, lose none', () => {
    const chapters = chaptersOf(paths.map(path => ({ path, title: path })))
    expect(
      chapters.map(({ title, pages }) => [title, ...pages.map(({ path }) => path.replace('index.html', ''))]),
    ).toEqual([
      ['Overview', ''],
      ['measurements/index.html', 'measurements/'],
      ['wiring/index.html', 'wiring/', 'circuits/x/'],
      ['checks/index.html', 'checks/', 'checks/a/', 'checks/a/b/'],
      ['Further sheets', 'later/'],
    ])
  })
})
