import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { oddleg, scratch, writeFiles } from '../commands/run-oddleg.ts'

const buildNote = (editions: string): string => `---
title: Small build
currency: GBP
identity: { plate: KX12 ABC }
editions: ${editions}
---
What it is, for £45.
`
const editions = '{ public: { withhold: [cost, people, identity] }, friends: { withhold: [cost] } }'
const note = `---
title: First day
date: 2026-03-07
parts: { seat: { cost: £40, action: fitted } }
---
:private[Bob Smith]{as=people} held the seat.
`

function folderOf(texts: Readonly<Record<string, string>>): string {
  const folder = scratch('editions')
  writeFiles(folder, Object.fromEntries(Object.entries(texts).map(([path, text]) => [`content/${path}`, text])))
  return folder
}

const whole = { 'build.md': buildNote(editions), 'sessions/2026-03-07-first.md': note }
const leaking = { ...whole, 'sessions/2026-03-08-second.md': '---\ntitle: Second\n---\nThanks to Bob Smith.\n' }
const day = ['--date', '2026-04-01']

describe('oddleg build', () => {
  test('publishes all editions, each to a folder of its own', () => {
    const folder = folderOf(whole)
    const { status, out } = oddleg(['build', '--build', folder, '--all-editions', '--export-only', '--json', ...day])
    expect(status).toBe(0)
    expect(JSON.parse(out).editions.map(({ edition }: { edition: string }) => edition)).toEqual([
      'public',
      'friends',
      'full',
    ])
    expect(readdirSync(folder).sort()).toEqual(['_tables-friends', '_tables-full', '_tables-public', 'content'])
    const record = (edition: string) =>
      JSON.parse(readFileSync(join(folder, `_tables-${edition}`, 'record.json'), 'utf8'))
    expect(
      ['public', 'friends', 'full'].map(edition => [record(edition).edition, record(edition).parts[0].cost]),
    ).toEqual([
      ['public', null],
      ['friends', null],
      ['full', { amount: '40.00', currency: 'GBP' }],
    ])
  })

  test('names the folders within the one that is named', () => {
    const folder = folderOf(whole)
    expect(oddleg(['build', '--build', folder, '--all-editions', '--export-only', '--out', 'all', ...day]).status).toBe(
      0,
    )
    expect(readdirSync(join(folder, 'all')).sort()).toEqual(['friends', 'full', 'public'])
  })

  test.each([[[]], [['--force']]])(
    'publishes no edition in which a withheld word stands unmarked, with %j neither',
    more => {
      const folder = folderOf(leaking)
      const { status, out, err } = oddleg([
        'build',
        '--build',
        folder,
        '--edition',
        'public',
        '--export-only',
        ...more,
        ...day,
      ])
      expect(status).toBe(1)
      expect(out).toContain('content/sessions/2026-03-08-second.md:4:11 error withheld-name\n')
      expect(err).toBe(
        '\nThe edition public was not published: withheld words stand unmarked in it. --force does not publish them.\n',
      )
      expect(existsSync(join(folder, '_tables'))).toBe(false)
    },
  )

  test('publishes the other editions all the same', () => {
    const folder = folderOf(leaking)
    expect(oddleg(['build', '--build', folder, '--all-editions', '--export-only', ...day]).status).toBe(1)
    expect(readdirSync(folder).sort()).toEqual(['_tables-friends', '_tables-full', 'content'])
  })

  test.each([
    ['../x', whole, 'Unexpected edition `../x`, expected one that build.md names: public, friends, full.'],
    ['full/../x', whole, 'Unexpected edition `full/../x`, expected one that build.md names: public, friends, full.'],
    ['__proto__', whole, 'Unexpected edition `__proto__`, expected one that build.md names: public, friends, full.'],
    ['Public', whole, 'Unexpected edition `Public`, expected one that build.md names: public, friends, full.'],
    [
      '../x',
      { ...whole, 'build.md': buildNote('{ "../x": { withhold: [cost] } }') },
      'Unexpected name `../x` of an edition, expected lower-case words joined by hyphens such as `public`.',
    ],
  ])('cannot publish an edition named %s', (edition, texts, told) => {
    const folder = folderOf(texts)
    const { status, err } = oddleg(['build', '--build', folder, '--edition', edition, '--force', ...day])
    expect([status, err]).toEqual([2, `oddleg: ${told}\n`])
    expect(readdirSync(folder)).toEqual(['content'])
  })

  test('writes nothing at all where one edition of all bears such a name', () => {
    const folder = folderOf({
      ...whole,
      'build.md': buildNote('{ public: { withhold: [cost] }, "../x": { withhold: [cost] } }'),
    })
    expect(oddleg(['build', '--build', folder, '--all-editions', '--export-only', '--force', ...day]).status).toBe(2)
    expect(readdirSync(folder)).toEqual(['content'])
  })

  test('withholds everything from an edition that names a kind that is none', () => {
    const folder = folderOf({ ...whole, 'build.md': buildNote('{ public: { withhold: [cots] } }') })
    expect(oddleg(['build', '--build', folder, '--edition', 'public', '--export-only', ...day]).status).toBe(1)
    expect(oddleg(['build', '--build', folder, '--edition', 'public', '--export-only', '--force', ...day]).status).toBe(
      0,
    )
    const text = readFileSync(join(folder, '_tables/record.json'), 'utf8')
    for (const word of ['Bob', 'KX12', '£', '"40']) expect(text).not.toContain(word)
  })
})

describe('oddleg check', () => {
  test('tells withheld words of every edition by name', () => {
    const { status, out } = oddleg(['check', '--build', folderOf(leaking), '--json', ...day])
    expect(status).toBe(1)
    const told = JSON.parse(out).findings.map(({ rule, message }: { rule: string; message: string }) => [rule, message])
    expect(told).toEqual([
      [
        'withheld-name',
        'Unexpected `Bob Smith` in what the edition `public` would publish, expected it marked or in other words: it is withheld as people',
      ],
    ])
  })

  test('tells nothing of them for an edition that does not withhold them', () => {
    expect(oddleg(['check', '--build', folderOf(leaking), '--edition', 'friends', ...day]).status).toBe(0)
  })

  test('says what an edition leaves out, and where', () => {
    const { status, out } = oddleg(['check', '--build', folderOf(whole), '--edition', 'public', ...day])
    expect(status).toBe(0)
    expect(out.split('\n\n')[0]).toBe(`The edition public leaves out:
  content/build.md:4:20 identity: KX12 ABC
  content/build.md:7:17 cost: £45
  content/sessions/2026-03-07-first.md:4:24 cost: 40.00 GBP
  content/sessions/2026-03-07-first.md:6:1 people: Bob Smith`)
  })

  test('says that the full edition leaves nothing out', () => {
    const { out } = oddleg(['check', '--build', folderOf(whole), '--edition', 'full', ...day])
    expect(out.split('\n\n')[0]).toBe('The edition full leaves nothing out.')
  })
})

describe('oddleg find', () => {
  test('finds in an edition only what it may show', () => {
    const folder = folderOf(whole)
    const hits = (edition: string) =>
      JSON.parse(oddleg(['find', 'Bob', '--build', folder, '--edition', edition, '--json', ...day]).out).hits
    expect([hits('public').length, hits('full').length > 0]).toEqual([0, true])
  })

  test('cannot run in an edition with withheld words in it', () => {
    const { status, err } = oddleg(['find', 'Bob', '--build', folderOf(leaking), '--edition', 'public', ...day])
    expect([status, err]).toEqual([
      2,
      'oddleg: The edition `public` would publish withheld words at content/sessions/2026-03-08-second.md:4:11. `oddleg check --edition public` says which.\n',
    ])
  })
})
