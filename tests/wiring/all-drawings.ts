import type { AsBuiltRecord } from '../../src/record/record.ts'
import { drawCircuit } from '../../src/wiring/draw-circuit.ts'
import { drawFuseBox } from '../../src/wiring/draw-fuse-box.ts'
import { drawGraph } from '../../src/wiring/draw-graph.ts'
import { drawLidCard } from '../../src/wiring/draw-lid-card.ts'
import { drawPair } from '../../src/wiring/draw-pair.ts'
import { loomGraph } from '../../src/wiring/loom-graph.ts'
import { placeWiring } from '../../src/wiring/place-wiring.ts'
import { supplyGraph } from '../../src/wiring/supply-graph.ts'
import type { WiringDrawing } from '../../src/wiring/svg.ts'
import { readWiring } from '../../src/wiring/wiring.ts'

/** Links as a page gives them. */
export const links = {
  circuit: (id: string): string => `../circuits/${encodeURIComponent(id)}/index.html`,
  part: (id: string): string => `../parts/${encodeURIComponent(id)}/index.html`,
  connector: (id: string): string => `../connectors/${encodeURIComponent(id)}/index.html`,
  figure: () => ({ href: '../sessions/x/index.html#q-1', mark: '7', says: 'session 7' }),
}

/** Every drawing that needs no placing, and the plain form of those that do. */
export function plainDrawings(record: AsBuiltRecord): WiringDrawing[] {
  const wiring = readWiring(record)
  return [
    ...wiring.circuits.map(circuit => drawCircuit(wiring, circuit, links)),
    ...wiring.fuseBoxes.flatMap(box => [drawFuseBox(box, links), drawLidCard(box)]),
    ...wiring.pairs.map(pair => drawPair(pair, links)),
    ...[supplyGraph(wiring), ...wiring.looms.map(loomGraph)].map(graph => drawGraph(graph, null, links)),
  ]
}

/** The drawings that are placed. */
export async function placedDrawings(record: AsBuiltRecord): Promise<WiringDrawing[]> {
  const { supply, looms } = await placeWiring(readWiring(record))
  const placed = [...(supply === null ? [] : [supply]), ...looms.values()]
  return placed.map(({ graph, placing }) => drawGraph(graph, placing, links))
}
