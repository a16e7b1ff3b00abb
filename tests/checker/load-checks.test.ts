import { mkdir, mkdtemp, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { loadChecks } from '../../src/checker/load-checks.ts'

async function folderWith(files: Readonly<Record<string, string>>): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'checks-'))
  await mkdir(folder, { recursive: true })
  for (const [name, text] of Object.entries(files)) await writeFile(join(folder, name), text)
  return folder
}

describe('the folder of checks is their list', () => {
  test('every file is loaded, in the order of names', async () => {
    const folder = await folderWith({
      'b-check.js': "export default { id: 'b-check' }",
      'a-check.js': "export default { id: 'a-check' }",
      'notes.txt': 'no check',
    })
    expect((await loadChecks(folder)).map(({ id }) => id)).toEqual(['a-check', 'b-check'])
  })

  test('an id that is not the name of its file is refused', async () => {
    const folder = await folderWith({ 'a-check.js': "export default { id: 'another' }" })
    await expect(loadChecks(folder)).rejects.toThrow(
      new Error('Unexpected id `another` in `a-check.js`, expected `a-check`, the name of its file'),
    )
  })

  test('a file without a check is refused', async () => {
    const folder = await folderWith({ 'a-check.js': 'export const check = {}' })
    await expect(loadChecks(folder)).rejects.toThrow(
      new Error("Unexpected `a-check.js` without a check, expected `export default defineCheck({ id: 'a-check', … })`"),
    )
  })

  test('an empty folder is refused', async () => {
    const folder = await folderWith({})
    await expect(loadChecks(folder)).rejects.toThrow(
      new Error(`Unexpected empty folder \`${folder}\`, expected one file for each check`),
    )
  })
})
