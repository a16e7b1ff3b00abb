import { evaluate } from 'mathjs'
import { describe, expect, test } from 'vitest'
import type { Example } from '../../src/checker/check.ts'
import { loadChecks } from '../../src/checker/load-checks.ts'
import { toSi } from '../../src/checker/unit.ts'
import type { WorkedStep } from '../../src/checker/verdict.ts'
import { units } from '../../src/quantities/units.ts'
import { answerTo } from '../checks/answer-to.ts'

const checks = await loadChecks('src/checks')
const bySymbol = new Map([...units].reverse().map(({ symbol, id }) => [symbol, id]))
const symbols = [...bySymbol.keys()].filter(symbol => symbol !== '').sort((a, b) => b.length - a.length)
const escaped = symbols.map(symbol => symbol.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&'))
const figure = new RegExp(`(\\d[\\d.\u202f]*)[\u202f ]?(${escaped.join('|')})?(?![\\p{L}\\d])`, 'gu')

/** A printed line with every figure turned to SI, for mathjs: it knows nothing of ours but the text. */
function inMathjs(text: string): string {
  return text
    .replace(figure, (_, digits: string, symbol: string | undefined) => {
      const number = Number(digits.replaceAll('\u202f', ''))
      return `(${symbol === undefined ? number : toSi(number, bySymbol.get(symbol) ?? '1')})`
    })
    .replaceAll('×', '*')
    .replaceAll('−', '-')
    .replaceAll('²', '^2')
    .replaceAll('³', '^3')
    .replaceAll('√', 'sqrt')
    .replaceAll('π', 'pi')
    .replace(/\bln\b/g, 'log')
    .replace(/arc(sin|cos|tan)/g, 'a$1')
}

/** Half of the last digit that a printed result shows, as a share of it. */
function lastDigit(text: string): number {
  const digits = (/\d[\d.\u202f]*/.exec(text)?.[0] ?? '').replaceAll('\u202f', '')
  const decimals = digits.split('.')[1]?.length ?? 0
  const zeros = decimals > 0 ? 0 : (/0*$/.exec(digits)?.[0].length ?? 0)
  return (0.5 * 10 ** (zeros - decimals)) / Number(digits)
}

const isWrittenOut = ({ values }: WorkedStep): boolean => !/[Σ_]|max|min/.test(values.text)

const linesOf = (id: string, example: Example): WorkedStep[] => {
  const check = checks.find(one => one.id === id)
  const { working } = answerTo(check ?? checks[0] ?? expect.fail('no check'), example)
  return [...working.steps, ...working.beside].filter(isWrittenOut)
}

// Oracle: mathjs works out the printed text itself. A figure on the way is printed to six digits, a result to four.
describe('who follows the printed lines on a pocket calculator ends at the printed figures', () => {
  test.each(checks.filter(({ compute }) => compute === undefined).map(({ id, examples }) => [id, examples] as const))(
    '%s',
    (id, examples) => {
      const lines = examples.filter(({ expect: word }) => word !== 'missing').flatMap(example => linesOf(id, example))
      for (const { symbol, values, result, value, unit } of lines) {
        const worked: unknown = evaluate(inMathjs(values.text))
        const printed = toSi(value, unit)
        const share = Math.abs(Number(worked) - printed) / Math.abs(printed || 1)
        expect(share, `${symbol.text} = ${values.text} = ${result.text}`).toBeLessThanOrEqual(
          lastDigit(result.text) + 2e-5,
        )
      }
    },
  )
})
