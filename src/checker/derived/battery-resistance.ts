import type { Found, Input } from '../input.ts'
import { firstGiven } from '../inputs/choose.ts'
import { derived } from '../inputs/derived.ts'
import { value } from '../inputs/value.ts'
import { lookUp, partsOfKind } from '../look-up.ts'
import { type CheckSubject, type Scope, withSubject } from '../scope.ts'
import { partSubject } from '../subjects.ts'
import { workOut } from '../term.ts'
import { nominalVoltage } from './circuit-current.ts'

const spec = { symbol: 'R_b', meaning: 'resistance of the battery', dimension: 'resistance' } as const

const measured = (of: string): Input<number> => value({ of, ...spec, unit: 'mOhm' })

/** By the cold cranking test: 12.6 V at rest, 7.2 V at the current of the label, for each 12 V in series. */
const byLabel = (of: string): Input<number> =>
  derived({
    ...spec,
    inputs: {
      cranking: value({
        of,
        symbol: 'I_cc',
        meaning: 'cold cranking current',
        dimension: 'current',
        unit: 'A',
        exact: true,
      }),
      nominal: nominalVoltage(),
    },
    formula: [
      {
        line: 'R_b = (12.6 V - 7.2 V) / I_cc * U_n / 12 V',
        unit: 'mOhm',
        says: 'the battery, by its cold cranking current, for each 12 V in series',
      },
    ],
  })

const ofPart = firstGiven(spec, measured('battery/internal-resistance'), byLabel('battery/cold-cranking'))
const ofBuild = firstGiven(spec, measured('build/battery.internal-resistance'), byLabel('build/battery.cold-cranking'))
const keys = ['internal-resistance', 'cold-cranking'] as const

/** The battery's own resistance, the greatest where there are several; left out, and said so, where nothing tells it. */
export function batteryResistance(): Input<number | null> {
  return {
    ...spec,
    reads: [...ofPart.reads, ...ofBuild.reads],
    formula: ofPart.formula ?? [],
    read: scope => {
      const telling = batteries(scope).filter(battery =>
        keys.some(key => lookUp(withSubject(scope, battery), `battery/${key}`).held !== null),
      )
      if (telling.length > 0) return greatest(telling.map(battery => ofPart.read(withSubject(scope, battery))))
      if (keys.some(key => lookUp(scope, `build/battery.${key}`).held !== null)) return ofBuild.read(scope)
      scope.notebook.assume('battery resistance left out')
      return { type: 'none' }
    },
  }
}

const batteries = ({ record }: Scope): CheckSubject[] => partsOfKind(record, ['battery']).map(partSubject)

/** Null where one of them is missing. */
function greatest(found: readonly (Found | null)[]): Found | null {
  const terms = found.flatMap(one => (one?.type === 'figure' ? [one.term] : []))
  if (terms.length < found.length) return null
  const term = terms.reduce((most, one) => (workOut(one) > workOut(most) ? one : most))
  return { type: 'figure', term }
}
