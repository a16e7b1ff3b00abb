import { describe, expect, test } from 'vitest'
import type { Check, Example } from '../../src/checker/check.ts'
import { loadChecks } from '../../src/checker/load-checks.ts'
import type { Verdict } from '../../src/checker/verdict.ts'
import type { Quantity } from '../../src/quantities/quantity.ts'
import { unitOf } from '../../src/quantities/units.ts'
import { exampleId, type Given } from '../checker/record-maker.ts'
import { answersTo } from './answer-to.ts'
import { decimal, made, variablePaths } from './vary.ts'

const checks = await loadChecks('src/checks')

const sizeOf = ({ number }: Quantity): string => decimal(Math.abs(number ?? 1) || 1)
const symbolOf = ({ unit }: Quantity): string => unitOf(unit).symbol

/** What no figure can be, but for those that may be zero or below: a temperature, a place ahead of the front axle. */
const nonsense: Readonly<Record<string, (quantity: Quantity) => string>> = {
  'below zero': quantity => `-${sizeOf(quantity)} ${symbolOf(quantity)}`,
  zero: quantity => `0 ${symbolOf(quantity)}`,
  'ten times less sure than it is large': quantity =>
    `${sizeOf(quantity)} ${symbolOf(quantity)} ± ${decimal(10 * Number(sizeOf(quantity)))} ${symbolOf(quantity)}`,
  'of three hundred digits': quantity => `1${'0'.repeat(299)} ${symbolOf(quantity)}`,
  'of thirty digits': quantity => `1${'0'.repeat(29)} ${symbolOf(quantity)}`,
}
/** What is written honestly and is no single figure. */
const loose: Readonly<Record<string, (quantity: Quantity) => string>> = {
  'a range': quantity =>
    `${decimal(Number(sizeOf(quantity)) * 0.5)} to ${decimal(Number(sizeOf(quantity)) * 1.5)} ${symbolOf(quantity)}`,
  'only a least': quantity => `>${sizeOf(quantity)} ${symbolOf(quantity)}`,
  'only a most': quantity => `<${sizeOf(quantity)} ${symbolOf(quantity)}`,
  'only about': quantity => `about ${sizeOf(quantity)} ${symbolOf(quantity)}`,
}

/** Where nothing is a true answer: no load, no joint, a clearance of none, a hole that is not there. */
const mayBeNothing =
  /(^|\.)(load|at|joints|length|wall|arm|clearance|front-clearance|rear-clearance|front-overhang|rear-overhang|inside-radius|return-bore|fill-line|front-angle|rear-angle|current|after|sleeve|resistance|let-through|clears|rating)$/
/** Where less than nothing is: behind is counted from the front axle, and it freezes. */
const mayBeLess = /(^|\.)(at|ambient|insulation|temperature-in|temperature-out|zones\.[a-z-]+)$/
/** A reading that has to lie above another passes where it surely does, however unsure. */
const mayBeUnsure = /(^|\.)(front-angle|rear-angle|joints|wall|ground-clearance)$/

interface Tried {
  readonly path: string
  readonly way: string
  readonly verdict: Verdict | null
  /** As the example stands. */
  readonly base: Verdict | null
}

const keyOf = (path: string): string => path.slice(path.indexOf('/') + 1)

/** Every property that an example of the check gives, once, written in each of these ways. */
function tried(check: Check, ways: typeof nonsense): Tried[] {
  const seen = new Set<string>()
  const found: Tried[] = []
  for (const example of check.examples.filter(({ expect: word }) => word !== 'missing'))
    for (const path of variablePaths(example.given)) {
      const name = `${example.aspect ?? ''} ${path.replace(/:[^/]+/, '')}`
      if (seen.has(name)) continue
      seen.add(name)
      const base = answerWith(check, example, { path: '', write: String })
      for (const [way, write] of Object.entries(ways))
        found.push({ path, way, base, verdict: answerWith(check, example, { path, write }) })
    }
  return found
}

function answerWith(
  check: Check,
  example: Example,
  { path, write }: { path: string; write: (quantity: Quantity) => string },
): Verdict | null {
  const given: Given = made(example.given, (quantity, at) =>
    at === path ? write(quantity) : (example.given[at] ?? ''),
  )
  const found = answersTo(check, given).filter(({ aspect }) => aspect === (example.aspect ?? null))
  return found.find(({ subject }) => subject === exampleId || subject.startsWith(`${exampleId}/`)) ?? found[0] ?? null
}

/** The figure itself moved the answer: it stands among what the uncertainty or the working comes from. */
function turnsOn({ inputs, working }: Verdict, path: string): boolean {
  const own = path.replace(/^[a-z-]+\//, `${exampleId}/`).replace(/^[a-z-]+:/, '')
  const isOwn = (one: string | null): boolean => one !== null && one.replace(/^[a-z-]+:/, '') === own
  return inputs.some(input => isOwn(input.path)) && working.values.some(value => isOwn(value.path))
}

const outcome = (verdict: Verdict | null): string => JSON.stringify([verdict?.result, verdict?.limit])

const notFinite = (_key: string, value: unknown): unknown =>
  typeof value === 'number' && !Number.isFinite(value) ? 'NOT FINITE' : value
const isUnspeakable = (verdict: Verdict | null): boolean =>
  /NaN|Infinity|NOT FINITE|undefined/.test(JSON.stringify(verdict, notFinite) ?? '')

describe.each(checks.map(check => [check.id, check] as const))('%s', (_, check) => {
  const wrong = tried(check, nonsense)
  const written = tried(check, loose)

  test('no figure, however wrong, puts into its words what is no number', () => {
    const bad = [...wrong, ...written].filter(({ verdict }) => isUnspeakable(verdict))
    expect(bad.map(({ path, way }) => `${path} ${way}`)).toEqual([])
  })

  test('a figure that cannot be is refused in words, or fails', () => {
    const passed = wrong.filter(({ verdict }) => verdict !== null && ['pass', 'waived'].includes(verdict.verdict))
    const swallowed = passed.filter(({ path, way, verdict, base }) => {
      const key = keyOf(path)
      const isTrue =
        mayBeLess.test(key) ||
        (way === 'zero' && mayBeNothing.test(key)) ||
        (way.startsWith('ten') && mayBeUnsure.test(key))
      return verdict !== null && turnsOn(verdict, path) && outcome(verdict) !== outcome(base) && !isTrue
    })
    expect(swallowed.map(({ path, way, verdict }) => `${path} ${way}: ${verdict?.working.says}`)).toEqual([])
  })

  test('what is refused says why', () => {
    const refused = wrong.flatMap(({ verdict }) => (verdict?.verdict === 'missing' ? verdict.working.needs : []))
    expect(refused.filter(({ why }) => why.trim().split(' ').length < 3)).toEqual([])
  })

  test('a bound passes on one side at most, where the answer turns on it', () => {
    const sides = new Map<string, Verdict[]>()
    for (const { path, way, verdict } of written)
      if (way.startsWith('only a ') && verdict !== null && verdict.limit !== null && turnsOn(verdict, path))
        sides.set(path, [...(sides.get(path) ?? []), verdict])
    const both = [...sides].filter(
      ([, verdicts]) =>
        verdicts.length === 2 &&
        verdicts.every(({ verdict, result }) => verdict === 'pass' && (result?.uncertainty ?? 0) > 0),
    )
    expect(both.map(([path, [one]]) => `${path}: ${one?.working.says}`)).toEqual([])
  })
})
