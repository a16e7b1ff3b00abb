import type { Root } from 'mdast'
import { describe, expect, test } from 'vitest'
import { readBody } from '../../src/notes/read-body.ts'
import { plainOptions } from '../../src/notes/read-note.ts'
import type { NoteContext } from '../../src/pages/note-context.ts'
import { printNote } from '../../src/pages/note-rows.ts'
import { wordsOf } from './canonical-html.ts'
import { plainContext } from './plain-context.ts'

/** Blocks bear the line on which they begin; tests of other things leave that out. */
const withoutLines = (html: string): string => html.replaceAll(/ id="b-\d+"/g, '')

const body = (markdown: string): Root => readBody('content/sessions/a.md', markdown, plainOptions).body
const print = (markdown: string, context: Partial<NoteContext> = {}): string =>
  printNote(body(markdown), { ...plainContext, ...context })
    .rows.map(({ html }) => withoutLines(html))
    .join('\n')

describe('what a note says never acts on a page', () => {
  test.each([
    ['<script>alert(1)</script>', '<script>alert(1)</script>'],
    ['<img src=x onerror=alert(1)>', '<img src=x onerror=alert(1)>'],
    ['text <b onclick="alert(1)">bold</b>', 'text <b onclick="alert(1)">bold</b>'],
    ['<style>*{display:none}</style>', '<style>*{display:none}</style>'],
    ['<svg><a xlink:href="javascript:alert(1)">x</a></svg>', '<svg><a xlink:href="javascript:alert(1)">x</a></svg>'],
  ])('%s is shown as text', (markdown, words) => {
    const html = print(markdown)
    expect(wordsOf(html)).toBe(words)
    expect(html).not.toMatch(/<(script|img|b|style|svg)\b/)
  })

  test.each([
    '[x](javascript:alert(1))',
    '[x](JaVaScRiPt:alert(1))',
    '[x](data:text/html,<script>alert(1)</script>)',
    '[x](vbscript:msgbox)',
    '[x](file:///etc/passwd)',
    '[x][1]\n\n[1]: javascript:alert(1)',
    '[x](&#106;avascript:alert(1))',
  ])('%s is its words only', markdown => {
    // Whatever a page would make of an address, the sanitizer has the last word.
    expect(print(markdown, { address: url => url })).toBe('<p><span class="s">x</span></p>')
  })

  test('a picture that is not of the record is its alternative text', () => {
    expect(print('before ![the tank](https://example.org/t.png) after', { picture: () => null })).toBe(
      '<p><span class="s">before <span class="no-picture">the tank</span> after</span></p>',
    )
  })

  test('a heading, a footnote and a job cannot take an anchor of ours', () => {
    const html = print('# q-1\n\n## main\n\ntext[^q-2]\n\n- [ ] m-vehicle-wheelbase\n\n[^q-2]: note\n')
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id)
    expect(ids).toEqual(['h-q-1', 'h-main', 'n-fnref-q-2', 'j-m-vehicle-wheelbase', 'n-footnotes', 'n-fn-q-2'])
  })
})

describe('figures', () => {
  const withIds = (markdown: string): Root => {
    const tree = body(markdown)
    let count = 0
    const give = (node: { type: string; id?: string; children?: unknown[] }): void => {
      if (node.type === 'quantity') node.id = `q-${++count}`
      for (const child of node.children ?? []) give(child as never)
    }
    give(tree as never)
    return tree
  }

  test('a figure stands in its sentence with an anchor, its unit marked, and leads to what used it', () => {
    const { rows, sentences } = printNote(withIds('It is :measure[860 mm]{of="tank/length"} long. It fits.'), {
      ...plainContext,
      use: id => `../x/index.html#m-${id}`,
    })
    expect(rows.map(row => ({ ...row, html: withoutLines(row.html) }))).toEqual([
      {
        html: '<p><span class="s">It is <span class="q used k1" id="q-1"><a href="../x/index.html#m-q-1">860\u202f<span class="u">mm</span></a></span> long.</span> <span class="s">It fits.</span></p>',
        wide: false,
        figures: ['q-1'],
      },
    ])
    expect([...sentences]).toEqual([['q-1', 'It is 860\u202fmm long.']])
  })

  test('a figure that nothing used leads nowhere', () => {
    const [row] = printNote(withIds('Cut 45 mm off.'), plainContext).rows
    expect(withoutLines(row?.html ?? '')).toBe(
      '<p><span class="s">Cut <span class="q" id="q-1">45\u202f<span class="u">mm</span></span> off.</span></p>',
    )
  })

  test('inside a link of the note the link stands and the figure keeps its anchor', () => {
    const [row] = printNote(withIds('See [the 5 mm plate](https://example.org/p).'), {
      ...plainContext,
      use: () => 'x',
    }).rows
    expect(withoutLines(row?.html ?? '')).toBe(
      '<p><span class="s">See <a href="https://example.org/p">the <span class="q" id="q-1">5\u202f<span class="u">mm</span></span> plate</a>.</span></p>',
    )
  })
})

describe('links and marks', () => {
  test('a link without words takes the name of its thing', () => {
    expect(
      print('Feeds [](circuit:fuel-pump).', {
        thing: ({ path }) => ({ text: 'Fuel pump', href: `../../circuits/${path}/index.html` }),
      }),
    ).toBe('<p><span class="s">Feeds <a href="../../circuits/fuel-pump/index.html">Fuel pump</a>.</span></p>')
  })

  test('a link to nothing keeps its words', () => {
    expect(print('See [the tank](part:no-tank).')).toBe('<p><span class="s">See the tank.</span></p>')
  })

  test('the full edition shows private words, marked', () => {
    expect(print('Bought from :private[a man called Wilf]{as=people} today.')).toBe(
      '<p><span class="s">Bought from <span class="private" data-as="people">a man called Wilf</span> today.</span></p>',
    )
  })

  test('a job says how it stands', () => {
    expect(print('- [ ] seal the hatch :job{#seal-hatch before=road}', { job: id => `${id} is open` })).toBe(
      '<ul class="contains-task-list">\n<li class="task-list-item" id="j-seal-hatch"><span class="s"><span class="box open" role="img" aria-label="to do"></span> seal the hatch</span> <span class="state">seal-hatch is open</span></li>\n</ul>',
    )
  })

  test('a picture alone becomes a figure with its caption', () => {
    expect(
      print('![The tank](../photos/tank.jpg "From behind")', {
        picture: () => ({ href: '../../photos/tank.jpg', width: 960, height: 640 }),
      }),
    ).toBe(
      '<figure><img src="../../photos/tank.jpg" alt="The tank" width="960" height="640"><figcaption><span class="s">From behind</span></figcaption></figure>',
    )
  })
})
