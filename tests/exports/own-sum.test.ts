import { spawnSync } from 'node:child_process'
import { appendFileSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeEach, describe, expect, test } from 'vitest'
import { blankSum, inEights, sumOf, withManifest } from '../../src/exports/manifest.ts'
import { verifyFolder } from '../../src/exports/verify-folder.ts'
import { scratch, writeFiles } from '../commands/run-oddleg.ts'

// A page that prints the manifest's own sum is summed with noughts in its place; the plain list has it as it is.

const pages = [
  { path: 'index.html', content: `<p>The manifest: ${blankSum}</p>\n` },
  { path: 'parts/a b\\c/index.html', content: `<p>Noughts in a note: ${blankSum}</p>\n` },
  { path: 'record.json', content: '{}\n' },
]
const files = withManifest(pages, { edition: 'full', notes: [] })
let folder = ''

beforeEach(() => {
  folder = scratch('own')
  writeFiles(folder, Object.fromEntries(files.map(({ path, content }) => [path, content])))
})

const manifestSum = sumOf(files.find(({ path }) => path === 'manifest.json')?.content ?? '')
const overview = (): string => readFileSync(join(folder, 'index.html'), 'utf8')

describe('the overview', () => {
  test('prints the sum of the manifest that lists it, and no other page does', () => {
    expect(overview()).toBe(`<p>The manifest: ${inEights(manifestSum)}</p>\n`)
    expect(readFileSync(join(folder, 'parts/a b\\c/index.html'), 'utf8')).toContain(blankSum)
    const { own } = JSON.parse(readFileSync(join(folder, 'manifest.json'), 'utf8')) as { own: string[] }
    expect(own).toEqual(['index.html'])
  })

  test('is as published until a letter, its sum or its noughts are changed', () => {
    const none = { changed: [], missing: [], extra: [] }
    const changed = { ...none, changed: ['index.html'] }
    expect(verifyFolder(folder)).toMatchObject({ sum: manifestSum, files: none })
    const asPublished = overview()
    const spoilt = [
      asPublished.replace('The', 'Tha'),
      asPublished.replace(inEights(manifestSum), inEights('1'.repeat(64))),
      asPublished.replace(inEights(manifestSum), blankSum),
      asPublished.replace('</p>', ` ${blankSum}</p>`),
      asPublished.replace('</p>', ` ${inEights(manifestSum)}</p>`),
    ]
    for (const content of spoilt) {
      writeFileSync(join(folder, 'index.html'), content)
      expect(verifyFolder(folder).files).toEqual(changed)
    }
  })

  test('is named where it is missing', () => {
    rmSync(join(folder, 'index.html'))
    expect(verifyFolder(folder).files).toEqual({ changed: [], missing: ['index.html'], extra: [] })
  })
})

// GNU coreutils, where the machine has them.
const hasSums = spawnSync('sha256sum', ['--version']).status === 0

describe.runIf(hasSums)('sha256sum -c', () => {
  const check = () => spawnSync('sha256sum', ['-c', '--quiet', 'SHA256SUMS'], { cwd: folder, encoding: 'utf8' })

  test('agrees with every file, one with a backslash in its name too', () => {
    expect(check()).toMatchObject({ status: 0, stdout: '' })
  })

  test('names the file that is changed', () => {
    appendFileSync(join(folder, 'index.html'), ' ')
    expect(check()).toMatchObject({ status: 1, stdout: 'index.html: FAILED\n' })
  })
})
