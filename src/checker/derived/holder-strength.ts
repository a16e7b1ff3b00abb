import type { FormulaLine } from '../formula.ts'
import type { Input } from '../input.ts'
import { howMany } from '../inputs/how-many.ts'
import { partCount } from '../inputs/part-count.ts'
import { value } from '../inputs/value.ts'
import { besideStandard } from './sheet-words.ts'
import { stressArea } from './stress-area.ts'
import type { HolderKind } from './tank-holders.ts'

const lengthOf = (kind: HolderKind, key: string, symbol: string): Input<number> =>
  value({ of: `${kind}/${key}`, symbol, meaning: `${key} of the ${kind}`, dimension: 'length', unit: 'mm' })
const stressOf = (kind: HolderKind, key: string, symbol: string): Input<number> =>
  value({
    of: `${kind}/${key}`,
    symbol,
    meaning: `${key} of the ${kind}`.replace('-', ' '),
    dimension: 'pressure',
    unit: 'MPa',
    exact: true,
  })

/** How one kind of holder carries a force: what it is made of, its stress by the force F, and what it may carry. */
export interface Way {
  readonly inputs: Readonly<Record<string, Input<number>>>
  readonly stress: string
  readonly says: string
  readonly allowed: string
  readonly allowedSays: string
}

/** How each kind of holder carries the force, and what it may carry. */
export const ways: Readonly<Record<HolderKind, Way>> = {
  strap: {
    inputs: {
      n: howMany('strap', 'n'),
      b: lengthOf('strap', 'width', 'b'),
      t: lengthOf('strap', 'thickness', 't'),
      R_e: besideStandard(stressOf('strap', 'yield-stress', 'R_e')),
    },
    stress: 'F / sum(2 * n * b * t)',
    says: 'the straps, each pulled at both ends',
    allowed: 'min(R_e) / 1.5',
    allowedSays: 'the allowable stress of the straps, yield stress over 1.5',
  },
  bracket: {
    inputs: {
      n: howMany('bracket', 'n'),
      l: lengthOf('bracket', 'arm', 'l'),
      b: lengthOf('bracket', 'width', 'b'),
      t: lengthOf('bracket', 'thickness', 't'),
      R_e: besideStandard(stressOf('bracket', 'yield-stress', 'R_e')),
    },
    stress: 'max(F / sum(n) * l / (b * t^2 / 6))',
    says: 'the brackets, each bent by its share of the force at its arm',
    allowed: 'min(R_e) / 1.5',
    allowedSays: 'the allowable stress of the brackets, yield stress over 1.5',
  },
  bolt: {
    inputs: { n: howMany('bolt', 'n'), A_s: stressArea(), S_p: stressOf('bolt', 'proof-stress', 'S_p') },
    stress: 'F / sum(n * A_s)',
    says: 'the bolts, pulled along, in equal shares',
    allowed: '0.75 * min(S_p)',
    allowedSays: 'the preload of the bolts, 75 % of proof stress',
  },
  weld: {
    inputs: {
      n: partCount('n'),
      z: lengthOf('weld', 'leg-size', 'z'),
      L: lengthOf('weld', 'length', 'L'),
      tau_a: stressOf('weld', 'allowable-stress', 'tau_a'),
    },
    stress: 'F / sum(0.707 * n * z * L)',
    says: 'the welds, sheared in their throats',
    allowed: 'min(tau_a)',
    allowedSays: 'the allowable shear stress of the welds',
  },
}

/** The stress in one kind of holder, as a line. */
export const stressLine = (kind: HolderKind): FormulaLine => ({
  line: `sigma_${kind} = ${ways[kind].stress}`,
  unit: 'MPa',
  says: ways[kind].says,
})
/** What one kind of holder may carry, as a line. */
export const allowedLine = (kind: HolderKind): FormulaLine => ({
  line: `sigma_${kind}_a = ${ways[kind].allowed}`,
  unit: 'MPa',
  says: ways[kind].allowedSays,
})
