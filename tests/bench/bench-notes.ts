import { spawnSync } from 'node:child_process'
import { mkdirSync, rmSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { performance } from 'node:perf_hooks'
import { readBuildFolder } from '../../src/build.ts'
import { makeNoteMemory } from '../../src/notes/note-memory.ts'
import { generateNotes } from './generate-notes.ts'

const root = resolve(import.meta.dirname, '../..')
const scratch = join(root, '.tmp', 'bench')
const rounds = 3

/** Whole processes over 100 and 1,000 generated notes: our build beside Eleventy rendering the same notes through remark. */
export async function run(): Promise<void> {
  console.log('notes  what                                        median s   ratio to Eleventy with remark')
  for (const count of [100, 1000]) {
    const folder = join(scratch, String(count))
    rmSync(folder, { recursive: true, force: true })
    mkdirSync(folder, { recursive: true })
    generateNotes(folder, count)
    const [ours, eleventy] = pairs(folder)
    print(count, 'Eleventy with remark, pages only', eleventy, eleventy)
    print(count, 'oddleg build, cold: read, check, publish', ours, eleventy)
    print(count, 'oddleg read and check, warm, one note edited', warm(folder), eleventy)
  }
}

function print(count: number, what: string, seconds: number, against: number): void {
  console.log(
    `${String(count).padStart(5)}  ${what.padEnd(46)}${seconds.toFixed(2).padStart(6)}${(seconds / against).toFixed(2).padStart(12)}`,
  )
}

/** The two in turn, so that a machine that drifts slows both. */
function pairs(folder: string): [number, number] {
  const ours: number[] = []
  const theirs: number[] = []
  for (let round = 0; round < rounds; round += 1) {
    ours.push(
      timed([
        'src/commands/oddleg.js',
        'build',
        '--build',
        folder,
        '--out',
        join(folder, '_site'),
        '--force',
        '--date',
        '2026-01-01',
      ]),
    )
    theirs.push(timed(['--import', 'tsx', 'tests/bench/eleventy-with-remark.js', folder]))
  }
  return [median(ours), median(theirs)]
}

function timed(args: readonly string[]): number {
  const begun = performance.now()
  const { status, stderr } = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' })
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}: ${stderr}`)
  return (performance.now() - begun) / 1000
}

function warm(folder: string): number {
  const memory = makeNoteMemory()
  const options = { today: '2026-01-01', memory }
  readBuildFolder(folder, options)
  const times = Array.from({ length: rounds }, () => {
    generateOne(folder)
    const begun = performance.now()
    readBuildFolder(folder, options)
    return (performance.now() - begun) / 1000
  })
  return median(times)
}

let edits = 0
function generateOne(folder: string): void {
  edits += 1
  const file = join(folder, 'content', 'sessions', '2020-01-01-session-0.md')
  spawnSync('sh', ['-c', `printf '\\nEdited ${edits} times.\\n' >> '${file}'`])
}

const median = (times: number[]): number =>
  times.toSorted((one, other) => one - other)[Math.floor(times.length / 2)] ?? 0
