import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { progressWords } from '../../src/commands/picture-progress.ts'
import { noise } from '../pictures/sample-pictures.ts'
import { oddleg, scratch, start, writeFiles } from './run-oddleg.ts'

const build = '---\ntitle: Pictures\ncurrency: GBP\n---\nWords.\n'
const note = (lines: readonly string[]): string =>
  `---\ntitle: Pictures\ndate: 2026-03-07\n---\n${lines.join('\n\n')}\n`

async function photographs(count: number): Promise<Record<string, string | Uint8Array>> {
  const names = Array.from({ length: count }, (_, at) => `p${at}.jpg`)
  const grain = await noise(300, 200).png().toBuffer()
  const files: Record<string, string | Uint8Array> = {
    'content/build.md': build,
    'content/sessions/2026-03-07-a.md': note(names.map(name => `![Picture ${name}](../photos/${name})`)),
  }
  for (const [at, name] of names.entries())
    files[`content/photos/${name}`] = await sharp(grain)
      .resize(1800 + at, 1200)
      .jpeg()
      .toBuffer()
  return files
}

describe('pictures in the commands', () => {
  test('check tells of pictures that cannot be published where a note names them, and goes on', async () => {
    const folder = scratch('check-pictures')
    const png = await noise(9, 9).png().toBuffer()
    writeFiles(folder, {
      'content/build.md': build,
      'content/sessions/2026-03-07-a.md': note([
        '![Empty](../photos/empty.jpg)',
        '![A PNG](../photos/png.jpg)',
        '![Words](../photos/words.png)',
      ]),
      'content/photos/empty.jpg': '',
      'content/photos/png.jpg': png,
      'content/photos/words.png': 'words',
      'content/photos/nobody-names-this.jpg': '',
    })
    const { status, out } = oddleg(['check', '--json', '--build', folder, '--date', '2026-12-31'])
    const { findings } = JSON.parse(out) as {
      findings: { rule: string; severity: string; file: string; line: number; column: number; mend: string | null }[]
    }
    expect(
      findings.map(({ rule, severity, file, line, column, mend }) => [
        rule,
        severity,
        `${file}:${line}:${column}`,
        mend,
      ]),
    ).toEqual([
      ['unreadable-picture', 'warning', 'content/sessions/2026-03-07-a.md:5:1', 'copy it anew from where it was taken'],
      ['odd-picture', 'note', 'content/sessions/2026-03-07-a.md:7:1', null],
      ['unreadable-picture', 'warning', 'content/sessions/2026-03-07-a.md:9:1', 'save it as JPEG or PNG'],
    ])
    expect(status).toBe(0)
  })

  test('build says which pictures it left out, publishes the rest, and puts words in their place', async () => {
    const folder = scratch('build-pictures')
    const cut = (await noise(300, 200).jpeg().toBuffer()).subarray(0, 9000)
    writeFiles(folder, {
      'content/build.md': build,
      'content/sessions/2026-03-07-a.md': note([
        '![The broken one](../photos/cut.jpg)',
        '![The whole one](../photos/whole.jpg)',
      ]),
      'content/photos/cut.jpg': cut,
      'content/photos/whole.jpg': await noise(30, 20).jpeg().toBuffer(),
    })
    const { status, err } = oddleg(['build', '--build', folder, '--date', '2026-12-31'])
    expect(err.split('\n')[0]).toBe(
      'Unexpected damage in picture `content/photos/cut.jpg`, expected a file that is whole: it is not published, its alternative text stands in its place. To mend it, copy it anew from where it was taken, or save it as JPEG.',
    )
    expect([status, readdirSync(join(folder, '_site/photos')).filter(name => !name.endsWith('.html')).length]).toEqual([
      0, 2,
    ])
  })

  test('Ctrl-C amid the pictures leaves the folder as it was and the finished ones for the next time', async () => {
    const folder = scratch('stop-pictures')
    writeFiles(folder, await photographs(6))
    const cache = join(folder, '.oddleg/pictures')
    const made = (): string[] => (existsSync(cache) ? readdirSync(cache).filter(name => !name.includes('.')) : [])
    const running = start(['build', '--build', folder, '--date', '2026-12-31'])
    let err = ''
    running.stderr.on('data', words => {
      err += words
    })
    const status = await new Promise(resolve => {
      const watch = setInterval(() => {
        if (made().length === 0) return
        clearInterval(watch)
        running.kill('SIGINT')
      }, 5)
      running.once('exit', code => resolve(code))
    })
    expect(status).toBe(130)
    expect(err).toMatch(/^\nStopped\. The folder is as it was\. \d+ of 6 pictures are kept for the next time\.\n$/)
    expect(readdirSync(folder).toSorted()).toEqual(['.oddleg', 'content'])
    expect(made().length).toBeLessThan(6)
    expect(oddleg(['build', '--build', folder, '--date', '2026-12-31']).status).toBe(0)
    expect(made()).toHaveLength(6)
  }, 120_000)

  test.each([
    [0, 300, 'Pictures 0 of 300, 0 %'],
    [123, 300, 'Pictures 123 of 300, 41 %'],
    [299, 300, 'Pictures 299 of 300, 99 %'],
    [300, 300, 'Pictures 300 of 300, 100 %'],
  ])('after %i of %i the terminal shows `%s`', (done, total, words) => {
    expect(progressWords(done, total)).toBe(words)
  })
})
