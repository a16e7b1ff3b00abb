import { widthOf, wrap } from './lettering.ts'
import type { Point } from './svg.ts'
import type { SymbolName } from './symbols.ts'
import type { WireLook } from './wire-look.ts'

/** A box of a drawing that is placed by rule: words in a frame, or a symbol with its words below. */
export interface GraphNode {
  readonly id: string
  readonly look: 'box' | 'rail' | 'stop' | SymbolName
  readonly lines: readonly string[]
  readonly leads: { readonly kind: 'part' | 'circuit'; readonly id: string } | null
}

/** A line from one box to another, with its label. */
export interface GraphEdge {
  readonly id: string
  readonly from: string
  readonly to: string
  readonly lines: readonly string[]
  /** `chassis`: no wire; `bundle`: many wires in one sleeve. */
  readonly wire: WireLook | 'chassis' | 'bundle'
  readonly circuit: string | null
  /** In words. */
  readonly says: string
}

export interface Graph {
  readonly title: string
  readonly nodes: readonly GraphNode[]
  readonly edges: readonly GraphEdge[]
}

/** Where everything stands. */
export interface Placing {
  readonly width: number
  readonly height: number
  readonly nodes: Readonly<Record<string, Point>>
  /** Boxes that many lines meet are taller than their words ask. */
  readonly sizes: Readonly<Record<string, Size>>
  readonly edges: Readonly<Record<string, { readonly points: readonly Point[]; readonly label: Point | null }>>
}

export interface Size {
  readonly width: number
  readonly height: number
}

const symbolHeight = 44
/** Of the symbol of a fuse. */
export const fuseWidth = 26
const lineHeight = 17

/** Words as a box holds them. */
export const boxLines = (text: string): string[] => wrap(text, 150)
/** Words as they stand along a line. */
export const labelLines = (text: string): string[] => wrap(text, 190)

/** How much room a box takes, its lettering included. A fuse has its words beside it. */
export function sizeOfNode({ look, lines }: GraphNode): Size {
  const words = Math.max(0, ...lines.map(line => widthOf(line)))
  if (look === 'fuse') return { width: fuseWidth + words + 8, height: 48 }
  return { width: Math.max(34, words + 18), height: lines.length * lineHeight + 14 + headOf(look) }
}

/** Height of the symbol above a box's words. */
export function headOf(look: GraphNode['look']): number {
  return look === 'box' || look === 'rail' || look === 'stop' || look === 'fuse' ? 0 : symbolHeight
}

/** How far from its left edge a line meets a box that has one line on each side: a fuse in its middle. */
export function meetsAt(node: GraphNode): number {
  return node.look === 'fuse' ? fuseWidth / 2 : sizeOfNode(node).width / 2
}

/** How much room a label takes. */
export function sizeOfLabel({ lines }: GraphEdge): Size {
  return { width: Math.max(...lines.map(line => widthOf(line)), 0) + 8, height: lines.length * 17 + 4 }
}
