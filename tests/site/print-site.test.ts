import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { expect, test } from 'vitest'
import { root, scratchFolder } from './published.ts'

const sheet = (address: string, title: string) => ({
  address,
  title,
  build: 'A',
  home: '#',
  styles: [],
  scripts: [],
  policy: "default-src 'none'",
  sheets: [],
  block: [],
  warning: [],
})
const page = (address: string, title: string) => ({
  sheet: sheet(address, title),
  title,
  wide: false,
  gutter: [],
  rows: [],
  before: null,
  after: null,
  look: 'plain',
})
const site = (...titles: readonly string[]) => ({
  language: 'en-GB',
  pages: titles.map(title => page(`parts/${title}/index.html`, title)),
})

/** Runs a script that prints sites by `printSite` of a package folder, in another folder, and gives what it said. */
function run(packageFolder: string, cwd: string, script: string) {
  const start = [
    `import { register } from ${JSON.stringify(pathToFileURL(join(root, 'node_modules/tsx/dist/esm/api/index.mjs')).href)}`,
    `register({ tsconfig: ${JSON.stringify(join(packageFolder, 'tsconfig.json'))} })`,
    `const { printSite } = await import(${JSON.stringify(pathToFileURL(join(packageFolder, 'site/print-site.ts')).href)})`,
    script,
  ].join('\n')
  const file = join(cwd, 'run.mjs')
  writeFileSync(file, start)
  const { stdout, stderr, status } = spawnSync(process.execPath, [file], { cwd, encoding: 'utf8' })
  return { said: stdout, complained: stderr, status }
}

const titlesOf = `const titles = files => files.filter(({ path }) => path.endsWith('.html')).map(({ path, content }) => path + ' ' + /<h1>(.*?)<\\/h1>/.exec(content)[1])`

test('a second site in the same process has its own pages', () => {
  const script = `${titlesOf}
    const first = titles(await printSite(${JSON.stringify(site('one', 'two'))}))
    const second = titles(await printSite(${JSON.stringify(site('three'))}))
    console.log(JSON.stringify([first, second]))`
  const { said, complained, status } = run(root, scratchFolder('cwd'), script)
  expect({ complained, status }).toEqual({ complained: '', status: 0 })
  expect(JSON.parse(said)).toEqual([
    ['parts/one/index.html one', 'parts/two/index.html two'],
    ['parts/three/index.html three'],
  ])
})

test('installed inside node_modules and run from elsewhere it prints the same bytes', () => {
  const home = scratchFolder('installed')
  const installed = join(home, 'node_modules', 'oddleg')
  mkdirSync(installed, { recursive: true })
  for (const name of ['site', 'src', 'package.json', 'tsconfig.json'])
    cpSync(join(root, name), join(installed, name), { recursive: true })
  symlinkSync(join(root, 'node_modules', '@11ty'), join(home, 'node_modules', '@11ty'))
  const script = `console.log(JSON.stringify(await printSite(${JSON.stringify(site('a b', 'ü'))})))`
  const [there, here] = [run(installed, scratchFolder('cwd'), script), run(root, `${root}/.tmp`, script)]
  expect(there.complained).toBe('')
  expect(there.said).toBe(here.said)
  expect(
    (JSON.parse(there.said) as { path: string }[]).map(({ path }) => path).filter(path => path.endsWith('.html')),
  ).toEqual(['parts/a b/index.html', 'parts/ü/index.html'])
})
