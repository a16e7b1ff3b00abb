import type { Circuit, Conductor } from './circuit.ts'
import { wrap } from './lettering.ts'
import { byChassis, letters, type Point, stroke, wire } from './svg.ts'
import { symbol } from './symbols.ts'
import { wireWords } from './wire-words.ts'

/** Where the way back begins and where it has to arrive. */
interface Homeward {
  /** Lower end of the load's symbol. */
  readonly load: Point
  /** Upper end of the battery's symbol. */
  readonly battery: Point
  /** Below this nothing is drawn yet. */
  readonly below: number
  readonly textLeft: number
  readonly textWidth: number
}

/** A piece of a drawing, what it says, and where it ends. */
export interface WayBack {
  readonly parts: readonly string[]
  readonly says: readonly string[]
  readonly bottom: number
}

const lineHeight = 18
const margin = 20 // from the left edge to the way home

/** From the load home: by a wire of its own, by an earth point and the chassis, or not written. */
export function drawReturn(circuit: Circuit, at: Homeward): WayBack {
  if (circuit.earth !== null || circuit.return === 'chassis') return drawEarth(circuit, at)
  return circuit.back === null ? drawGap(at) : drawCable(circuit.back, at)
}

/** `W1R, 35 mm² black, 1.1 m`. */
export function conductorWords(wire: Conductor): string {
  return `${wire.number}, ${wireWords(wire)}${wire.length === null ? '' : `, ${wire.length.value.text}`}`
}

function drawCable(back: Conductor, at: Homeward): WayBack {
  const words = conductorWords(back)
  const lines = wrap(`${words}; no earth point is written, so it is drawn to the battery`, at.textWidth)
  const low = at.below + lines.length * lineHeight + 8
  return {
    parts: [wire([at.load, { x: at.load.x, y: low }, ...home(at, low)], back.look), ...label('wl', lines, at)],
    says: [`Back by a wire of its own, ${words}; no earth point is written, so it is drawn to the battery.`],
    bottom: low + 8,
  }
}

function drawGap(at: Homeward): WayBack {
  const low = at.below + 28
  return {
    parts: [stroke('gap', `M${at.load.x} ${at.load.y}V${low}`), ...label('sm', ['return not written'], at)],
    says: ['No return is written.'],
    bottom: low + 4,
  }
}

function drawEarth({ back, earth }: Circuit, at: Homeward): WayBack {
  const lines = back === null ? [] : wrap(conductorWords(back), at.textWidth)
  const low = at.below + lines.length * lineHeight + (back === null ? 4 : 12)
  const names = wrap(earth?.name ?? 'Chassis; no earth point is written', at.textWidth)
  const down = [at.load, { x: at.load.x, y: low }]
  const foot = low + 18 + Math.max(28, names.length * lineHeight + 8)
  return {
    parts: [
      byChassis([{ x: at.load.x, y: low + 28 }, { x: at.load.x, y: foot }, ...home(at, foot)]),
      back === null ? stroke('out wire', `M${at.load.x} ${at.load.y}V${low}`) : wire(down, back.look),
      ...label('wl', lines, at),
      symbol('earth', { x: at.load.x, y: low + 18 }),
      ...names.map((text, index) => letters('', { x: at.textLeft, y: low + 20 + index * lineHeight }, text)),
      letters('sm', { x: at.textLeft, y: foot + 4 }, 'home by the chassis'),
    ],
    says: [
      `Back ${back === null ? '' : `by ${conductorWords(back)} `}to ${earth?.name ?? 'the chassis, no earth point written'}, and home by the chassis.`,
    ],
    bottom: foot + 10,
  }
}

/** Along the left edge up to the battery's negative. */
function home({ battery }: Homeward, y: number): Point[] {
  const top = battery.y - 10
  return [{ x: margin, y }, { x: margin, y: top }, { x: battery.x, y: top }, battery]
}

function label(look: string, lines: readonly string[], { below, textLeft }: Homeward): string[] {
  return lines.map((text, index) => letters(look, { x: textLeft, y: below + 12 + index * lineHeight }, text))
}
