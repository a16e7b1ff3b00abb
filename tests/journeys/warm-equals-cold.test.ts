import { appendFileSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { type Built, publicationOf, readBuildFolder } from '../../src/build.ts'
import { measureNext } from '../../src/checker/measure-next.ts'
import { recordJson } from '../../src/exports/record-json.ts'
import { makeNoteMemory, type NoteMemory } from '../../src/notes/note-memory.ts'
import { makeSiteData } from '../../src/pages/make-site-data.ts'
import { scratch, smallBuild, smallNote, writeFiles } from '../commands/run-oddleg.ts'

const note = 'content/sessions/2026-03-07-first.md'
const second = `---
title: Second day
date: 2026-03-14
---
The pump draws :measure[7.4 A]{of="circuit:fuel-pump/load"} when it is cold.
`

function smallFolder(): string {
  const folder = scratch('warm')
  writeFiles(folder, {
    'content/build.md': smallBuild,
    [note]: smallNote,
    'content/sessions/2026-03-14-second.md': second,
  })
  return folder
}

async function read(folder: string, memory: NoteMemory): Promise<Built> {
  const built = await readBuildFolder(folder, { today: '2026-04-01', memory })
  if ('trouble' in built) throw new Error(built.trouble)
  return built
}

/** Everything that would be published, as bytes. */
function published(built: Built): string {
  const publication = publicationOf(built, 'full')
  const { record, verdicts, findings, inspection } = publication
  const extras = {
    findings,
    inspection,
    checks: built.checks,
    measureNext: measureNext(verdicts),
    photos: [],
    date: null,
    serve: false,
    scripts: [],
  }
  return JSON.stringify(makeSiteData(record, verdicts, extras)) + recordJson(publication)
}

describe('notes remembered between two readings', () => {
  test('a warm reading publishes the bytes of a cold one', async () => {
    const folder = smallFolder()
    const memory = makeNoteMemory()
    const cold = published(await read(folder, memory))
    expect(published(await read(folder, memory))).toBe(cold)
    expect(published(await read(folder, makeNoteMemory()))).toBe(cold)
  })

  test('an edit reads one note again, and gives what a cold reading of the edited notes gives', async () => {
    const folder = smallFolder()
    const memory = makeNoteMemory()
    await read(folder, memory)
    const before = memory.reads
    appendFileSync(join(folder, note), '\nA last line, 12 mm long.\n')
    const warm = published(await read(folder, memory))
    expect(memory.reads - before).toBe(1)
    expect(warm).toBe(published(await read(folder, makeNoteMemory())))
  })

  test('a number changed in a note changes the verdict and the page that shows it', async () => {
    const folder = smallFolder()
    const verdictOf = (built: Built): string | undefined =>
      built.verdicts.find(({ check }) => check === 'voltage-drop')?.verdict
    const memory = makeNoteMemory()
    const before = await read(folder, memory)
    writeFileSync(
      join(folder, note),
      readFileSync(join(folder, note), 'utf8').replace('length: 4.8 m', 'length: 14.8 m'),
    )
    const after = await read(folder, memory)
    expect([verdictOf(before), verdictOf(after)]).toEqual(['pass', 'fail'])
    expect(published(after)).toContain('14.8')
  })
})
