import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { appendFileSync, mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeEach, describe, expect, test } from 'vitest'
import { oddleg, scratch, smallBuild, smallNote, writeFiles } from '../commands/run-oddleg.ts'

const note = 'content/sessions/2026-03-07-first.md'
let folder = ''
let site = ''
let printed = ''

beforeEach(() => {
  folder = scratch('verify')
  writeFiles(folder, { 'content/build.md': smallBuild, [note]: smallNote })
  const { status, err } = oddleg(['build', '--build', folder, '--export-only', '--date', '2026-04-01'])
  expect(status).toBe(0)
  site = join(folder, '_tables')
  printed = /manifest ([0-9a-f]{64})/.exec(err)?.[1] ?? ''
})

const sum = (path: string): string => createHash('sha256').update(readFileSync(path)).digest('hex')
const manifest = (): {
  files: { path: string; sum: string }[]
  notes: { path: string; sum: string }[]
  record: string
} => JSON.parse(readFileSync(join(site, 'manifest.json'), 'utf8'))

describe('manifest.json', () => {
  test('holds the sum of every other file, of the record and of every note', () => {
    const { files, notes, record } = manifest()
    expect(files.length).toBeGreaterThan(10)
    for (const { path, sum: told } of files) expect([path, told]).toEqual([path, sum(join(site, path))])
    expect(record).toBe(sum(join(site, 'record.json')))
    expect(notes).toEqual(['content/build.md', note].map(path => ({ path, sum: sum(join(folder, path)) })))
  })

  test('is summed itself, and the command prints that sum', () => {
    expect(printed).toBe(sum(join(site, 'manifest.json')))
  })

  // GNU coreutils reads the list: the sums hold by a program that is not ours.
  test('has beside it a list that sha256sum checks', () => {
    const { status, stdout } = spawnSync('sha256sum', ['-c', 'SHA256SUMS'], { cwd: site, encoding: 'utf8' })
    expect(status).toBe(0)
    expect(stdout.trim().split('\n')).toHaveLength(manifest().files.length + 1)
  })
})

describe('oddleg verify', () => {
  test('says that a record is as published', () => {
    const { status, out, err } = oddleg(['verify', site, '--build', folder, '--sum', printed])
    expect([status, out]).toEqual([0, ''])
    expect(err).toBe(
      `${manifest().files.length} files of the edition full, 2 notes: as published\nmanifest ${printed}\n`,
    )
  })

  test('names every file that is changed, missing or extra, and every note', () => {
    appendFileSync(join(site, 'record.json'), ' ')
    rmSync(join(site, 'tables/parts.csv'))
    mkdirSync(join(site, 'more'))
    writeFileSync(join(site, 'more/extra.txt'), '')
    symlinkSync('/etc/hostname', join(site, 'link'))
    appendFileSync(join(folder, note), 'More.')
    const { status, out } = oddleg(['verify', site, '--build', folder])
    expect(status).toBe(1)
    expect(out).toBe(
      [
        'changed  record.json',
        'missing  tables/parts.csv',
        'extra    link',
        'extra    more/extra.txt',
        `changed  note ${note}`,
        '',
      ].join('\n'),
    )
  })

  test('finds a file that was changed along with its sum, by the sum that was printed', () => {
    appendFileSync(join(site, 'record.json'), ' ')
    const forged = readFileSync(join(site, 'manifest.json'), 'utf8').replaceAll(
      manifest().record,
      sum(join(site, 'record.json')),
    )
    writeFileSync(join(site, 'manifest.json'), forged)
    expect(oddleg(['verify', site]).out).toBe('changed  SHA256SUMS\n')
    const { status, out } = oddleg(['verify', site, '--sum', printed])
    expect(status).toBe(1)
    expect(out).toBe(`changed  SHA256SUMS\nchanged  manifest.json (its sum is ${sum(join(site, 'manifest.json'))})\n`)
  })

  test('gives the same as JSON', () => {
    rmSync(join(site, 'record.json'))
    expect(JSON.parse(oddleg(['verify', site, '--json']).out)).toEqual({
      holds: false,
      sum: printed,
      edition: 'full',
      files: { changed: [], missing: ['record.json'], extra: [] },
      notes: null,
    })
  })

  test.each([
    [
      'a folder without a manifest',
      () => rmSync(join(site, 'manifest.json')),
      'without `manifest.json`, expected one that `oddleg build` published.',
    ],
    [
      'a manifest that is no JSON',
      () => writeFileSync(join(site, 'manifest.json'), '{'),
      'expected `"format": "oddleg-manifest/1"` with its files.',
    ],
    [
      'a manifest of something else',
      () => writeFileSync(join(site, 'manifest.json'), '{"format":"x"}'),
      'expected `"format": "oddleg-manifest/1"` with its files.',
    ],
    [
      'a folder that is not there',
      () => rmSync(site, { recursive: true }),
      'that cannot be read, expected a published record.',
    ],
  ])('cannot run on %s', (_what, spoil, told) => {
    spoil()
    const { status, err } = oddleg(['verify', site])
    expect(status).toBe(2)
    expect(err).toContain(told)
  })

  test('reads nothing outside the folder, whatever the manifest names', () => {
    const { record } = manifest()
    const text = readFileSync(join(site, 'manifest.json'), 'utf8').replace(
      '"path": "record.json"',
      '"path": "../content/build.md"',
    )
    writeFileSync(join(site, 'manifest.json'), text)
    const { out } = oddleg(['verify', site])
    expect(out).toContain('missing  ../content/build.md\nextra    record.json\n')
    expect(record).toHaveLength(64)
  })
})
