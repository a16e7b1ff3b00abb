import { expectedFigure } from '../facts/expected-figure.ts'
import type { PropertyFact, Subject } from '../facts/fact.ts'
import { dimensionsOf } from '../facts/kinds.ts'
import { type Finding, finding } from '../findings/finding.ts'
import type { Dimension, Quantity } from '../quantities/quantity.ts'
import { findUnit } from '../quantities/units.ts'
import { compareFigures } from './compare-figures.ts'
import type { Held } from './held.ts'
import { pathText } from './resolve-name.ts'
import { siPerUnit } from './tolerance.ts'

interface Judged {
  readonly subject: Subject
  readonly fact: PropertyFact
  readonly quantity: Quantity
  /** The figure that stood before; null where there was none. */
  readonly before: { readonly held: Held<Quantity>; readonly observed: boolean } | null
  /** The thing was made, modified or replaced in the same note. */
  readonly isChanged: boolean
  readonly partKind: string | null
  readonly approximateShare: number
}

/** What is wrong with a new figure beside the one before it: its dimension, else a slipped unit, else that the two disagree. */
export function judgeValue(judged: Judged): Finding | null {
  const dimension = judgeDimension(judged)
  if (dimension !== null || judged.before === null) return dimension
  const { fact, isChanged, before, quantity } = judged
  if (!fact.observed || !before.observed || fact.supersedes || isChanged) return null
  const comparison = compareFigures(before.held.value, quantity, judged.approximateShare)
  if (comparison.verdict === 'agree') return null
  const [was, is] = [before.held.value.text, quantity.text]
  if (comparison.verdict === 'differ')
    return tell('agreement', judged, {
      message: `Unexpected \`${is}\`, expected \`${was}\` as it was measured before${byHowMuch(before.held.value, quantity)}`,
      mend: supersedingText(fact),
    })
  const { factor, of, isLaterGreater } = comparison
  const times = isLaterGreater ? `${shown(factor)} times` : `1/${shown(factor)} of`
  return tell('unit-slip', judged, {
    message: `Unexpected \`${is}\`, expected about \`${was}\` as it was measured before: it is ${times} that, the factor of ${of}`,
    mend: null,
  })
}

function judgeDimension(judged: Judged): Finding | null {
  const { quantity, before, fact, partKind, subject } = judged
  const allowed = subject.kind === 'part' && partKind !== null ? dimensionsOf(fact.key, partKind) : []
  if (allowed.length > 0 && !allowed.includes(quantity.dimension))
    return tell('dimension', judged, {
      message: `Unexpected \`${quantity.text}\`, expected ${expectedFigure(allowed)} for the ${fact.key} of a ${partKind}`,
      mend: null,
    })
  if (before === null || goTogether(before.held.value.dimension, quantity.dimension)) return null
  const was = before.held.value
  return tell('dimension', judged, {
    message: `Unexpected \`${quantity.text}\`, expected ${expectedFigure([was.dimension])} for ${pathText(subject, fact.key)}, which was \`${was.text}\` before`,
    mend: null,
  })
}

/** Dimensions in which one property may be given either way, such as a load in amperes or in watts. */
const pairs: readonly (readonly Dimension[])[] = [
  ['current', 'power'],
  ['force', 'mass'],
  ['consumption', 'flow'],
  ['speed', 'frequency'],
]

const goTogether = (one: Dimension, other: Dimension): boolean =>
  one === other || pairs.some(pair => pair.includes(one) && pair.includes(other))

const shown = (size: number): string => String(Number(size.toPrecision(4)))

function byHowMuch(earlier: Quantity, later: Quantity): string {
  const step = siPerUnit(later.unit)
  const isPlain = earlier.bound === null && later.bound === null
  if (earlier.si === null || later.si === null || step === null || !isPlain) return ''
  const size = Math.abs(later.si - earlier.si) / step
  const unit = later.unit === '1' ? '' : ` ${findUnit(later.unit)?.symbol ?? later.unit}`
  return `: the difference of ${shown(size)}${unit} is more than both tolerances`
}

/** `length: { value: 852 mm ± 2 mm, supersedes: true }`, the text in quotes where braces would cut it. */
function supersedingText({ key, value }: PropertyFact): string {
  const text = value.type === 'quantity' ? value.quantity.text : ''
  const safe = /[,:#'"{}[\]]/.test(text) ? JSON.stringify(text) : text
  return `${key}: { value: ${safe}, supersedes: true }`
}

function tell(
  rule: 'dimension' | 'agreement' | 'unit-slip',
  judged: Judged,
  said: { message: string; mend: string | null },
): Finding {
  const { fact, subject, before } = judged
  const related =
    before === null ? [] : [{ ...before.held.place, message: `It was \`${before.held.value.text}\` here` }]
  return finding(rule, fact.place, { ...said, about: [pathText(subject, fact.key)], related })
}
