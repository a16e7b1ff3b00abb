import type { Quantity } from '../quantities/quantity.ts'

// Outside diameter in mm of a thin-walled single core by its nominal section in mm², the greatest that ISO 6722-1 allows; from memory.
const thinWall: readonly (readonly [number, number])[] = [
  [0.22, 1.2],
  [0.35, 1.3],
  [0.5, 1.6],
  [0.75, 1.9],
  [1, 2.1],
  [1.5, 2.4],
  [2.5, 3],
  [4, 3.7],
  [6, 4.3],
  [10, 6],
  [16, 7.2],
  [25, 8.7],
  [35, 10.4],
  [50, 12.2],
  [70, 14.4],
  [95, 16.7],
  [120, 18.5],
]

/** How loosely wires lie in a taped bundle: 1.25 × √(sum of d²), the wires filling 64 % of it. Common practice, no source. */
const bundleFactor = 1.25

/** Said beside every bundle that was worked out. */
export const bundleAssumption = `thin-walled single cores, bundle = ${bundleFactor} × √(sum of the squares of their diameters), without tape or sleeve`

/** Outside diameter in millimetres of one thin-walled cable; a section between two rows takes the thicker one's. Null above the table. */
export function cableDiameterMm(area: Quantity): number | null {
  const mm2 = area.si === null ? null : area.si * 1e6
  if (mm2 === null || mm2 <= 0) return null
  return thinWall.find(([section]) => section >= mm2 * (1 - 1e-9))?.[1] ?? null
}

/** Diameter over all in millimetres of wires laid together; 0 for none. Two or three lie beside each other. */
export function bundleDiameterMm(diametersMm: readonly number[]): number {
  const [first = 0, second = 0] = [...diametersMm].sort((one, other) => other - one)
  const squares = diametersMm.reduce((sum, diameter) => sum + diameter * diameter, 0)
  return Math.max(first + second, diametersMm.length < 2 ? 0 : bundleFactor * Math.sqrt(squares))
}
