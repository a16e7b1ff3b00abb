import { readdirSync, readFileSync, statSync } from 'node:fs'
import { dirname, join, relative, resolve, sep } from 'node:path'
import { describe, expect, test } from 'vitest'

const root = resolve(import.meta.dirname, '..')

/** What each folder may import besides itself and packages; `type` allows types only. */
const mayImport: Record<string, readonly string[]> = {
  'src/quantities': [],
  'src/findings': [],
  plugins: ['src/quantities', 'src/findings'],
  'src/notes': ['plugins', 'src/quantities', 'src/findings'],
  'src/facts': ['src/notes', 'type plugins', 'src/quantities', 'src/findings'],
  'src/record': ['src/facts', 'src/quantities', 'src/findings'],
  'src/checker': ['src/quantities', 'src/record', 'type src/facts', 'type src/findings'],
  'src/checks': ['src/checker', 'src/quantities'],
  'src/search': ['src/record', 'src/quantities', 'type src/checker', 'type src/facts', 'type src/findings'],
  'src/wiring': ['src/record', 'src/quantities', 'type src/checker', 'type src/facts', 'type src/findings'],
  'src/editions': [
    'src/record',
    'src/quantities',
    'type src/checker',
    'type src/facts',
    'type src/findings',
    'type plugins',
  ],
  'src/pictures': ['type src/editions', 'src/findings'],
  'src/paper': ['type src/editions', 'type src/exports'],
  'src/exports': [
    'src/editions',
    'src/record',
    'src/wiring',
    'src/search',
    'src/quantities',
    'type src/checker',
    'type src/facts',
    'type src/findings',
  ],
  'src/drafts': ['src/facts', 'src/quantities', 'src/findings', 'type src/record'],
  'src/pages': [
    'src/editions',
    'src/record',
    'src/wiring',
    'src/quantities',
    'type src/pictures',
    'type src/checker',
    'type src/checks',
    'type src/facts',
    'src/findings',
    'plugins',
  ],
  site: ['type src/pages'],
  'src/commands': ['src', 'site', 'plugins'],
  'src/build.ts': ['src', 'site', 'plugins'],
  'src/publish.ts': ['src', 'site', 'plugins'],
}

/** Folders that may read or write files. */
const mayTouchDisk = [
  'src/notes',
  'src/checker',
  'src/pictures',
  'src/exports',
  'src/paper/find-browser.ts',
  'src/commands',
  'src/build.ts',
  'site/print-site.ts',
]

interface Import {
  readonly file: string
  readonly line: number
  readonly target: string
  readonly typeOnly: boolean
}

function sources(folder: string): string[] {
  return readdirSync(join(root, folder)).flatMap(name => {
    const path = join(folder, name)
    if (statSync(join(root, path)).isDirectory()) return sources(path)
    return /\.(ts|tsx|js)$/.test(name) && !name.endsWith('.d.ts') ? [path] : []
  })
}

const files = ['src', 'plugins', 'site'].flatMap(sources).map(file => file.split(sep).join('/'))

function importsOf(file: string): Import[] {
  const text = readFileSync(join(root, file), 'utf8')
  const pattern =
    /^(?<lead>\s*(?:import|export)\b[^'"`;]*?)(?:from\s+)?['"](?<target>[^'"]+)['"]|import\(\s*['"](?<dynamic>[^'"]+)['"]/gm
  return [...text.matchAll(pattern)].map(match => ({
    file,
    line: text.slice(0, match.index).split('\n').length,
    target: match.groups?.target ?? match.groups?.dynamic ?? '',
    typeOnly: /^\s*(import|export)\s+type\b/.test(match.groups?.lead ?? ''),
  }))
}

const imports = files.flatMap(importsOf)
const folderOf = (file: string): string => {
  if (file === 'src/build.ts' || file === 'src/publish.ts') return file
  if (file.startsWith('src/')) return file.split('/').slice(0, 2).join('/')
  return file.split('/')[0] ?? ''
}
const resolveImport = (found: Import): string | null =>
  found.target.startsWith('.')
    ? relative(root, resolve(root, dirname(found.file), found.target))
        .split(sep)
        .join('/')
    : null

function isAllowed(found: Import): boolean {
  const target = resolveImport(found)
  if (target === null) return true
  const [from, to] = [folderOf(found.file), folderOf(target)]
  if (from === to) return from !== 'plugins' || samePlugin(found, target)
  return (mayImport[from] ?? []).some(
    allowed =>
      allowed === to || (allowed === 'src' && to.startsWith('src')) || (found.typeOnly && allowed === `type ${to}`),
  )
}

/** One plugin does not import another: each stands alone, on `plugins/tree`, the ground that all share. */
function samePlugin(found: Import, target: string): boolean {
  const [own, other] = [found.file.split('/')[1], target.split('/')[1]]
  return found.typeOnly || own === other || other === 'tree'
}

describe('the folders of the project', () => {
  test('each folder imports only from the folders that its row allows', () => {
    expect(
      imports.filter(found => !isAllowed(found)).map(({ file, line, target }) => `${file}:${line} imports ${target}`),
    ).toEqual([])
  })

  test('only the named folders touch the disk', () => {
    const touching = imports.filter(({ target }) => /^(node:)?fs(\/|$)/.test(target)).map(({ file }) => file)
    expect(touching.filter(file => !mayTouchDisk.some(allowed => file.startsWith(allowed)))).toEqual([])
  })

  test('no file imports itself by a roundabout way', () => {
    const next = new Map(files.map(file => [file, importsOf(file).flatMap(found => resolveImport(found) ?? [])]))
    expect(files.filter(file => reaches(file, next)).map(file => `${file} is in a cycle`)).toEqual([])
  })

  test('no file is over 250 lines, and no folder has a number, `utils` or a barrel', () => {
    const long = files.filter(file => readFileSync(join(root, file), 'utf8').split('\n').length > 251)
    const vague = files.filter(file =>
      /(^|\/)(utils?|helpers?|common|misc|manager|handler|processor|\d[^/]*)(\.|\/|-)/.test(file),
    )
    expect({ long, vague }).toEqual({ long: [], vague: [] })
  })

  test('the top level holds the five folders, the two pages the one-line configurations', () => {
    const allowed = [
      'README.md',
      'DEVELOPERS.md',
      'CHANGELOG.md',
      'package.json',
      'package-lock.json',
      'tsconfig.json',
      'biome.json',
      'vitest.config.ts',
      'content',
      'plugins',
      'src',
      'tests',
      'site',
    ]
    const generated = ['node_modules', '_site', 'dist', 'coverage']
    expect(
      readdirSync(root).filter(name => !name.startsWith('.') && ![...allowed, ...generated].includes(name)),
    ).toEqual([])
  })
})

function reaches(start: string, next: ReadonlyMap<string, readonly string[]>): boolean {
  const seen = new Set<string>()
  const waiting = [...(next.get(start) ?? [])]
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (file === start) return true
    if (seen.has(file)) continue
    seen.add(file)
    waiting.push(...(next.get(file) ?? []))
  }
  return false
}
