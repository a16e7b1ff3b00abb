import { expect, test } from 'vitest'
import { run, whole } from '../plugins/chain.ts'
import { nodesOf } from '../plugins/nodes-of.ts'

/** What is read of Markdown, and what the nodes of it hold: our own sentences, read by all plugins of a note. */
const marked: readonly (readonly [markdown: string, expected: readonly string[]])[] = [
  ['The rail is **12 mm** and *about 3 m* long.', ['12 mm', 'about 3 m']],
  ['It holds about **64 L** or so.', ['about 64 L or so']],
  ['The rail is **12** mm, the rod 12 **mm**.', ['12 mm', '12 mm']],
  ['A *3*/*8* in rod.', ['3/8 in']],
  ['~~12 mm~~ 14 mm', ['12 mm', '14 mm']],
  ['`12 mm` and ``3 m`` are code.', []],
  ['```\n12 mm\n```', []],
  ['    12 mm', []],
  ['![12 mm plate](12mm.jpg "3 mm")', []],
  ['[12 mm plate](https://a.test/3mm "4 mm")', ['12 mm']],
  ['<https://a.test/25mm> and https://a.test/25mm', []],
  ['[x]: http://a.test/12mm "12 mm"', []],
  ['<!-- 12 mm -->', []],
  ['| a 3 mm bar | b |\n|---|---|\n| 12 mm | 3 A |', ['3 mm', '12 mm', '3 A']],
  ['# 12 mm plate', ['12 mm']],
  ['> A 5 A fuse', ['5 A']],
  ['1. 8 mm\n2. 10 mm', ['8 mm', '10 mm']],
  ['- [ ] fit the 12 mm bolt', ['12 mm']],
  ['A note.[^1]\n\n[^1]: It is 12 mm.', ['12 mm']],
  ['12&nbsp;mm, 12&#8239;mm', ['12\u00a0mm', '12\u202fmm']],
  ['&frac12; in, 3&frac12;&quot; pipe', ['½ in', '3½"']],
  ['12 &plusmn; 0.5 mm, 20 &deg;C, &pound;85', ['12 ± 0.5 mm', '20 °C', '£85']],
  ['M8&nbsp;&times;&nbsp;1.25', ['M8\u00a0×\u00a01.25']],
  ['5 \\* 3 mm, a 1/2\\" pipe', ['5', '3 mm', '1/2"']],
  ['&gt; 5 mm and \\> 6 mm', ['> 5 mm', '> 6 mm']],
  ['It is 12 mm\\\nor 3 A.', ['12 mm', '3 A']],
  ['**Note:** 3 in **each** corner, 4 in *the* box.', []],
  ['Step **3** in the list, *page 12* in the book.', []],
  [':measure[412 mm]{of="tray/width" with="600 mm rule"}', ['412 mm']],
  [':private[£85]{as=cost}', ['£85']],
  ['[3 m](part:hose) of hose', ['3 m']],
  ['The end is marked "**9**".', []],
  ['Feed it with 2.5 mm<sup>2</sup>, three metres.', ['2.5 mm²', 'three metres']],
  ['Cut 12 mm<br>2<br>times.', ['12 mm']],
  ['A 3 V<sup>2</sup> figure.', []],
]

test.each(marked)('%j', (markdown, expected) => {
  const read = nodesOf(run(whole, markdown).tree, 'quantity').map(({ quantity }) => quantity.text)
  expect(read).toEqual(expected)
})
