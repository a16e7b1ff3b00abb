import type { Graph, Placing } from './graph.ts'
import { loomGraph } from './loom-graph.ts'
import { placeGraphs } from './place-graph.ts'
import { supplyGraph } from './supply-graph.ts'
import type { Wiring } from './wiring.ts'

/** A graph and where it was placed; null: it is drawn plainly. */
interface PlacedGraph {
  readonly graph: Graph
  readonly placing: Placing | null
}

/** What had to be placed before pages can be made. */
export interface PlacedWiring {
  /** Null where nothing hangs on the battery. */
  readonly supply: PlacedGraph | null
  /** By loom. */
  readonly looms: ReadonlyMap<string, PlacedGraph>
}

/** Places the drawings that need it: the supply and the branches of each loom. The same record gives the same placing. */
export async function placeWiring(wiring: Wiring): Promise<PlacedWiring> {
  const looms = wiring.looms.filter(({ cuts }) => cuts.length > 0)
  const graphs = [supplyGraph(wiring), ...looms.map(loomGraph)]
  const placings = await placeGraphs(graphs)
  const [supply, ...branches] = graphs.map((graph, index): PlacedGraph => ({ graph, placing: placings[index] ?? null }))
  return {
    supply: supply === undefined || supply.graph.edges.length === 0 ? null : supply,
    looms: new Map(
      branches.flatMap((branch, index) => looms.slice(index, index + 1).map(({ id }) => [id, branch] as const)),
    ),
  }
}
