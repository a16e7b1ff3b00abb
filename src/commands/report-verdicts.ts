import { styleText } from 'node:util'
import type { Verdict, VerdictWord } from '../checker/verdict.ts'

const marks: Readonly<Record<VerdictWord, { sign: string; colour: Parameters<typeof styleText>[0] }>> = {
  pass: { sign: '✓', colour: 'green' },
  waived: { sign: '○', colour: 'blue' },
  marginal: { sign: '△', colour: 'yellow' },
  missing: { sign: '…', colour: 'magenta' },
  fail: { sign: '✗', colour: 'red' },
}

/** The verdicts as lines for a terminal, the worst first; those that pass are only counted. */
export function reportVerdicts(verdicts: readonly Verdict[], colour: boolean): string {
  const order: readonly VerdictWord[] = ['fail', 'marginal', 'missing', 'waived']
  const lines = order.flatMap(word =>
    verdicts.filter(({ verdict }) => verdict === word).flatMap(verdict => reportOne(verdict, colour)),
  )
  const passed = verdicts.filter(({ verdict }) => verdict === 'pass').length
  return [
    ...lines,
    ...(passed > 0
      ? [`${paint(marks.pass.colour, `${marks.pass.sign} pass`, colour)}  ${passed} of ${verdicts.length} checks`]
      : []),
  ].join('\n')
}

function reportOne(verdict: Verdict, colour: boolean): string[] {
  const { sign, colour: style } = marks[verdict.verdict]
  const aspect = verdict.aspect === null ? '' : `, ${verdict.aspect}`
  const first = `${paint(style, `${sign} ${verdict.verdict.padEnd(8)}`, colour)} ${paint('bold', verdict.check, colour)} ${verdict.subject}${aspect}`
  const missing = verdict.working.needs.map(({ path, why }) => `    measure next: ${path} (${why})`)
  const offenders = verdict.working.offenders.map(({ path, why }) => `    ${path} ${why}`)
  return [first, ...(verdict.working.says === '' ? [] : [`    ${verdict.working.says}`]), ...offenders, ...missing]
}

const paint = (style: Parameters<typeof styleText>[0], text: string, colour: boolean): string =>
  colour ? styleText(style, text, { validateStream: false }) : text
