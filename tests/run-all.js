// Runs everything that `npm test` promises, prints what each part said, and ends with one line of counts.
import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('..', import.meta.url))
const bin = name => fileURLToPath(new URL(`../node_modules/.bin/${name}`, import.meta.url))
const scratch = `${root}.tmp`
const results = `${scratch}/vitest.json`
mkdirSync(scratch, { recursive: true })
rmSync(results, { force: true })

const parts = [
  ['types', bin('tsc'), ['--noEmit']],
  ['lint', bin('biome'), ['check', '--error-on-warnings', '.']],
  ['tests', bin('vitest'), ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${results}`]],
  [
    'the demo, built',
    process.execPath,
    ['src/commands/oddleg.js', 'build', '--build', '.', '--out', `${scratch}/site`, '--date', '2026-12-31'],
  ],
  ['links of the demo', process.execPath, ['--import', 'tsx', 'tests/site/check-links.ts', `${scratch}/site`]],
]

let passed = 0
let failed = 0
for (const [name, command, args] of parts) {
  console.log(`\n# ${name}`)
  const { status } = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, TMPDIR: scratch, CI: '1' },
  })
  const counts = name === 'tests' ? readCounts() : { passed: status === 0 ? 1 : 0, failed: status === 0 ? 0 : 1 }
  passed += counts.passed
  failed += counts.failed + (name === 'tests' && status !== 0 && counts.failed === 0 ? 1 : 0)
}
console.log(`\n${passed} passed, ${failed} failed`)
process.exitCode = failed === 0 ? 0 : 1

function readCounts() {
  try {
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(results, 'utf8'))
    return { passed: numPassedTests, failed: numFailedTests }
  } catch {
    return { passed: 0, failed: 1 }
  }
}
