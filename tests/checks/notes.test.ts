import { cp, mkdir, mkdtemp, readdir, readFile, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { readBuildFolder } from '../../src/build.ts'
import { loadChecks } from '../../src/checker/load-checks.ts'
import type { Verdict, VerdictInput } from '../../src/checker/verdict.ts'

const folder = join(import.meta.dirname, 'notes')
const names = (await readdir(folder))
  .filter(name => name.endsWith('.md') && !name.endsWith('build.md'))
  .map(name => name.slice(0, -3))
const checks = (await loadChecks('src/checks')).map(({ id }) => id)

test('each check has a note that it is tried on, and each note a check', () => {
  expect([...names].sort()).toEqual([...checks].sort())
})

/** A content folder of that note and its build.md, else the one that all share. */
async function contentOf(name: string): Promise<string> {
  const build = await mkdtemp(join(tmpdir(), 'note-'))
  await mkdir(join(build, 'content/sessions'), { recursive: true })
  const own = (await readdir(folder)).includes(`${name}.build.md`) ? `${name}.build.md` : 'build.md'
  await cp(join(folder, own), join(build, 'content/build.md'))
  await cp(join(folder, `${name}.md`), join(build, 'content/sessions/note.md'))
  return build
}

const told = ({ path, value, unit, file, line, column }: VerdictInput): string =>
  `  ${path} ${value}${unit === null ? '' : ` ${unit}`} at ${file.split('/').at(-1)}:${line}:${column}`

function linesOf({
  subject,
  aspect,
  verdict,
  result,
  limit,
  inputs,
  assumed,
  missing,
  offenders,
  working,
}: Verdict): string[] {
  const figure =
    result === null
      ? 'no result'
      : `${Number(result.value.toPrecision(6))} ${result.unit}, U ${Number(result.uncertainty.toPrecision(2))}`
  const ends =
    limit === null
      ? 'no limit'
      : `limit ${[limit.min, limit.max].map(end => (end === null ? 'open' : Number(end.toPrecision(6)))).join(' to ')} ${limit.unit} by ${limit.who}`
  return [
    `${[subject, aspect].filter(part => part !== null).join(' ')}: ${verdict}; ${figure}; ${ends}`,
    `  ${working.says}`,
    ...inputs.map(told),
    ...assumed.map(sentence => `  assumed: ${sentence}`),
    ...missing.map(path => `  missing: ${path}`),
    ...(offenders ?? []).map(path => `  offender: ${path}`),
  ]
}

describe('from the words of a note to the verdict', () => {
  test.each(names)('%s', async name => {
    const built = await readBuildFolder(await contentOf(name), { today: '2026-12-31' })
    if ('trouble' in built) throw new Error(built.trouble)
    expect(built.findings.map(({ rule, message }) => `${rule}: ${message}`)).toEqual([])
    const lines = built.verdicts.filter(({ check }) => check === name).flatMap(linesOf)
    const text = `${lines.join('\n').replaceAll('\u202f', ' ')}\n`
    const expected = join(folder, `${name}.txt`)
    if (process.env.UPDATE === '1') await writeFile(expected, text)
    expect(text).toBe(await readFile(expected, 'utf8'))
  })
})
