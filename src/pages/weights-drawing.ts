import { lettering, type Stroke, tenth } from './drawing.ts'
import type { PageScope } from './page-scope.ts'
import type { Weight } from './side-figures.ts'
import { subjectAddress } from './thing-addresses.ts'

interface Disc {
  readonly weight: Weight
  readonly x: number
  readonly y: number
  readonly r: number
}

const perRootKg = 1.9 // radius of a disc for each root of a kilogram: areas are as masses
const gap = 2 // between two discs

/** Parts as discs by mass, each above the place where it sits; those that would touch are stacked. Height is what they take. */
export function hangWeights(
  scope: PageScope,
  weights: readonly Weight[],
  x: (mm: number) => number,
): { strokes: Stroke[]; height: number } {
  const discs: Disc[] = []
  for (const weight of weights.filter(({ kg }) => kg >= 1)) {
    const r = tenth(Math.max(3, Math.sqrt(weight.kg) * perRootKg))
    discs.push({ weight, x: tenth(x(weight.atMm)), y: restingHeight(discs, tenth(x(weight.atMm)), r), r })
  }
  if (discs.length === 0) return { strokes: [], height: 0 }
  const height = Math.max(...discs.map(disc => disc.y + disc.r)) + 26
  return { height, strokes: discs.map(disc => draw(scope, { ...disc, y: tenth(height - disc.y) })) }
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

function draw(scope: PageScope, { weight, x, y, r }: Disc): Stroke {
  const kg = Number(weight.kg.toPrecision(3))
  return {
    kind: 'link',
    href: scope.to(subjectAddress({ kind: 'part', id: weight.part })),
    says: `${weight.name}, ${kg} kg`,
    strokes: [
      { kind: 'circle', x, y, r, look: 'mass' },
      ...(r < 12 ? [] : [lettering('mass-n', { x, y }, String(Math.round(kg)))]),
    ],
  }
}
