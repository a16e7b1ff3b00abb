import { circle, type Point, stroke, tag } from './svg.ts'

/** Symbols by IEC 60617, as the trade draws them, each standing on an upright wire; half of its height above and below `at`. */
export type SymbolName =
  | 'battery'
  | 'generator'
  | 'fuse'
  | 'contact'
  | 'relay'
  | 'plug'
  | 'stop'
  | 'lamp'
  | 'motor'
  | 'horn'
  | 'resistor'
  | 'box'
  | 'earth'

/** Half of a symbol's height along the wire. A stop has none: the wire runs on past it. */
export const symbolHalf = (name: SymbolName): number => (name === 'stop' ? 0 : 18)

/** Draws a symbol; its strokes take their weight from the style sheet. */
export function symbol(name: SymbolName, at: Point): string {
  return tag('g', { class: 'dev' }, ...parts[name](at))
}

const letter = ({ x, y }: Point, text: string): string => tag('text', { class: 'in', x, y: y + 6 }, text)
const round = (at: Point, r = 16): string => circle('out plate', at, r)

const parts: Readonly<Record<SymbolName, (at: Point) => string[]>> = {
  // A cell: the long line is the positive plate. Positive is below, where the circuit begins.
  battery: ({ x, y }) => [
    stroke('out', `M${x} ${y - 18}V${y - 6}M${x - 9} ${y - 6}h18M${x - 18} ${y + 4}h36M${x} ${y + 4}V${y + 18}`),
    stroke('thin', `M${x + 22} ${y + 6}h8m-4-4v8M${x + 22} ${y - 10}h8`),
  ],
  generator: at => [round(at), letter(at, 'G')],
  fuse: ({ x, y }) => [
    tag('rect', { class: 'out plate', x: x - 8, y: y - 16, width: 16, height: 32 }),
    stroke('thin', `M${x} ${y - 18}v36`),
  ],
  contact: ({ x, y }) => [
    stroke('out', `M${x} ${y - 18}v8M${x} ${y + 18}v-8l-12-18`),
    circle('solid', { x, y: y + 10 }, 2.5),
    circle('solid', { x, y: y - 10 }, 2.5),
  ],
  relay: ({ x, y }) => [
    stroke('out', `M${x} ${y - 18}v8M${x} ${y + 18}v-8l-12-18`),
    circle('solid', { x, y: y + 10 }, 2.5),
    circle('solid', { x, y: y - 10 }, 2.5),
    tag('rect', { class: 'out plate', x: x - 46, y: y - 7, width: 22, height: 14 }),
    stroke('thin dashes', `M${x - 24} ${y}h17`),
    stroke('thin', `M${x - 42} ${y + 7}l14-14`),
  ],
  plug: ({ x, y }) => [
    stroke('out', `M${x - 8} ${y - 12}l8 8 8-8M${x - 8} ${y - 2}l8 8 8-8M${x} ${y - 18}v14M${x} ${y + 6}v12`),
  ],
  stop: ({ x, y }) => [stroke('out', `M${x - 16} ${y}h9M${x + 7} ${y}h9`)],
  lamp: at => [
    round(at),
    stroke('thin', `M${at.x - 11.3} ${at.y - 11.3}l22.6 22.6M${at.x + 11.3} ${at.y - 11.3}l-22.6 22.6`),
  ],
  motor: at => [round(at), letter(at, 'M')],
  horn: ({ x, y }) => [
    stroke('thin', `M${x} ${y - 18}v18M${x - 7} ${y + 8}v10M${x + 7} ${y + 8}v10`),
    stroke('out plate', `M${x - 14} ${y + 8}a14 14 0 0 1 28 0z`),
  ],
  resistor: ({ x, y }) => [tag('rect', { class: 'out plate', x: x - 9, y: y - 18, width: 18, height: 36 })],
  box: ({ x, y }) => [tag('rect', { class: 'out plate', x: x - 18, y: y - 16, width: 36, height: 32 })],
  earth: ({ x, y }) => [
    stroke('out', `M${x} ${y - 18}v12M${x - 18} ${y - 6}h36M${x - 11} ${y + 2}h22M${x - 4} ${y + 10}h8`),
  ],
}
