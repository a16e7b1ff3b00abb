import { describe, expect, test } from 'vitest'
import { readBody } from '../../src/notes/read-body.ts'
import { plainOptions } from '../../src/notes/read-note.ts'
import type { NoteContext, Picture } from '../../src/pages/note-context.ts'
import { printNote } from '../../src/pages/note-rows.ts'
import { plainContext } from './plain-context.ts'

const tank: Picture = {
  href: '../../photos/tank-1600.jpg',
  width: 1600,
  height: 1200,
  sources: { webp: 'a.webp 480w, b.webp 1600w', other: 'a.jpg 480w, b.jpg 1600w', sizes: '41rem', src: 'a.jpg' },
}
const other: Picture = { ...tank, href: '../../photos/other-1600.jpg' }
const pictures: NoteContext['picture'] = url => (url.includes('none') ? null : url.includes('other') ? other : tank)

const print = (markdown: string): string[] =>
  printNote(readBody('content/sessions/a.md', markdown, plainOptions).body, {
    ...plainContext,
    picture: pictures,
  }).rows.map(({ html }) => html.replaceAll(/ id="b-\d+"/g, ''))

const image =
  '<img src="a.jpg" alt="The tank" width="1600" height="1200" srcset="a.jpg 480w, b.jpg 1600w" sizes="41rem" loading="lazy" decoding="async">'
const picture = `<picture><source type="image/webp" srcset="a.webp 480w, b.webp 1600w" sizes="41rem">${image}</picture>`
const large = `<a class="large" href="../../photos/tank-1600.jpg">${picture}</a>`
const plate = (drawn: string): string =>
  `<span class="plate">${large}<svg class="points" aria-hidden="true" focusable="false">${drawn}</svg></span>`
const point = (number: number, left: number, top: number): string =>
  `<svg x="${left}%" y="${top}%" class="pt-at"><circle r="15" class="pt-halo"></circle><circle r="12" class="pt-disc"></circle><text class="pt-n">${number}</text></svg>`
const line = (order: number, number: number, words: string): string =>
  `<li id="pt-${order}-${number}"><a href="#pm-${order}-${number}">${number}</a>: ${words}</li>`
const list = (lines: string): string => `<ul class="points" aria-label="Points on the picture">${lines}</ul>`
const ring = (number: number): string => `<span class="vh">(</span>${number}<span class="vh">)</span>`

describe('a picture of a note', () => {
  test('comes in sizes and formats, and opens large', () => {
    expect(print('![The tank](tank.jpg "From behind")')).toEqual([
      `<figure>${large}<figcaption><span class="s">From behind</span></figcaption></figure>`,
    ])
  })

  test('in a line stands in its sentence', () => {
    expect(print('Here ![The tank](tank.jpg) it is.')).toEqual([`<p><span class="s">Here ${large} it is.</span></p>`])
  })

  test('that the note made a link leads where the note says', () => {
    expect(print('[![The tank](tank.jpg)](https://example.org/)')).toEqual([
      `<p><a href="https://example.org/">${picture}</a></p>`,
    ])
  })

  test('without words is a link that has some', () => {
    expect(print('![](tank.jpg)')[0]).toContain(
      '<a class="large" href="../../photos/tank-1600.jpg" aria-label="picture, large">',
    )
  })

  test('in a link with words bears its points alone', () => {
    expect(print('[see ![The tank](tank.jpg) here](https://example.org/) :mark[1]{at="1%,2%"}')[0]).toContain(
      `<a href="https://example.org/">see <span class="plate">${picture}<svg`,
    )
  })

  test('published in one size stays as it is', () => {
    const { rows } = printNote(readBody('a.md', '![The tank](t.jpg)', plainOptions).body, plainContext)
    expect(rows[0]?.html).toBe('<figure id="b-1"><img src="t.jpg" alt="The tank"></figure>')
  })
})

describe('marked places', () => {
  test('are drawn on their picture, told in words below it, and joined with the text both ways', () => {
    expect(
      print(
        '![The tank](tank.jpg "Behind")\n\nStrap :mark[2]{at="40%,25%"} and neck :mark[1]{at="7.5%,100%"}, again :mark[2].',
      ),
    ).toEqual([
      `<figure>${plate(point(1, 7.5, 100) + point(2, 40, 25))}<figcaption><span class="s">Behind</span>${list(
        `${line(1, 1, '7.5 % from the left, 100 % from the top')}${line(1, 2, '40 % from the left, 25 % from the top')}`,
      )}</figcaption></figure>`,
      `<p><span class="s">Strap <a class="mk" href="#pt-1-2" aria-label="point 2 on the picture" id="pm-1-2">${ring(2)}</a> and neck ` +
        `<a class="mk" href="#pt-1-1" aria-label="point 1 on the picture" id="pm-1-1">${ring(1)}</a>, again ` +
        `<a class="mk" href="#pt-1-2" aria-label="point 2 on the picture">${ring(2)}</a>.</span></p>`,
    ])
  })

  test('beside a picture in a line are told behind its paragraph', () => {
    expect(print('![The tank](tank.jpg) leaks at :mark[1]{at="1%,2%"}.')).toEqual([
      `<p><span class="s">${plate(point(1, 1, 2))} leaks at <a class="mk" href="#pt-1-1" aria-label="point 1 on the picture" id="pm-1-1">${ring(1)}</a>.</span></p>`,
      list(line(1, 1, '1 % from the left, 2 % from the top')),
    ])
  })

  test.each([
    [
      'a cell',
      '| A | B |\n|---|---|\n| ![The tank](tank.jpg) | :mark[1]{at="1%,2%"} |',
      /<td[^>]*>.*<ul class="points".*<\/ul><\/td>\s*<td/s,
    ],
    [
      'a tight list',
      '- ![The tank](tank.jpg)\n- :mark[1]{at="1%,2%"}',
      /<li>\s*<figure>.*<ul class="points".*<\/ul><\/figcaption><\/figure>\s*<\/li>\s*<li>/s,
    ],
    [
      'a quotation',
      '> ![The tank](tank.jpg)\n>\n> :mark[1]{at="1%,2%"}',
      /<blockquote>.*<\/ul><\/figcaption><\/figure>.*<\/blockquote>/s,
    ],
  ])('in %s are told in it', (_, markdown, html) => {
    expect(print(markdown).join('')).toMatch(html)
  })

  test('of a second picture have anchors of their own', () => {
    const html = print(
      '![The tank](tank.jpg)\n\n:mark[1]{at="1%,2%"}\n\n![The tank](other.jpg)\n\n:mark[1]{at="3%,4%"}',
    ).join('')
    expect([...html.matchAll(/ id="(p[^"]+)"/g)].map(([, id]) => id)).toEqual(['pt-1-1', 'pm-1-1', 'pt-2-1', 'pm-2-1'])
  })

  test('without a point, or of a picture that is not published, are their numbers', () => {
    expect(print('No picture :mark[3]{at="1%,2%"}.')).toEqual([
      `<p><span class="s">No picture <span class="mk">${ring(3)}</span>.</span></p>`,
    ])
    expect(print('![The tank](none.jpg)\n\n:mark[3]{at="1%,2%"}').at(-1)).toBe(
      `<p><span class="s"><span class="mk">${ring(3)}</span></span></p>`,
    )
  })

  test('hold no style of their own, which the page’s policy would refuse', () => {
    expect(print('![The tank](tank.jpg) :mark[1]{at="1%,2%"}').join('')).not.toMatch(/style=/)
  })

  test('cannot be told apart from words by what a note writes', () => {
    expect(print('<span class="mk" data-mark="1:1">x</span>')[0]).not.toContain('<span class="mk"')
  })
})
