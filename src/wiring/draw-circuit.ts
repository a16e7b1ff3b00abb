import type { Circuit } from './circuit.ts'
import { drawReturn, type WayBack } from './circuit-return.ts'
import { stationsOf } from './circuit-stations.ts'
import { wrap } from './lettering.ts'
import type { Station } from './station.ts'
import {
  circle,
  type DrawingLinks,
  drawing,
  leading,
  letters,
  type Point,
  stroke,
  type WiringDrawing,
  wire,
} from './svg.ts'
import { symbol, symbolHalf } from './symbols.ts'
import type { Wiring } from './wiring.ts'

type FigureKey = 'load' | 'fuse.rating'

/** What a circuit's own page adds: where each figure was written. */
interface FigureLinks extends DrawingLinks {
  readonly figure: (key: FigureKey) => { readonly href: string; readonly mark: string; readonly says: string } | null
}

const width = 320 // pixels, a narrow phone's whole width
const axis = 84 // from the left edge to the wire that goes out
const textLeft = 118
const textWidth = width - textLeft - 28
const lineHeight = 18
const gap = 8 // above and below what is written beside a station

/** A station with its place in the drawing. */
interface Placed {
  readonly station: Station
  readonly lines: readonly string[]
  readonly wireLines: readonly string[]
  /** Top of the wire that leads to it, the middle of its symbol, and where the next begins. */
  readonly top: number
  readonly middle: number
  readonly bottom: number
}

/** A circuit from its source to its load and back, station by station; not to scale. */
export function drawCircuit(wiring: Wiring, circuit: Circuit, links: FigureLinks): WiringDrawing {
  const stations = stationsOf(wiring, circuit)
  const out = placeStations(stations)
  const back = wayBack(circuit, out)
  const title = `${circuit.name}: from the source to what it feeds, and back`
  const says = [...stations.map(sentence), ...back.says]
  return drawing({ width, height: back.bottom + 6, look: 'wd-circuit', title, says }, [
    ...back.parts,
    ...out.flatMap((placed, index) => drawLead(placed, out[index - 1], links.circuit(circuit.id))),
    ...out.map(placed => drawStation(circuit, placed, links)),
  ])
}

function placeStations(stations: readonly Station[]): Placed[] {
  let [top, named] = [20, '']
  return stations.map((station, index): Placed => {
    const lines = wrap(station.words, textWidth)
    // The same wire is named once, where it begins.
    const words = station.wire?.words ?? ''
    const wireLines = words === '' || words === named ? [] : wrap(words, textWidth)
    named = words === '' ? named : words
    const lead = index === 0 ? 0 : wireLines.length * lineHeight + (wireLines.length === 0 ? 6 : 14)
    const rows = lines.length + (station.figure === null ? 0 : 1)
    const height = Math.max(symbolHalf(station.symbol) * 2, rows * lineHeight) + gap
    const placed = { station, lines, wireLines, top, middle: top + lead + height / 2, bottom: top + lead + height }
    top = placed.bottom
    return placed
  })
}

const upper = ({ station, middle }: Placed): Point => ({ x: axis, y: middle - symbolHalf(station.symbol) })
const lower = ({ station, middle }: Placed): Point => ({ x: axis, y: middle + symbolHalf(station.symbol) })

/** The wire from the station before, its name beside it. */
function drawLead(placed: Placed, before: Placed | undefined, href: string | null): string[] {
  if (before === undefined) return []
  const [from, to] = [lower(before), upper(placed)]
  const drawn = placed.station.wire
  const line = drawn === null ? stroke('out wire', `M${axis} ${from.y}V${to.y}`) : wire([from, to], drawn.look)
  const label = placed.wireLines.map((text, index) =>
    letters('wl', { x: textLeft, y: placed.top + 16 + index * lineHeight }, text),
  )
  return [leading(href, drawn === null ? 'a connection of which nobody wrote' : drawn.words, line, ...label)]
}

function drawStation(circuit: Circuit, { station, lines, middle }: Placed, links: FigureLinks): string {
  const rows = lines.length + (station.figure === null ? 0 : 1)
  const first = middle - ((rows - 1) * lineHeight) / 2 + 5
  const name = lines.map((text, index) => letters('', { x: textLeft, y: first + index * lineHeight }, text))
  const href = station.leads === null ? null : links[station.leads.kind](station.leads.id)
  const at = { x: textLeft, y: first + lines.length * lineHeight }
  const figure = station.figure === null ? '' : drawFigure(circuit, station.figure, { at, links })
  return leading(href, station.words, symbol(station.symbol, { x: axis, y: middle }), ...name) + figure
}

function drawFigure(circuit: Circuit, key: FigureKey, { at, links }: { at: Point; links: FigureLinks }): string {
  const held = key === 'load' ? circuit.load : (circuit.fuse?.rating ?? null)
  if (held === null) return letters('sm', at, key === 'load' ? 'load not written' : 'rating not written')
  const type = key === 'load' || circuit.fuse?.type == null ? '' : ` ${circuit.fuse.type}`
  const text = letters('fig', at, `${held.value.text}${type}`)
  const origin = links.figure(key)
  if (origin === null) return text
  const balloon = { x: width - 13, y: at.y }
  return leading(
    origin.href,
    `${held.value.text}, ${origin.says}`,
    text,
    stroke('dim', `M${textLeft} ${at.y + 5}H${width - 23}`),
    circle('bal', balloon, 10),
    letters('bal-n', balloon, origin.mark),
  )
}

function wayBack(circuit: Circuit, out: readonly Placed[]): WayBack {
  const [first, last] = [out[0], out.at(-1)]
  if (first === undefined || last === undefined) return { parts: [], says: [], bottom: 0 }
  // A generator drives the current: its own drawing ends at the battery, and says where it is earthed.
  if (circuit.use === 'charging') return { parts: [], says: [], bottom: last.bottom }
  return drawReturn(circuit, { load: lower(last), battery: upper(first), below: last.bottom + 6, textLeft, textWidth })
}

function sentence({ words, wire: drawn }: Station): string {
  return `${words}${drawn === null ? '' : `, by ${drawn.words}`}.`
}
