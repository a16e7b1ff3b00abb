import { spawnSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { oddleg, root, scratch, smallBuild, smallNote, writeFiles } from '../commands/run-oddleg.ts'

const folder = scratch('draft')
writeFiles(folder, { 'content/build.md': smallBuild, 'content/sessions/2026-03-07-first.md': smallNote })
const draft = (file: string, ...more: readonly string[]) =>
  oddleg(['draft', file, '--build', folder, '--date', '2026-04-01', ...more])

function given(name: string, content: string | Uint8Array): string {
  const file = join(scratch('given'), name)
  writeFileSync(file, content)
  return file
}

describe('oddleg draft', () => {
  test('writes a note from a list, prints its path, and the note checks without a mistake', () => {
    const { status, out, err } = draft(given('spring order.csv', 'Part,Price\nfuel filter,£4.20\n'), '--json')
    expect({ status, err, name: JSON.parse(out).file.split('/').at(-1) }).toEqual({
      status: 0,
      err: '',
      name: '2026-04-01-spring-order.md',
    })
    expect(readFileSync(join(folder, 'content/sessions/2026-04-01-spring-order.md'), 'utf8')).toContain(
      'title: "spring order"\ndate: 2026-04-01\nparts:\n  fuel-filter:\n    name: "fuel filter"\n    cost: "£4.20"\n    action: ordered\n---\n',
    )
    const { findings } = JSON.parse(oddleg(['check', '--json', '--build', folder, '--date', '2026-04-02']).out)
    expect(findings).toEqual([])
  })

  test('takes words from standard input under a title of its own, and never writes over a note', () => {
    const run = () =>
      spawnSync(
        process.execPath,
        [
          join(root, 'src/commands/oddleg.js'),
          'draft',
          '-',
          '--build',
          folder,
          '--date',
          '2026-04-01',
          '--title',
          'On the bench',
        ],
        { cwd: root, encoding: 'utf8', input: 'Need to sweep the floor.\n' },
      )
    expect(run().status).toBe(0)
    expect(readFileSync(join(folder, 'content/sessions/2026-04-01-on-the-bench.md'), 'utf8')).toBe(
      '---\ntitle: "On the bench"\ndate: 2026-04-01\n---\n\nNeed to sweep the floor.\n\n## Jobs that the words name\n\n- [ ] sweep the floor :job{#sweep-the-floor}\n',
    )
    const again = run()
    expect({
      status: again.status,
      said: again.stderr.includes('exists already: nothing was written. Give the note another title with --title.'),
    }).toEqual({ status: 2, said: true })
  })

  test.each([
    ['empty.csv', '', '`empty.csv` is empty, expected a row of column names and a row for each part.'],
    [
      'latin.csv',
      new Uint8Array([80, 97, 114, 116, 10, 107, 0x9d, 233, 101]),
      '`latin.csv` has bytes on line 2 that are neither UTF-8 nor Windows-1252: save it as UTF-8, so that no letter is lost.',
    ],
    [
      'old.xls',
      new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]),
      '`old.xls` is a workbook of the old kind (XLS): save it as XLSX or CSV.',
    ],
    ['no.xlsx', 'Part,Qty', '`no.xlsx` is no XLSX workbook: it cannot be unpacked.'],
    ['quiet.txt', '\n \n', '`quiet.txt` holds no words, expected notes of a session.'],
  ])('%s is one sentence and exit 2', (name, content, message) => {
    const { status, out, err } = draft(given(name, content))
    expect({ status, out, err }).toEqual({ status: 2, out: '', err: `oddleg: ${message}\n` })
  })

  test('a file that is not there is one sentence and exit 2', () => {
    const { status, err } = draft('nowhere.csv')
    expect({ status, err }).toEqual({
      status: 2,
      err: "oddleg: `nowhere.csv` could not be read: ENOENT: no such file or directory, open 'nowhere.csv'.\n",
    })
  })
})

describe('oddleg build --export-only', () => {
  test('publishes the record, its schema and its tables without a page, the same bytes twice', () => {
    const run = (out: string) =>
      oddleg(['build', '--export-only', '--build', folder, '--out', out, '--date', '2026-04-02'])
    expect(run('_one')).toMatchObject({ status: 0, out: expect.stringMatching(/_one\/record\.json\n$/) })
    expect(run('_two').status).toBe(0)
    const same = [
      'record.json',
      'record.schema.json',
      'tables/parts.csv',
      'tables/record.xlsx',
      'tables/record.ods',
    ].map(file => Buffer.compare(readFileSync(join(folder, '_one', file)), readFileSync(join(folder, '_two', file))))
    expect(same).toEqual([0, 0, 0, 0, 0])
  })
})
