import { spawn, spawnSync } from 'node:child_process'
import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { describe, expect, test } from 'vitest'
import { verifyFolder } from '../../src/exports/verify-folder.ts'
import { findBrowser } from '../../src/paper/find-browser.ts'
import { openPress } from '../../src/paper/press.ts'
import { oddleg, root, scratch, writeFiles } from '../commands/run-oddleg.ts'
import { openTestPress } from './open-press.ts'

const build = `---
title: Strand cart
editions: { club: { withhold: [people] }, inspector: { withhold: [cost] } }
---
A cart.
`
const note = '---\ntitle: First day\ndate: 2026-03-07\n---\nThe floor is in.\n'

/** What the npm browser unpacks goes into the project's own scratch space. */
function useScratch(): void {
  mkdirSync(join(root, '.tmp'), { recursive: true })
  process.env.TMPDIR = join(root, '.tmp')
}

function folderOf(): string {
  useScratch()
  const folder = scratch('paper')
  writeFiles(folder, { 'content/build.md': build, 'content/sessions/2026-03-07-first.md': note })
  return folder
}

/** As `ps` tells it: nothing for a process that is gone, Z for one that has ended and was not fetched yet. */
const stateOf = (pid: number): string =>
  spawnSync('ps', ['-o', 'stat=', '-p', String(pid)], { encoding: 'utf8' }).stdout.trim()

const day = ['--date', '2026-12-31']

describe('oddleg build --pdf', () => {
  test('puts the document of every edition among its pages, counted in its manifest and linked', () => {
    const folder = folderOf()
    const { status, out } = oddleg(['build', '--build', folder, '--all-editions', '--pdf', '--json', ...day])
    expect(status).toBe(0)
    const { editions, troubles } = JSON.parse(out) as { editions: { out: string; pdf: string }[]; troubles: string[] }
    expect(editions.map(({ out: site, pdf }) => pdf.slice(site.length))).toEqual([
      '/record.pdf',
      '/record.pdf',
      '/record.pdf',
    ])
    expect(troubles).toEqual([])
    for (const edition of ['club', 'inspector']) {
      const site = join(folder, `_site-${edition}`)
      const { manifest, files } = verifyFolder(site)
      expect(manifest.files.map(({ path }) => path)).toContain('record.pdf')
      expect(files).toEqual({ changed: [], missing: [], extra: [] })
      expect(readFileSync(join(site, 'record.pdf')).subarray(0, 5).toString()).toBe('%PDF-')
      for (const page of ['index.html', 'files/index.html'])
        expect(readFileSync(join(site, page), 'utf8')).toContain('record.pdf')
    }
  }, 120_000)

  test('publishes the pages without it where the browser is not there, says so and gives 2', () => {
    const folder = folderOf()
    const { status, out, err } = oddleg([
      'build',
      '--build',
      folder,
      '--pdf',
      '--json',
      '--browser',
      '/nowhere/chromium',
      ...day,
    ])
    expect(status).toBe(2)
    expect(JSON.parse(out)).toMatchObject({
      pdf: null,
      troubles: ['Unexpected `/nowhere/chromium` from --browser, expected the program of a Chromium, Chrome or Edge.'],
    })
    expect(err).toContain(
      'The pages were published without record.pdf. Unexpected `/nowhere/chromium` from --browser, expected the program of a Chromium, Chrome or Edge.\n',
    )
    expect(existsSync(join(folder, '_site', 'record.pdf'))).toBe(false)
    expect(readFileSync(join(folder, '_site', 'index.html'), 'utf8')).not.toContain('record.pdf')
  }, 60_000)

  test.each([
    [['--pdf', '--export-only'], 'Unexpected --pdf with --export-only: the document is made of the pages.'],
    [['--browser', '/x'], 'Unexpected --browser without --pdf: it names the browser that prints the document.'],
  ])('refuses %s', (more, message) => {
    expect(oddleg(['build', '--build', folderOf(), ...more, ...day])).toMatchObject({
      status: 2,
      err: `oddleg: ${message}\n`,
    })
  })

  test('leaves neither a browser nor half a record when it is stopped while the browser starts', async () => {
    const folder = folderOf()
    const pidFile = join(folder, 'pid')
    const program = join(folder, 'never-ready')
    writeFileSync(program, `#!/bin/sh\necho $$ > '${pidFile}'\nexec sleep 60\n`)
    chmodSync(program, 0o755)
    const args = ['src/commands/oddleg.js', 'build', '--build', folder, '--pdf', '--browser', program, ...day]
    const running = spawn(process.execPath, args, { cwd: root, stdio: 'ignore' })
    const ended = new Promise(resolve => running.once('exit', resolve))
    while (!existsSync(pidFile) || readFileSync(pidFile, 'utf8') === '') await wait(50)
    running.kill('SIGINT')
    await ended
    const browser = Number(readFileSync(pidFile, 'utf8'))
    await expect.poll(() => stateOf(browser), { timeout: 5000 }).toMatch(/^(Z.*)?$/)
    expect(readdirSync(folder).sort()).toEqual(['content', 'never-ready', 'pid'])
  }, 60_000)
})

describe('the press', () => {
  test('says which package is missing and how to get it', async () => {
    const load = () => Promise.reject(new Error('Cannot find package'))
    await expect(openPress({ browser: undefined, environment: {}, load })).rejects.toThrow(
      'The package playwright-core is not installed, which --pdf needs to work a browser. Run `npm install playwright-core` beside oddleg.',
    )
  })

  test('takes CHROMIUM_PATH where no browser is named, and the named one before it', async () => {
    const environment = { CHROMIUM_PATH: process.execPath }
    expect(await findBrowser({ named: undefined, environment })).toBe(process.execPath)
    await expect(findBrowser({ named: '/nowhere', environment })).rejects.toThrow(
      'Unexpected `/nowhere` from --browser',
    )
    await expect(findBrowser({ named: undefined, environment: { CHROMIUM_PATH: '/gone' } })).rejects.toThrow(
      'Unexpected `/gone` from CHROMIUM_PATH, expected the program of a Chromium, Chrome or Edge.',
    )
  })

  test('ends a browser that takes too long', async () => {
    const press = await openTestPress(0.001)
    const page = '<html lang="en-GB"><head></head><body><main><h1>Cart</h1></main></body></html>'
    const folder = {
      files: [{ path: 'index.html', content: page }],
      title: 'Cart',
      edition: 'full',
      date: null,
      sum: '',
      blankSum: '',
    }
    await expect(press.print(folder)).rejects.toThrow(
      'The browser did not finish the document within 0.001 s and was ended.',
    )
    await press.close()
  })
})
