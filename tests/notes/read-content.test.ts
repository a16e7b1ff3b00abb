import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { makeNoteMemory } from '../../src/notes/note-memory.ts'
import { readContent } from '../../src/notes/read-content.ts'

let folder = ''
const read = () => readContent(folder, makeNoteMemory())
const note = (title: string) => `---\ntitle: ${title}\n---\nWords.\n`

function write(files: Record<string, string>): void {
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true })
    writeFileSync(join(folder, file), text)
  }
}

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'oddleg-content-'))
})

afterEach(() => {
  rmSync(folder, { recursive: true })
})

describe('what is not there is said', () => {
  test('no content folder', () => {
    expect(read()).toEqual({
      missing: 'content',
      build: null,
      sessions: [],
      inspection: null,
      photos: [],
      findings: [],
    })
  })

  test('a file in the place of the folder', () => {
    write({ content: 'x' })
    expect(read().missing).toBe('content')
  })

  test('no build.md; the notes are read all the same', () => {
    write({ 'content/sessions/a.md': note('a') })
    expect(read()).toMatchObject({ missing: 'content/build.md', build: null, sessions: [{ id: 'a' }] })
  })

  test('a build without sessions is a build', () => {
    write({ 'content/build.md': note('Sandpiper') })
    expect(read()).toMatchObject({
      missing: null,
      build: { kind: 'build', findings: [] },
      sessions: [],
      inspection: null,
      photos: [],
      findings: [],
    })
  })
})

describe('what is read', () => {
  test('notes in folders of sessions, in the order of their paths, without hidden and set-aside ones', () => {
    write({
      'content/build.md': note('Sandpiper'),
      'content/inspection.yaml': 'rule: Approval',
      'content/sessions/2026-03-07-b.md': note('b'),
      'content/sessions/2026-03-07-B2.md': note('b2'),
      'content/sessions/2025/2025-12-01-a.md': note('a'),
      'content/sessions/é.md': note('é'),
      'content/sessions/z.md': note('z'),
      'content/sessions/_draft.md': note('draft'),
      'content/sessions/.hidden.md': note('hidden'),
      'content/sessions/_old/c.md': note('c'),
      'content/sessions/notes.txt': 'x',
      'content/README.md': 'x',
      'outside.md': note('outside'),
    })
    const content = read()
    expect(content.sessions.map(({ file }) => file)).toEqual([
      'content/sessions/2025/2025-12-01-a.md',
      'content/sessions/2026-03-07-B2.md',
      'content/sessions/2026-03-07-b.md',
      'content/sessions/z.md',
      'content/sessions/é.md',
    ])
    expect([content.build?.file, content.inspection?.file, content.findings]).toEqual([
      'content/build.md',
      'content/inspection.yaml',
      [],
    ])
  })

  test('pictures anywhere in content, and all that lies in photos', () => {
    write({
      'content/build.md': '',
      'content/photos/b.JPG': '',
      'content/photos/2026/plan.pdf': '',
      'content/photos/.thumbs': '',
      'content/sessions/a.png': '',
      'content/sessions/a.txt': '',
    })
    expect(read().photos).toEqual(['content/photos/2026/plan.pdf', 'content/photos/b.JPG', 'content/sessions/a.png'])
  })

  test('what build.md sets is used for every note', () => {
    const text = '---\ntitle: x\n---\nA 5 gal can and a 12,5 mm gap.\n'
    write({ 'content/build.md': '---\ngallon: us\ndecimal: comma\n---\n', 'content/sessions/a.md': text })
    expect(read().sessions[0]?.findings).toEqual([])
    write({ 'content/build.md': '---\ngallon: pub\ndecimal: both\n---\n' })
    expect(read().sessions[0]?.findings.map(({ rule }) => rule)).toEqual(['ambiguous-unit', 'decimal-mark'])
  })
})

describe('what is not read is told', () => {
  test('a second note of one name, in any case of letters', () => {
    write({
      'content/build.md': note('x'),
      'content/sessions/2025/tank.md': note('first'),
      'content/sessions/Tank.md': note('second'),
    })
    const { sessions, findings } = read()
    expect(sessions.map(({ file }) => file)).toEqual(['content/sessions/2025/tank.md'])
    expect(findings).toMatchObject([
      {
        rule: 'repeated-note',
        severity: 'error',
        file: 'content/sessions/Tank.md',
        line: 1,
        message:
          'Unexpected second note named `Tank`, expected a name of its own: this one is not read, `content/sessions/2025/tank.md` is.',
        related: [{ file: 'content/sessions/2025/tank.md', message: 'This note bears the name first.' }],
      },
    ])
  })

  test('a note beside sessions', () => {
    write({ 'content/build.md': note('x'), 'content/2026-03-07-tank.md': note('tank') })
    expect(read().sessions).toEqual([])
    expect(read().findings).toMatchObject([
      {
        rule: 'unreadable-note',
        file: 'content/2026-03-07-tank.md',
        message:
          'Unexpected note `content/2026-03-07-tank.md` outside content/sessions/, expected it inside: it is not read. A name that begins with `_` says that this is meant.',
        mend: 'content/sessions/2026-03-07-tank.md',
      },
    ])
  })

  test('symbolic links, to a file or a folder, out of content or within it', () => {
    write({
      'content/build.md': note('x'),
      'secret/secret.md': note('secret'),
      'secret/secret.jpg': 'x',
      'content/sessions/a.md': note('a'),
    })
    mkdirSync(join(folder, 'content/photos'))
    symlinkSync(join(folder, 'secret/secret.md'), join(folder, 'content/sessions/b.md'))
    symlinkSync(join(folder, 'secret'), join(folder, 'content/sessions/more'))
    symlinkSync(join(folder, 'content/sessions/a.md'), join(folder, 'content/sessions/c.md'))
    symlinkSync(join(folder, 'secret/secret.jpg'), join(folder, 'content/photos/secret.jpg'))
    symlinkSync(folder, join(folder, 'content/sessions/loop'))
    const content = read()
    expect([content.sessions.map(({ id }) => id), content.photos]).toEqual([['a'], []])
    expect(content.findings.map(({ rule, file }) => `${rule} ${file}`)).toEqual(
      [
        'content/photos/secret.jpg',
        'content/sessions/b.md',
        'content/sessions/c.md',
        'content/sessions/loop',
        'content/sessions/more',
      ].map(file => `unreadable-note ${file}`),
    )
    expect(content.findings[1]?.message).toBe(
      'Unexpected symbolic link `content/sessions/b.md`, expected the file itself: links are not followed, since they may lead out of content/.',
    )
  })

  test('a content folder that is itself a link', () => {
    write({ 'elsewhere/build.md': note('x') })
    symlinkSync(join(folder, 'elsewhere'), join(folder, 'content'))
    expect(read().missing).toBe('content')
  })
})
