import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, test } from 'vitest'
import { root, scratch, smallBuild, smallNote, writeFiles } from '../commands/run-oddleg.ts'

const place = scratch('installed')
const elsewhere = scratch('elsewhere')

/** The package as `npm pack` makes it, unpacked beside its dependencies as an installation lays them out. */
beforeAll(() => {
  const packed = spawnSync('npm', ['pack', '--pack-destination', place], { cwd: root, encoding: 'utf8' })
  const tarball = readdirSync(place).find(name => name.endsWith('.tgz'))
  if (tarball === undefined) throw new Error(`npm pack gave nothing: ${packed.stderr}`)
  writeFiles(place, { 'package.json': '{"name":"elsewhere","private":true,"type":"module"}\n' })
  const installed = spawnSync('npm', ['install', '--prefer-offline', '--no-audit', '--no-fund', `./${tarball}`], {
    cwd: place,
    encoding: 'utf8',
  })
  if (installed.status !== 0) throw new Error(`npm install failed: ${installed.stderr}`)
  writeFiles(elsewhere, { 'content/build.md': smallBuild, 'content/sessions/2026-03-07-first.md': smallNote })
}, 300_000)

describe('installed from its tarball in an empty folder', () => {
  test('oddleg publishes a build that lies elsewhere', () => {
    const ran = spawnSync(
      join(place, 'node_modules/.bin/oddleg'),
      ['build', '--build', elsewhere, '--out', 'record', '--date', '2026-04-01'],
      { cwd: place, encoding: 'utf8' },
    )
    expect({ status: ran.status, there: existsSync(join(elsewhere, 'record/index.html')) }).toEqual({
      status: 0,
      there: true,
    })
    expect(readFileSync(join(elsewhere, 'record/sessions/2026-03-07-first/index.html'), 'utf8')).toContain('860')
  })

  test('a plugin works in plain Node, in a pipeline of its own', () => {
    writeFiles(place, {
      'lint.mjs': `import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { VFile } from 'vfile'
import unitCheck from 'oddleg/plugins/unit-check'
const file = new VFile('Drain 3 gal of it, then 2 L.')
const pipe = unified().use(remarkParse).use(unitCheck)
await pipe.run(pipe.parse(file), file)
console.log(file.messages.map(message => message.line + ':' + message.column + ' ' + message.ruleId).join())
`,
    })
    const ran = spawnSync(process.execPath, ['lint.mjs'], { cwd: place, encoding: 'utf8' })
    expect({ out: ran.stdout, err: ran.stderr }).toEqual({ out: '1:7 ambiguous-unit\n', err: '' })
  })
})
