import type { Verdict } from './verdict.ts'

/** One thing to measure or write down, and the answers that wait for it. */
export interface NextMeasurement {
  readonly path: string
  readonly why: string
  /** `voltage-drop fuel-pump`, with the aspect where there is one. */
  readonly settles: readonly string[]
}

/** What to measure next, in the order in which the fewest measurements turn the most open answers into closed ones. */
export function measureNext(verdicts: readonly Verdict[]): NextMeasurement[] {
  const open = verdicts.filter(({ working }) => working.measureNext.length > 0)
  const reasons = new Map(
    open.flatMap(({ working }) => working.measureNext.map(({ path, why }) => [path, why] as const)).reverse(),
  )
  const waiting = open.map(verdict => ({
    name: nameOf(verdict),
    needs: new Set(verdict.working.measureNext.map(({ path }) => path)),
  }))
  const chosen: NextMeasurement[] = []
  for (let path = bestOf(waiting); path !== null; path = bestOf(waiting)) {
    const settled = waiting.filter(({ needs }) => needs.has(path))
    chosen.push({ path, why: reasons.get(path) ?? '', settles: settled.map(({ name }) => name) })
    for (const { needs } of settled) needs.delete(path)
  }
  return chosen
}

const nameOf = ({ check, subject, aspect }: Verdict): string =>
  [check, subject, aspect].filter(part => part !== null).join(' ')

interface Waiting {
  readonly needs: ReadonlySet<string>
}

/** Of the answers that lack least, the path that most of them lack; then the one that most answers lack; then by name. */
function bestOf(waiting: readonly Waiting[]): string | null {
  const open = waiting.filter(({ needs }) => needs.size > 0)
  const least = Math.min(...open.map(({ needs }) => needs.size))
  const nearest = open.filter(({ needs }) => needs.size === least)
  const paths = [...new Set(nearest.flatMap(({ needs }) => [...needs]))].sort()
  const lackedBy = (among: readonly Waiting[], path: string): number =>
    among.filter(({ needs }) => needs.has(path)).length
  const order = (one: string, other: string): number =>
    lackedBy(nearest, other) - lackedBy(nearest, one) || lackedBy(open, other) - lackedBy(open, one)
  return paths.sort(order)[0] ?? null
}
