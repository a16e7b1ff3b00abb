import rehypeStringify from 'rehype-stringify'
import { unified } from 'unified'
import { describe, expect, test } from 'vitest'
import { readBody } from '../../src/notes/read-body.ts'
import { plainOptions } from '../../src/notes/read-note.ts'
import { noteTree } from '../../src/pages/note-tree.ts'
import { canonicalHtml } from './canonical-html.ts'
import { plainContext } from './plain-context.ts'
import { undoNamedRules } from './undo-named-rules.ts'

// What the GitHub Flavored Markdown specification 0.29-gfm says of tables (4.10), task list items (5.3), strikethrough (6.5)
// and autolinks (6.9), in words of a workshop: the rule stands beside each.

const printer = unified().use(rehypeStringify).freeze()
const ours = (markdown: string): string =>
  canonicalHtml(
    printer.stringify(undoNamedRules(noteTree(readBody('example.md', markdown, plainOptions).body, plainContext))),
  )

const head = (...cells: readonly string[]) => `<thead><tr>${cells.join('')}</tr></thead>`

describe('tables', () => {
  test.each([
    {
      rule: 'a header row, a delimiter row, a data row',
      markdown: '| hose | clip |\n| --- | --- |\n| top | two |\n',
      html: `<table>${head('<th>hose</th>', '<th>clip</th>')}<tbody><tr><td>top</td><td>two</td></tr></tbody></table>`,
    },
    {
      rule: 'colons in the delimiter row align; outer pipes may be left out',
      markdown: 'hose | clip\n:-: | ---:\ntop | two\n',
      html: `<table>${head('<th align="center">hose</th>', '<th align="right">clip</th>')}<tbody><tr><td align="center">top</td><td align="right">two</td></tr></tbody></table>`,
    },
    {
      rule: 'an escaped pipe is part of a cell, inside code too',
      markdown: '| a |\n| - |\n| `x\\|y` z |\n| **c \\| d** |\n',
      html: `<table>${head('<th>a</th>')}<tbody><tr><td><code>x|y</code> z</td></tr><tr><td><strong>c | d</strong></td></tr></tbody></table>`,
    },
    {
      rule: 'the table ends where another block begins',
      markdown: '| a | b |\n| - | - |\n| c | d |\n> quoted\n',
      html: `<table>${head('<th>a</th>', '<th>b</th>')}<tbody><tr><td>c</td><td>d</td></tr></tbody></table><blockquote><p>quoted</p></blockquote>`,
    },
    {
      rule: 'a header that does not match its delimiter row is no table',
      markdown: '| a | b |\n| --- |\n| c |\n',
      html: '<p>| a | b |<br>| --- |<br>| c |</p>'.replaceAll('<br>', ' '),
    },
    {
      rule: 'a row with fewer cells is filled, one with more is cut',
      markdown: '| a | b |\n| - | - |\n| c |\n| d | e | f |\n',
      html: `<table>${head('<th>a</th>', '<th>b</th>')}<tbody><tr><td>c</td><td></td></tr><tr><td>d</td><td>e</td></tr></tbody></table>`,
    },
    {
      rule: 'a table may have no body',
      markdown: '| a | b |\n| - | - |\n',
      html: `<table>${head('<th>a</th>', '<th>b</th>')}</table>`,
    },
  ])('$rule', ({ markdown, html }) => {
    expect(ours(markdown)).toBe(canonicalHtml(html))
  })
})

describe('task lists, strikethrough, autolinks', () => {
  test.each([
    {
      rule: 'a box that is to do and one that is done',
      markdown: '- [ ] drain\n- [x] fill\n',
      html: '<ul><li><input type="checkbox" disabled> drain</li><li><input type="checkbox" disabled checked> fill</li></ul>',
    },
    {
      rule: 'boxes may be nested',
      markdown: '- [x] tank\n  - [ ] strap\n  - [x] hose\n- [ ] pump\n',
      html: '<ul><li><input type="checkbox" disabled checked> tank <ul><li><input type="checkbox" disabled> strap</li><li><input type="checkbox" disabled checked> hose</li></ul></li><li><input type="checkbox" disabled> pump</li></ul>',
    },
    { rule: 'two tildes strike out', markdown: '~~old~~ new\n', html: '<p><del>old</del> new</p>' },
    {
      rule: 'one tilde strikes nothing out here: about 64 L is no deletion',
      markdown: '~64 L~\n',
      html: '<p>~64 L~</p>',
    },
    {
      rule: 'a bare address is a link',
      markdown: 'see https://example.org/a now\n',
      html: '<p>see <a href="https://example.org/a">https://example.org/a</a> now</p>',
    },
  ])('$rule', ({ markdown, html }) => {
    expect(ours(markdown)).toBe(canonicalHtml(html))
  })
})
