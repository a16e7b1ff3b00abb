import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { HtmlValidate } from 'html-validate'
import { parseHTML } from 'linkedom'
import type { Nodes } from 'mdast'
import { beforeAll, expect, test } from 'vitest'
import { readNote } from '../../src/notes/read-note.ts'
import { checkLinks } from './link-check.ts'
import { oneOfEach, publish, root } from './published.ts'
import { readFolder } from './read-folder.ts'

let site: ReturnType<typeof readFolder> = []
beforeAll(() => {
  site = readFolder(publish(root))
})

const pageOf = (path: string): string => String(site.find(file => file.path === path)?.content ?? '')
const squeezed = (text: string): string => text.replace(/\s+/g, '')

/** All words that a tree holds, one entry for each stretch of text. */
function stretches(node: Nodes): string[] {
  if (node.type === 'image') return []
  if ('value' in node) return [node.value]
  return 'children' in node ? node.children.flatMap(child => stretches(child as Nodes)) : []
}

const notes = readdirSync(join(root, 'content/sessions')).filter(name => name.endsWith('.md'))

test('the demo has notes to compare', () => {
  expect(notes.length).toBeGreaterThan(3)
})

test.each(notes)('no word of %s is lost on its page', name => {
  const note = readNote(
    { file: `content/sessions/${name}`, bytes: readFileSync(join(root, 'content/sessions', name)) },
    { gallon: 'imperial', mil: 'mm', decimal: 'point' },
  )
  const { document } = parseHTML(pageOf(`sessions/${note.id}/index.html`))
  const words = squeezed(document.querySelector('main')?.textContent ?? '')
  const lost = stretches(note.body).filter(stretch => !words.includes(squeezed(stretch)))
  expect(lost).toEqual([])
})

test('every link and every anchor leads somewhere', () => {
  expect(site.filter(({ path }) => path.endsWith('.html')).length).toBeGreaterThan(100)
  expect(checkLinks(site)).toEqual([])
})

test('every address that record.json gives leads to the words that it names', () => {
  const record = JSON.parse(pageOf('record.json')) as unknown
  const urls: string[] = []
  const collect = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return
    for (const [key, inner] of Object.entries(value)) {
      if (key === 'url' && typeof inner === 'string') urls.push(inner)
      collect(inner)
    }
  }
  collect(record)
  expect(urls.length).toBeGreaterThan(200)
  const page = { path: 'all.html', content: urls.map(url => `<a href="${url}">x</a>`).join('') }
  expect(checkLinks([...site, page]).filter(fault => fault.startsWith('all.html'))).toEqual([])
})

test('each kind of page and every session of the demo is valid HTML', async () => {
  const validator = new HtmlValidate({
    extends: ['html-validate:recommended'],
    rules: {
      'no-inline-style': 'error',
      'aria-label-misuse': ['error', { allowAnyNamable: true }], // drawings, lists and formulas bear names
      'void-style': 'off', // both styles are HTML
      'doctype-style': 'off', // lower case is HTML
      'long-title': 'off', // a title is as long as the session's
      'no-redundant-role': 'off', // roles keep a table a table where a phone shows its rows as blocks
      'prefer-native-element': 'off', // as above
      'no-trailing-whitespace': 'off',
      'attribute-boolean-style': 'off', // what a note's HTML prints differs from ours
      'require-sri': 'off', // files of the same folder
      'attr-quotes': 'off',
      'no-raw-characters': 'off', // a > in words is HTML
      'tel-non-breaking': 'off',
      'no-implicit-button-type': 'error',
    },
  })
  const faults: string[] = []
  const kinds = new Set(oneOfEach(site.map(({ path }) => path)))
  for (const { path, content } of site) {
    if (!kinds.has(path) && !path.startsWith('sessions/')) continue
    const report = await validator.validateString(String(content), path)
    for (const { messages } of report.results)
      for (const { ruleId, message, line, column } of messages)
        faults.push(`${ruleId} ${message} (${path}:${line}:${column})`)
  }
  const firstOfEach = [...new Map(faults.map(fault => [fault.split(' (')[0], fault] as const)).values()]
  expect(firstOfEach).toEqual([])
}, 120_000)
