import { readdir } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Check } from './check.ts'

/** Loads every check of a folder, sorted by name: the folder is the list. Throws on an empty folder and on an id that is not its file's name. */
export async function loadChecks(folder: string): Promise<Check[]> {
  const names = (await readdir(folder)).filter(name => /\.[jt]s$/.test(name) && !name.endsWith('.d.ts')).sort()
  if (names.length === 0) throw new Error(`Unexpected empty folder \`${folder}\`, expected one file for each check`)
  return Promise.all(names.map(name => loadCheck(folder, name)))
}

async function loadCheck(folder: string, name: string): Promise<Check> {
  const loaded: { readonly default?: Partial<Check> } = await import(pathToFileURL(resolve(join(folder, name))).href)
  const check = loaded.default
  const id = name.replace(/\.[jt]s$/, '')
  if (check?.id === undefined)
    throw new Error(
      `Unexpected \`${name}\` without a check, expected \`export default defineCheck({ id: '${id}', … })\``,
    )
  if (check.id !== id)
    throw new Error(`Unexpected id \`${check.id}\` in \`${name}\`, expected \`${id}\`, the name of its file`)
  return check as Check
}
