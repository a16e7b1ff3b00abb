import { lettering, type Stroke, tenth } from './drawing.ts'
import type { PageScope } from './page-scope.ts'
import type { Weight } from './side-figures.ts'
import { subjectAddress } from './thing-addresses.ts'

/** A mass to be hung as a disc, and where its disc leads. */
export interface Hung {
  readonly name: string
  readonly kg: number
  /** Behind the front axle. */
  readonly atMm: number
  readonly href: string
  /** What laden adds is drawn open. */
  readonly isAdded: boolean
}

interface Hanging {
  readonly x: (mm: number) => number
  /** Radius of a disc for each root of a kilogram: areas are as masses. */
  readonly perRootKg: number
  /** What is lighter is left out. */
  readonly leastKg: number
}

interface Disc {
  readonly weight: Hung
  readonly x: number
  readonly y: number
  readonly r: number
}

const gap = 2 // between two discs

/** Parts as they are hung: each leads to its page. */
export function hungParts(scope: PageScope, weights: readonly Weight[]): Hung[] {
  return weights.map(({ part, name, kg, atMm }) => {
    return { name, kg, atMm, href: scope.to(subjectAddress({ kind: 'part', id: part })), isAdded: false }
  })
}

/** Masses as discs, each above the place where it sits; those that would touch are stacked. Height is what they take. */
export function hangWeights(weights: readonly Hung[], how: Hanging): { strokes: Stroke[]; height: number } {
  const discs: Disc[] = []
  for (const weight of weights.filter(({ kg }) => kg >= how.leastKg)) {
    const r = tenth(Math.max(3, Math.sqrt(weight.kg) * how.perRootKg))
    const x = tenth(how.x(weight.atMm))
    discs.push({ weight, x, y: restingHeight(discs, x, r), r })
  }
  if (discs.length === 0) return { strokes: [], height: 0 }
  const height = Math.max(...discs.map(disc => disc.y + disc.r)) + 26
  return { height, strokes: discs.map(disc => draw({ ...disc, y: tenth(height - disc.y) })) }
}

/** The lowest height at which a disc of radius `r` at `x` touches none of the others. */
function restingHeight(discs: readonly Disc[], x: number, r: number): number {
  let y = r
  const touching = (): Disc | undefined =>
    discs.find(other => Math.hypot(other.x - x, other.y - y) < other.r + r + gap - 0.05)
  for (let other = touching(); other !== undefined; other = touching()) {
    const reach = other.r + r + gap
    y = tenth(other.y + Math.sqrt(Math.max(0, reach ** 2 - (other.x - x) ** 2)) + 0.1)
  }
  return y
}

function draw({ weight, x, y, r }: Disc): Stroke {
  const kg = Number(weight.kg.toPrecision(3))
  return {
    kind: 'link',
    href: weight.href,
    says: `${weight.name}, ${kg} kg${weight.isAdded ? ', laden' : ''}`,
    strokes: [
      { kind: 'circle', x, y, r, look: weight.isAdded ? 'mass added' : 'mass' },
      ...(r < 12 ? [] : [lettering('mass-n', { x, y }, String(Math.round(kg)))]),
    ],
  }
}
