import type { Dimension } from '../quantities/quantity.ts'
import type { Limit as WrittenLimit } from '../record/record.ts'
import type { Bounds } from './limit.ts'
import { endOfQuantity, type LimitEnd } from './limit-end.ts'
import type { LimitGround, ResolvedLimit, StandingLimit } from './standing-limit.ts'

/** What build.md sets in place of the check's own: the subject's goes first, then that of its words, then that of the whole check. */
export function overrideOf(
  { setting, ...bounds }: Bounds & { readonly setting: Dimension | undefined },
  own: StandingLimit | null,
  ground: LimitGround,
): ResolvedLimit['override'] {
  const written = writtenLimit(ground, dimension => setting === undefined || dimension !== setting)
  if (written === null) return null
  const shareOf = (side: 'min' | 'max'): string | null => {
    const bound = bounds[side] ?? bounds.max ?? bounds.min
    return bound !== undefined && 'share' in bound ? bound.of : null
  }
  if (!isOfResult(written, ground, shareOf('max') ?? shareOf('min'))) return null
  const end = (side: 'min' | 'max'): LimitEnd | null => {
    const value = written[side]
    if (value === null) return own?.[side] ?? null
    const held = { value, place: written.place, session: null, figure: null }
    return endOfQuantity(held, shareOf(side), ground.symbols)
  }
  const [min, max] = [end('min'), end('max')]
  return {
    min,
    max,
    who: 'builder',
    source: written.why ?? 'no reason is given',
    isWhole: min !== null || max !== null,
    isAgreement: false,
    requirement: null,
    stated: '',
    why: written.why,
    place: written.place,
  }
}

/** A limit of another dimension than the result's sets nothing, and that is said; a share may stand where the check's own is one. */
function isOfResult(written: WrittenLimit, { dimension, scope }: LimitGround, shareOf: string | null): boolean {
  const other = [written.min, written.max].find(
    end =>
      end !== null &&
      dimension !== null &&
      end.dimension !== dimension &&
      !(shareOf !== null && end.dimension === 'ratio'),
  )
  if (other == null) return true
  scope.notebook.note(`The limit of build.md, ${other.text}, is no ${dimension}, so it sets nothing.`)
  return false
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
