import { statedLeaf } from './leaf.ts'
import type { Bound, Bounds, Limit } from './limit.ts'
import { endOfBound, endsOfRequirement, type LimitEnd, type SymbolTable } from './limit-end.ts'
import { lookUp } from './look-up.ts'
import { overrideOf, writtenLimit } from './override.ts'
import { propagateTerm } from './propagate.ts'
import type { Scope } from './scope.ts'
import { digitsOf, showSi } from './show-figure.ts'
import type { LimitGround, ResolvedLimit, StandingLimit } from './standing-limit.ts'
import { leavesOf } from './term.ts'
import { fromSi, toSi } from './unit.ts'

/** Works a check's limit out, and that of build.md where it sets another. Null: there is none, and the check is a working. */
export function resolveLimit(limit: Limit | null, ground: LimitGround): ResolvedLimit | null {
  const chosen = limit === null ? null : chooseLimit(limit, ground.scope)
  const bounds = chosen === null ? {} : boundsOf(chosen, ground.words)
  const stands = chosen === null ? null : standingOf(chosen, bounds, ground)
  // Both ends absent and nothing missing: what the limit would stand on need not be there, and is not.
  const own = stands?.isWhole === false && ground.scope.notebook.missing.length === 0 ? null : stands
  const setting = chosen === null || bounds === null ? null : settingOf(chosen, bounds, ground)
  const override = overrideOf({ ...bounds, setting: limit?.setting?.dimension }, own, ground)
  if (setting !== null && override === null) return { ...setting, beyond: chosen?.beyond ?? null }
  if (own === null && override === null) return null
  return { own: own ?? nothing, override, beyond: chosen?.beyond ?? null }
}

/** A limit of build.md that sets what the check is worked with: the check's ends then hold for it, those of the default stand beside. */
function settingOf(limit: Limit, bounds: Bounds, ground: LimitGround): Pick<ResolvedLimit, 'own' | 'override'> | null {
  const { setting } = limit
  const written = setting === undefined ? null : writtenLimit(ground, dimension => dimension === setting.dimension)
  if (written === null || setting === undefined) return null
  const own = standingOf(limit, setting.own, ground)
  const whole = standingOf(limit, bounds, ground)
  if (own === null || whole === null) return null
  const source = written.why ?? 'no reason is given'
  return { own, override: { ...whole, who: 'builder', source, why: written.why, place: written.place } }
}

const plain = { isAgreement: false, requirement: null, stated: '' } as const
const nothing: StandingLimit = { min: null, max: null, who: 'practice', source: 'none', isWhole: true, ...plain }

/** The limit that holds here: another goes before it where its property is given. */
export function chooseLimit(limit: Limit, scope: Scope): Limit {
  const { instead } = limit
  return instead !== undefined && lookUp(scope, instead.whenGiven).held !== null ? instead.limit : limit
}

/** The ends that a limit states for these words; null where the rule has no row for them. */
export function boundsOf(limit: Limit, words: string | null): Bounds | null {
  const row =
    words === null || limit.groups === undefined || !Object.hasOwn(limit.groups, words)
      ? undefined
      : limit.groups[words]
  return row === undefined ? limit : row
}

function standingOf(limit: Limit, bounds: Bounds | null, ground: LimitGround): StandingLimit | null {
  const { who, source } = limit
  if (limit.ofSubject === true || limit.required !== undefined) return requiredOf(limit, ground)
  if (limit.agreesWith !== undefined) return agreementOf(limit, limit.agreesWith, ground)
  if (bounds === null) {
    ground.scope.notebook.need(
      `limit/${ground.words ?? ''}`,
      `${source} has no row for ${ground.words ?? 'it'} that was seen`,
    )
    return { min: null, max: null, who, source, isWhole: false, ...plain }
  }
  const min = bounds.min === undefined ? null : endOfBound(bounds.min, ground.symbols)
  const max = bounds.max === undefined ? null : endOfBound(bounds.max, ground.symbols)
  return {
    min,
    max,
    who,
    source,
    isWhole: min !== null || max !== null,
    ...plain,
    stated: stateBounds(bounds, ground.symbols),
  }
}

/** A limit's ends in words, before anything is put in. */
function stateBounds({ min, max }: Bounds, symbols: SymbolTable): string {
  const state = (bound: Bound | undefined): string[] => {
    if (bound === undefined) return []
    if ('share' in bound)
      return [
        bound.share === 1
          ? symbols.meaning(bound.of)
          : `${digitsOf(bound.share * 100)} % of the ${symbols.meaning(bound.of)}`,
      ]
    return 'formula' in bound
      ? [bound.formula.at(-1)?.says ?? '']
      : [showSi(toSi(bound.value, bound.unit), bound.unit).text]
  }
  return [...new Set([...state(min), ...state(max)])].join(' to ')
}

/** From what was measured, both ways by the root of both expanded uncertainties' squares; null where nothing was measured. */
function agreementOf(
  { who, source }: Limit,
  symbol: string,
  { symbols, result, scope }: LimitGround,
): StandingLimit | null {
  const measured = symbols.term(symbol)
  if (measured === 'absent' || measured === null || !('type' in measured)) return null
  const bound = leavesOf(measured).find(leaf => leaf.bound !== null)
  if (bound !== undefined)
    scope.notebook.need(
      bound.path ?? symbol,
      `${bound.meaning} is only known as ${bound.text ?? 'a bound'}, with which nothing can agree`,
    )
  const { value, uncertainty } = propagateTerm(measured)
  const within = Math.hypot(uncertainty, result?.uncertainty ?? 0)
  const said = `${showSi(value, measured.unit).text} as measured, within √(U₁² + U₂²)`
  const end = (at: number): LimitEnd => ({
    said,
    term: statedLeaf('limit', {
      symbol: 'limit',
      meaning: said,
      value: fromSi(at, measured.unit),
      unit: measured.unit,
    }),
  })
  return { min: end(value - within), max: end(value + within), who, source, isWhole: true, ...plain, isAgreement: true }
}

/** What build.md requires; null where it requires nothing. */
function requiredOf(limit: Limit, { scope }: LimitGround): StandingLimit | null {
  const paths = limit.required?.map(pattern => lookUp(scope, pattern).path) ?? []
  const requirement =
    limit.ofSubject === true
      ? scope.subject.requirement
      : scope.record.requirements.find(({ path }) => paths.includes(path))
  if (requirement === null || requirement === undefined) return null
  const held = { value: requirement.value, place: requirement.place, session: null, figure: null }
  return {
    ...endsOfRequirement(held, scope.record.build.approximateShare),
    who: 'builder',
    source: 'required in build.md',
    isWhole: true,
    ...plain,
    requirement: requirement.path,
  }
}
