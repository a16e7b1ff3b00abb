import type { WeighedPoint } from '../checker/weigh-inspection.ts'

/** Inspection points as an edition may see them: whether a point is open is told as it truly is, on the evidence that may be seen. */
export function tellInspection(whole: readonly WeighedPoint[], seen: readonly WeighedPoint[]): WeighedPoint[] {
  return seen.map(point => {
    const truly = whole.find(({ id }) => id === point.id)
    if (truly === undefined) return point
    const isKnown = ({ place, ok }: WeighedPoint['evidence'][number]): boolean =>
      truly.evidence.some(one => one.place.line === place.line && one.place.column === place.column && one.ok === ok)
    return { ...point, open: truly.open, evidence: point.evidence.filter(isKnown) }
  })
}
