import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { makeNoteMemory, type NoteMemory } from '../../src/notes/note-memory.ts'
import { readContent } from '../../src/notes/read-content.ts'

let folder = ''
let memory: NoteMemory = makeNoteMemory()
const names = ['a', 'b', 'c']
const text = (words: string) =>
  `---\ntitle: "Tank, in"\nparts: { tank: { cost: £184, what: left, right } }\nwhy: >\n  one\n  two\n---\n${words} 12 mm and 5 gal :private[x]{as=identity}\n\n- [ ] job\n`

const fileOf = (name: string) => join(folder, 'content/sessions', `${name}.md`)
const read = (with_: NoteMemory = memory) => JSON.stringify(readContent(folder, with_))

/** Sets a file's time back, so that it counts as settled. */
function settle(path: string, seconds = 1000): void {
  utimesSync(path, seconds, seconds)
}

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'oddleg-memory-'))
  memory = makeNoteMemory()
  mkdirSync(join(folder, 'content/sessions'), { recursive: true })
  writeFileSync(join(folder, 'content/build.md'), '---\ntitle: x\n---\n')
  for (const name of names) writeFileSync(fileOf(name), text(name))
})

afterEach(() => {
  rmSync(folder, { recursive: true })
})

test('warm is cold byte for byte, and nothing is parsed twice', () => {
  const cold = read()
  expect(memory.reads).toBe(4)
  expect(read()).toBe(cold)
  for (const name of names) settle(fileOf(name))
  expect([read(), read()]).toEqual([cold, cold])
  expect(memory.reads).toBe(4)
  expect(read(makeNoteMemory())).toBe(cold)
})

test('after an edit only the edited note is parsed', () => {
  read()
  writeFileSync(fileOf('b'), text('changed'))
  const warm = read()
  expect(memory.reads).toBe(5)
  expect(warm).toContain('changed')
  expect(warm).toBe(read(makeNoteMemory()))
})

test('an edit of the same length in the same instant is seen', () => {
  read()
  for (const words of ['1', '2', '3', '4']) {
    writeFileSync(fileOf('a'), text(words))
    expect(read()).toBe(read(makeNoteMemory()))
  }
  expect(memory.reads).toBe(8)
})

test('a file that was only touched is not parsed again', () => {
  read()
  settle(fileOf('a'), 2000)
  read()
  expect(memory.reads).toBe(4)
})

test('a setting of build.md that changes how notes are read has all of them parsed again', () => {
  read()
  writeFileSync(join(folder, 'content/build.md'), '---\ngallon: us\n---\n')
  expect(read()).toBe(read(makeNoteMemory()))
  expect(memory.reads).toBe(8)
})

test('what is handed out can be changed without harm to what is remembered', () => {
  const cold = read()
  const content = readContent(folder, memory)
  content.sessions[0]?.body.children.splice(0)
  expect(read()).toBe(cold)
})

test('a note is plain JSON', () => {
  const { build, sessions } = readContent(folder, memory)
  expect(JSON.parse(JSON.stringify([build, ...sessions]))).toStrictEqual([build, ...sessions])
})
