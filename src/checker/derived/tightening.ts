import type { Found, Input } from '../input.ts'
import { ifGiven } from '../inputs/choose.ts'
import { value } from '../inputs/value.ts'
import { statedLeaf } from '../leaf.ts'
import { lookUp, wordsOf } from '../look-up.ts'
import type { Scope } from '../scope.ts'

/** Nut factor by the finish of a bolt: how much of the torque is lost under the head and in the thread. */
const nutFactors: Readonly<Record<string, number>> = { plain: 0.3, zinc: 0.2, oiled: 0.18 } // common practice, no source

const source = 'common practice, no source; it scatters by a quarter either way'

/** The nut factor K of T = K d F: as written, else by the bolt's finish; without either there is no torque. */
export function nutFactor(symbol = 'K'): Input<number> {
  const spec = { symbol, meaning: 'nut factor', dimension: 'ratio' } as const
  const written = value({ of: 'bolt/k-factor', ...spec, unit: '1', exact: true })
  const byFinish: Input<number> = {
    ...spec,
    reads: ['bolt/finish'],
    tables: [`Nut factor: ${source}`],
    read: scope => readFactor(symbol, scope),
  }
  return ifGiven({ ...spec, of: 'bolt/k-factor' }, written, byFinish)
}

function readFactor(symbol: string, scope: Scope): Found | null {
  const { path, held } = lookUp(scope, 'bolt/finish')
  const words = scope.subject.thing === null ? null : wordsOf(scope.subject.thing, 'finish')
  const finish = words === null ? undefined : Object.keys(nutFactors).find(word => words.toLowerCase().includes(word))
  if (held === null || words === null || finish === undefined) {
    scope.notebook.need(path, 'the finish is not plain, zinc or oiled')
    return null
  }
  const factor = nutFactors[finish] ?? Number.NaN
  scope.notebook.use({ path, words, place: held.place, session: held.session, figure: held.figure })
  scope.notebook.look({ table: 'Nut factor', row: `${finish}: ${factor}`, source })
  return {
    type: 'figure',
    term: statedLeaf('table', { symbol, meaning: `nut factor, ${finish}`, value: factor, unit: '1' }),
  }
}
