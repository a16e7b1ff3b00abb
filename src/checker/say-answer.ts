import { formatQuantity, formatWithUncertainty } from '../quantities/format.ts'
import type { Answer } from './answer.ts'
import type { Offender } from './check.ts'
import { workOut } from './term.ts'
import { differenceFromSi, fromSi } from './unit.ts'

/** One sentence that says how an answer came out, and by how much it is beyond its limit. */
export function saySentence(answer: Answer, unit: string): { readonly says: string; readonly beyondBy: string | null } {
  const { weighed, scope, result, count } = answer
  if (result === null || weighed.verdict === 'missing') {
    const paths = scope.notebook.missing.map(({ path }) => path)
    const lead =
      answer.already === null ? '' : `Fails already, whatever is missing: ${sayAlready(answer.already, unit)} `
    return { says: `${lead}Not in the record: ${paths.join(', ')}.`, beyondBy: null }
  }
  if (count !== null) return { says: countSentence(count.count ?? count.offenders.length), beyondBy: null }
  const value = figureWithU(answer, unit)
  const said = weighed.nearest === null ? { says: `${value}.`, beyondBy: null } : sayAgainst(answer, value, unit)
  return answer.faults.length === 0
    ? said
    : { ...said, says: [said.says, ...answer.faults.map(faultSentence)].join(' ') }
}

/** What is known and fails by itself, in words. */
function sayAlready(known: Answer, unit: string): string {
  const { says } = saySentence(known, unit)
  const found = (known.count?.offenders ?? []).map(faultSentence)
  return [`with what is known ${says}`, ...found].join(' ')
}

const faultSentence = ({ path, why }: Offender): string => `${path} ${why}.`
const countSentence = (count: number): string => (count === 0 ? 'None.' : `${count} found.`)

function figureWithU({ result }: Answer, unit: string): string {
  if (result === null) return ''
  const { value, uncertainty } = result.worked
  const spread = differenceFromSi(uncertainty, unit)
  return spread > 0 ? formatWithUncertainty(fromSi(value, unit), spread, unit) : shown(value, unit)
}

const shown = (value: number, unit: string): string => formatQuantity(Number(fromSi(value, unit).toPrecision(4)), unit)
const shownDifference = (value: number, unit: string): string =>
  formatQuantity(Number(Math.abs(differenceFromSi(value, unit)).toPrecision(3)), unit)

function sayAgainst(answer: Answer, value: string, unit: string): { says: string; beyondBy: string | null } {
  const { nearest, verdict } = answer.weighed
  if (nearest === null) return { says: `${value}.`, beyondBy: null }
  if (answer.limit?.own.isAgreement === true && answer.limit.override === null) return sayAgreement(answer, value, unit)
  const past = nearest.side === 'max' ? nearest.value - nearest.limit : nearest.limit - nearest.value
  const by = shownDifference(past, unit)
  const isBeyond = past > 0 && verdict !== 'pass' && verdict !== 'waived'
  const how = isBeyond ? `${nearest.side === 'max' ? 'over' : 'short'} by ${by}` : `${by} to spare`
  const doubt =
    verdict === 'marginal' && nearest.uncertainty > 0 ? ', and the limit lies within what the result can be' : ''
  return {
    says: `${value} against ${shown(nearest.limit, unit)} at ${nearest.side === 'max' ? 'most' : 'least'}: ${how}${doubt}.`,
    beyondBy: isBeyond ? by : null,
  }
}

/** Two values of one thing: how far they are apart, and how far they may be. */
function sayAgreement(
  { limit, result }: Answer,
  value: string,
  unit: string,
): { says: string; beyondBy: string | null } {
  const [low, high] = [limit?.own.min, limit?.own.max].map(end => (end == null ? Number.NaN : workOut(end.term)))
  if (low === undefined || high === undefined || result === null) return { says: `${value}.`, beyondBy: null }
  const [measured, within] = [(low + high) / 2, (high - low) / 2]
  const apart = Math.abs(result.worked.value - measured)
  const isBeyond = apart > within
  const how = isBeyond
    ? `more than their uncertainties together, ${shownDifference(within, unit)}`
    : `within their uncertainties together, ${shownDifference(within, unit)}`
  return {
    says: `${value} beside ${shown(measured, unit)} as measured: ${shownDifference(apart, unit)} apart, ${how}.`,
    beyondBy: isBeyond ? shownDifference(apart - within, unit) : null,
  }
}
