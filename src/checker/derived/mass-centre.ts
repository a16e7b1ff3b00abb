import { type FormulaLine, workFormula } from '../formula.ts'
import type { Found, Input } from '../input.ts'
import { readAll, termsOf } from '../inputs/derived.ts'
import type { Scope } from '../scope.ts'
import { weighedLoad, wheelbase } from './axle-load.ts'
import { ladenWith, placedMasses, placedParts, sayLeftOut } from './vehicle-masses.ts'

interface Ways {
  readonly weighed: FormulaLine
  readonly calculated: FormulaLine
}

const unladen = (symbol: string): Ways => ({
  weighed: {
    line: `${symbol} = W_r * L / (W_f + W_r)`,
    unit: 'mm',
    says: 'behind the front axle, by the weighed loads',
  },
  calculated: {
    line: `${symbol} = sum(n * m * x) / sum(n * m)`,
    unit: 'mm',
    says: 'behind the front axle, by the moments',
  },
})

const laden = (symbol: string): Ways => ({
  weighed: {
    line: `${symbol} = (W_r * L + sum(m_a * x_a)) / (W_f + W_r + sum(m_a))`,
    unit: 'mm',
    says: 'behind the front axle, laden, by the weighed loads',
  },
  calculated: {
    line: `${symbol} = (sum(n * m * x) + sum(m_a * x_a)) / (sum(n * m) + sum(m_a))`,
    unit: 'mm',
    says: 'behind the front axle, laden, by the moments',
  },
})

const added = { masses: ladenWith('m_a'), places: ladenWith('x_a') }

/** Where the centre of gravity lies behind the front axle: by the weighed loads where both axles were weighed, else by the moments. */
export function massCentre(isLaden: boolean, symbol: string): Input<number> {
  const ways = (isLaden ? laden : unladen)(symbol)
  return {
    symbol,
    meaning: `centre of gravity behind the front axle${isLaden ? ', laden' : ''}`,
    dimension: 'length',
    reads: ['axle/load', 'part/mass', 'part/at', 'part/qty', ...wheelbase.reads],
    formula: [ways.weighed, ways.calculated],
    read: scope => readCentre(ways, isLaden, scope),
  }
}

function readCentre(ways: Ways, isLaden: boolean, scope: Scope): Found | null {
  const [front, rear] = [weighedLoad(scope, 'front', 'W_f'), weighedLoad(scope, 'rear', 'W_r')]
  const isWeighed = front !== null && rear !== null
  if (!isWeighed && placedParts(scope).length === 0) {
    scope.notebook.need('vehicle/mass', 'no part has a mass and a place, and the axles were not both weighed')
    return null
  }
  if (!isWeighed) sayLeftOut(scope)
  const inputs = { ...(isWeighed ? { wheelbase } : placedMasses), ...(isLaden ? added : {}) }
  const found = readAll(inputs, scope)
  if (found === null) return null
  const terms = { ...termsOf(inputs, found), ...(isWeighed ? { W_f: front, W_r: rear } : {}) }
  return { type: 'figure', term: workFormula([isWeighed ? ways.weighed : ways.calculated], terms) }
}
