import type { WeighedEvidence, WeighedPoint } from '../checker/weigh-inspection.ts'
import { neutralMark } from './withheld.ts'

/** Inspection points as an edition may see them: whether a point is open is told as it truly is, on the evidence that may be seen. */
export function tellInspection(whole: readonly WeighedPoint[], seen: readonly WeighedPoint[]): WeighedPoint[] {
  return seen.map(point => {
    const truly = whole.find(({ id }) => id === point.id)
    if (truly === undefined) return point
    return { ...point, open: truly.open, evidence: point.evidence.flatMap(one => tell(one, truly)) }
  })
}

/** Evidence that was taken out stays as a mark; what comes out otherwise without the withheld words is not told. */
function tell(seen: WeighedEvidence, { evidence }: WeighedPoint): WeighedEvidence[] {
  const { line, column } = seen.place
  const truly = evidence.find(({ place }) => place.line === line && place.column === column)
  if (truly === undefined) return []
  if (seen.ref === neutralMark) return [{ ...seen, scheme: '', name: neutralMark, ok: truly.ok, lacks: null }]
  return [seen.ok === truly.ok ? seen : { ...seen, ok: false, lacks: 'is not told in this edition' }]
}
