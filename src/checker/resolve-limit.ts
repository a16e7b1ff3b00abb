import type { Place } from '../findings/place.ts'
import type { Dimension } from '../quantities/quantity.ts'
import type { Limit as WrittenLimit } from '../record/record.ts'
import { statedLeaf } from './leaf.ts'
import type { Bound, Bounds, Limit, Setter } from './limit.ts'
import {
  endOfBound,
  endOfQuantity,
  endsOfRequirement,
  type LimitEnd,
  type SymbolTable,
  type WrittenEnds,
} from './limit-end.ts'
import { lookUp } from './look-up.ts'
import { propagateTerm } from './propagate.ts'
import type { Scope } from './scope.ts'
import { digitsOf, showSi } from './show-figure.ts'
import { fromSi, toSi } from './unit.ts'

/** A limit with its ends worked out. Both null: an end is not known. */
export interface StandingLimit extends WrittenEnds {
  readonly who: Setter
  readonly source: string
  /** In words, where its ends are not known: `3 % of the nominal voltage`. */
  readonly stated: string
  /** What the check would hold, and could not work out, is missing. */
  readonly isWhole: boolean
  /** Its ends have both uncertainties in them already, so none is taken off again. */
  readonly isAgreement: boolean
  /** The path of the requirement that it is. */
  readonly requirement: string | null
}

export interface ResolvedLimit {
  readonly own: StandingLimit
  readonly override: (StandingLimit & { readonly why: string | null; readonly place: Place }) | null
  readonly beyond: 'marginal' | null
}

/** What a limit is resolved with: the check's name, the words by which it differs, its symbols. */
interface LimitGround {
  readonly check: string
  readonly scope: Scope
  readonly words: string | null
  readonly symbols: SymbolTable
  readonly result: { readonly uncertainty: number } | null
}

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
function agreementOf({ who, source }: Limit, symbol: string, { symbols, result }: LimitGround): StandingLimit | null {
  const measured = symbols.term(symbol)
  if (measured === 'absent' || measured === null || !('type' in measured)) return null
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

/** What build.md sets in place of the check's own: the subject's goes first, then that of its words, then that of the whole check. */
function overrideOf(
  { setting, ...bounds }: Bounds & { readonly setting: Dimension | undefined },
  own: StandingLimit | null,
  ground: LimitGround,
): ResolvedLimit['override'] {
  const written = writtenLimit(ground, dimension => setting === undefined || dimension !== setting)
  if (written === null) return null
  const end = (side: 'min' | 'max'): LimitEnd | null => {
    const value = written[side]
    if (value === null) return own?.[side] ?? null
    const bound = bounds[side] ?? bounds.max ?? bounds.min
    const shareOf = bound !== undefined && 'share' in bound ? bound.of : null
    return endOfQuantity({ value, place: written.place, session: null, figure: null }, shareOf, ground.symbols)
  }
  const [min, max] = [end('min'), end('max')]
  return {
    min,
    max,
    who: 'builder',
    source: written.why ?? 'no reason is given',
    isWhole: min !== null || max !== null,
    ...plain,
    why: written.why,
    place: written.place,
  }
}

/** What build.md sets for a check and a subject in one of its dimensions. */
export function writtenLimit(
  { check, scope, words }: Pick<LimitGround, 'check' | 'scope' | 'words'>,
  accepts: (dimension: Dimension | undefined) => boolean,
): WrittenLimit | null {
  const of = (name: string | null): WrittenLimit | undefined =>
    scope.record.limits
      .filter(limit => limit.check === check && limit.of === name && accepts((limit.max ?? limit.min)?.dimension))
      .at(-1)
  const { kind, id } = scope.subject
  return of(id) ?? of(`${kind}:${id}`) ?? (words === null ? undefined : of(words)) ?? of(null) ?? null
}
