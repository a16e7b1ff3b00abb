import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { oddleg, scratch, smallBuild, smallNote, start, writeFiles } from './run-oddleg.ts'

const day = ['--date', '2026-04-01']

function smallFolder(notes: Readonly<Record<string, string | Uint8Array>> = {}): string {
  const folder = scratch('build')
  writeFiles(folder, { 'content/build.md': smallBuild, 'content/sessions/2026-03-07-first.md': smallNote, ...notes })
  return folder
}

describe('oddleg init', () => {
  test('makes a build that checks without an error or a warning', () => {
    const folder = join(scratch('init'), 'my build')
    expect(oddleg(['init', folder, ...day]).status).toBe(0)
    expect(readdirSync(join(folder, 'content')).sort()).toEqual(['build.md', 'photos', 'sessions'])
    const { status, out } = oddleg(['check', '--build', folder, '--json', ...day])
    const { counts } = JSON.parse(out)
    expect({ status, error: counts.error, warning: counts.warning, fail: counts.fail }).toEqual({
      status: 0,
      error: 0,
      warning: 0,
      fail: 0,
    })
  })

  test('never writes over a file', () => {
    const folder = scratch('init')
    writeFiles(folder, { 'content/build.md': 'mine' })
    const { status, err } = oddleg(['init', folder, ...day])
    expect({
      status,
      kept: readFileSync(join(folder, 'content/build.md'), 'utf8'),
      said: err.includes('exists already: nothing was written'),
    }).toEqual({ status: 2, kept: 'mine', said: true })
  })
})

describe('oddleg note', () => {
  test('writes a dated note with the open jobs and what to measure next, and a second one of that name is refused', () => {
    const folder = smallFolder()
    const first = oddleg(['note', 'Tank in & strapped', '--build', folder, ...day])
    expect(first.status).toBe(0)
    const text = readFileSync(join(folder, 'content/sessions/2026-04-01-tank-in-strapped.md'), 'utf8')
    expect(text).toContain('title: "Tank in & strapped"\ndate: 2026-04-01\n')
    expect(text).toContain('- [ ] seal the hatch :job{#seal-hatch before=road}\n')
    expect(oddleg(['note', 'Tank in & strapped', '--build', folder, ...day]).status).toBe(2)
    expect(oddleg(['check', '--build', folder, ...day]).status).toBe(0)
  })
})

describe('oddleg explain', () => {
  test.each([
    ['voltage-drop', 'a check'],
    ['unit-slip', 'a rule for notes (warning)'],
    ['tank', 'a kind of part'],
    ['filled-volume', 'a property that holds a volume'],
    ['lbf_ft', 'a unit'],
  ])('%s is %s', (name, what) => {
    const { status, out } = oddleg(['explain', name])
    expect({ status, first: out.split('\n')[0] }).toEqual({ status: 0, first: `${name}: ${what}` })
  })

  test('a name one letter away is offered', () => {
    expect(oddleg(['explain', 'voltage-dorp'])).toEqual({
      status: 2,
      out: '',
      err: 'oddleg: Unexpected `voltage-dorp`, expected the name of a rule, a check, a kind, a property or a unit. Did you mean `voltage-drop`?\n',
    })
  })
})

describe('oddleg check', () => {
  test('gives findings, verdicts and counts as one JSON document', () => {
    const { status, out, err } = oddleg(['check', '--build', smallFolder(), '--json', ...day])
    const { findings, checks, counts } = JSON.parse(out)
    expect({
      status,
      err,
      findings,
      counted: counts.pass + counts.marginal + counts.fail + counts.missing + counts.waived,
    }).toEqual({ status: 0, err: '', findings: [], counted: checks.length })
    const drop = checks.find((row: { check: string }) => row.check === 'voltage-drop')
    expect({
      subject: drop.subject,
      verdict: drop.verdict,
      value: drop.result.value.toFixed(4),
      unit: drop.result.unit,
    }).toEqual({ subject: 'fuel-pump', verdict: 'pass', value: '0.2787', unit: 'V' })
    expect(drop.inputs.find((input: { path: string }) => input.path === 'circuit:fuel-pump/load')).toEqual({
      path: 'circuit:fuel-pump/load',
      value: 7,
      unit: 'A',
      file: 'content/sessions/2026-03-07-first.md',
      line: 9,
      column: 11,
    })
  })

  test.each([
    ['an error in a note', { 'content/sessions/2026-03-08-bad.md': '---\ntitle: Bad\ndate: 2026-02-30\n---\n' }, [], 1],
    [
      'a warning',
      { 'content/sessions/2026-03-08-odd.md': '---\ntitle: Odd\ndate: 2026-03-08\nhuors: 3\n---\n' },
      [],
      0,
    ],
    [
      'a warning, strictly',
      { 'content/sessions/2026-03-08-odd.md': '---\ntitle: Odd\ndate: 2026-03-08\nhuors: 3\n---\n' },
      ['--strict'],
      1,
    ],
    [
      'a failed check',
      {
        'content/sessions/2026-03-08-thin.md':
          '---\ntitle: Thin\ndate: 2026-03-08\ncircuits: { fuel-pump: { length: 9 m } }\n---\n',
      },
      [],
      1,
    ],
  ])('%s gives its exit status', (_, notes, options, status) => {
    expect(oddleg(['check', '--build', smallFolder(notes), ...day, ...options]).status).toBe(status)
  })

  test('one bad note stops nothing else', () => {
    const folder = smallFolder({
      'content/sessions/2026-03-08-bad.md':
        '---\ntitle: [ no end\n---\nStill :measure[380 mm]{of="fuel-tank/width"}.\n',
    })
    const { findings, checks } = JSON.parse(oddleg(['check', '--build', folder, '--json', ...day]).out)
    expect(findings.map((found: { rule: string }) => found.rule)).toContain('front-matter')
    expect(checks.some((row: { check: string }) => row.check === 'voltage-drop')).toBe(true)
  })
})

describe('a command that cannot run says why and gives 2', () => {
  test.each([
    ['a folder without content', ['check', '--build', scratch('empty')], 'without `content`'],
    ['a folder that is not there', ['build', '--build', '/nowhere/at/all'], 'without `content`'],
    [
      'a day that does not exist',
      ['check', '--date', '2026-02-30'],
      'Unexpected date `2026-02-30`, expected a day that exists, such as `2026-03-07`.',
    ],
    [
      'an edition that nobody named',
      ['build', '--build', smallFolder(), '--edition', 'club', ...day],
      'Unexpected edition `club`',
    ],
    [
      'a port that is no number',
      ['serve', '--build', smallFolder(), '--port', 'eighty', ...day],
      'Unexpected port `eighty`, expected a number from 0 to 65535.',
    ],
    ['an unknown command', ['chekc'], 'Did you mean check?'],
  ])('%s', (_, args, sentence) => {
    const { status, out, err } = oddleg(args)
    expect({ status, out, says: err.includes(sentence) }).toEqual({ status: 2, out: '', says: true })
  })
})

describe('oddleg build', () => {
  test('publishes nothing where a note has an error, and with --force publishes and shows it', () => {
    const folder = smallFolder({ 'content/sessions/2026-03-08-bad.md': '---\ntitle: Bad\ndate: 2026-02-30\n---\n' })
    const refused = oddleg(['build', '--build', folder, ...day])
    expect({ status: refused.status, there: existsSync(join(folder, '_site')) }).toEqual({ status: 1, there: false })
    expect(oddleg(['build', '--build', folder, '--force', ...day]).status).toBe(0)
    expect(readFileSync(join(folder, '_site/index.html'), 'utf8')).toContain('findings/index.html')
  })

  test('the same content gives the same bytes, whatever the day', () => {
    const folder = smallFolder()
    oddleg(['build', '--build', folder, '--out', 'one', '--date', '2026-04-01'])
    oddleg(['build', '--build', folder, '--out', 'two', '--date', '2027-05-02'])
    expect(allFiles(join(folder, 'two'))).toEqual(allFiles(join(folder, 'one')))
  })

  test('an output folder that holds something else is left alone', () => {
    const folder = smallFolder({ 'out/letter.txt': 'mine' })
    const { status, err } = oddleg(['build', '--build', folder, '--out', 'out', ...day])
    expect({
      status,
      files: readdirSync(join(folder, 'out')),
      says: err.includes('holds files that are no record of oddleg, such as `letter.txt`'),
    }).toEqual({ status: 2, files: ['letter.txt'], says: true })
  })

  test('an output folder that cannot be written stays as it was', () => {
    const folder = smallFolder({ 'file.txt': 'no folder' })
    const { status, err } = oddleg(['build', '--build', folder, '--out', 'file.txt/site', ...day])
    expect({ status, says: err.includes('Nothing was published') }).toEqual({ status: 2, says: true })
    if (process.getuid?.() !== 0) {
      mkdirSync(join(folder, 'locked'))
      chmodSync(join(folder, 'locked'), 0o500)
      expect(oddleg(['build', '--build', folder, '--out', 'locked/site', ...day]).status).toBe(2)
    }
  })

  test('a symbolic link out of content/ is neither read nor published', () => {
    const folder = smallFolder()
    writeFileSync(join(folder, 'secret.md'), '---\ntitle: Secret words\ndate: 2026-03-09\n---\n')
    symlinkSync(join(folder, 'secret.md'), join(folder, 'content/sessions/2026-03-09-secret.md'))
    oddleg(['build', '--build', folder, '--force', ...day])
    expect(JSON.stringify(allFiles(join(folder, '_site')))).not.toContain('Secret words')
  })
})

describe('oddleg serve', () => {
  test('serves the record on the loopback interface, shows an edit, and ends with Ctrl-C', async () => {
    const folder = smallFolder()
    const served = start(['serve', '--build', folder, '--port', '0', ...day])
    const address = await firstLine(served.stdout)
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/)
    expect(await (await fetch(address)).text()).toContain('Small build')
    writeFileSync(join(folder, 'content/build.md'), smallBuild.replace('Small build', 'Renamed build'))
    await expect
      .poll(async () => (await (await fetch(address)).text()).includes('Renamed build'), {
        timeout: 20_000,
        interval: 200,
      })
      .toBe(true)
    expect((await fetch(`${address}..%2f..%2fsecret.md`)).status).toBe(404)
    served.kill('SIGINT')
    expect(await new Promise(resolve => served.once('exit', resolve))).toBe(0)
  })

  test('a port in use is said', async () => {
    const taken = createServer().listen(0, '127.0.0.1')
    await new Promise(resolve => taken.once('listening', resolve))
    const bound = taken.address()
    const port = typeof bound === 'object' && bound !== null ? bound.port : 0
    const { status, err } = oddleg(['serve', '--build', smallFolder(), '--port', String(port), ...day])
    taken.close()
    expect({
      status,
      says: err.includes(
        `Port ${port} is in use by another program. Name another with --port, or 0 for any that is free.`,
      ),
    }).toEqual({ status: 2, says: true })
  })
})

function allFiles(folder: string): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, withFileTypes: true }).filter(entry => entry.isFile())
  return Object.fromEntries(
    names
      .map(entry => join(entry.parentPath, entry.name))
      .sort()
      .map(file => [file.slice(folder.length), readFileSync(file, 'latin1')]),
  )
}

function firstLine(stream: NodeJS.ReadableStream): Promise<string> {
  return new Promise(resolve => {
    let text = ''
    stream.on('data', chunk => {
      text += String(chunk)
      if (text.includes('\n')) resolve(text.split('\n')[0] ?? '')
    })
  })
}
