import type { Input } from '../input.ts'
import { ifGiven } from '../inputs/choose.ts'
import { value } from '../inputs/value.ts'
import { lookUp } from '../look-up.ts'

/** What a rating of the battery or the alternator is, and how it is shown. */
interface RatingSpec {
  readonly symbol: string
  readonly meaning: string
  readonly dimension: 'current' | 'charge'
  readonly unit: string
}

/** A rating of the part of a kind, else the one that build.md gives under `electrical`. */
export function partElseBuild(kind: 'battery' | 'alternator', key: string, spec: RatingSpec): Input<number> {
  const ofPart = value({ of: `${kind}/${key}`, ...spec, exact: true })
  const ofBuild = value({ of: `build/${kind}.${key}`, ...spec, exact: true })
  const chosen = ifGiven({ ...spec, of: `${kind}/${key}` }, ofPart, ofBuild)
  return {
    ...chosen,
    read: scope => {
      const isPart = scope.subject.kind === kind && lookUp(scope, `build/${kind}.${key}`).held === null
      return (isPart ? ofPart : chosen).read(scope)
    },
  }
}
