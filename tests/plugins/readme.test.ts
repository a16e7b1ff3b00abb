import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'

const folder = join(import.meta.dirname, '../../plugins')
const readme = readFileSync(join(folder, 'README.md'), 'utf8')

const uses = (text: string): string[] => [...text.matchAll(/^ {2}\.use\((\w+)/gmu)].map(([, name]) => name ?? '')

test('the README lists every plugin and no other', () => {
  const listed = [...readme.matchAll(/^\| `([a-z-]+)`/gmu)].map(([, name]) => name)
  const plugins = readdirSync(folder).filter(name => existsSync(join(folder, name, 'index.ts')))
  expect(listed.toSorted()).toEqual(plugins.toSorted())
})

test('the order that the README gives is the order of the tests', () => {
  const chain = readFileSync(join(import.meta.dirname, 'chain.ts'), 'utf8')
  expect(uses(readme).slice(3)).toEqual(uses(chain))
  expect(uses(readme)).toHaveLength(13)
})
