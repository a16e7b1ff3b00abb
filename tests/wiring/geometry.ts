import { parseHTML } from 'linkedom'
import { widthOf } from '../../src/wiring/lettering.ts'

interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

interface Segment extends Box {
  readonly wire: number
}

/** What a drawing's own mark-up says of where things stand. */
export interface Geometry {
  readonly width: number
  readonly height: number
  readonly boxes: readonly Box[]
  readonly labels: readonly (Box & { readonly text: string })[]
  readonly segments: readonly Segment[]
}

/** Reads a drawing back from its bytes. */
export function geometryOf(svg: string): Geometry {
  const { document } = parseHTML(`<html><body>${svg}</body></html>`)
  const root = document.querySelector('svg')
  if (root === null) throw new Error('Unexpected drawing without an svg element')
  const number = (element: { getAttribute: (name: string) => string | null }, name: string): number =>
    Number(element.getAttribute(name))
  const boxes = [...root.querySelectorAll('rect.frame-of, rect.half')].map(rect => {
    const [left, top] = [number(rect, 'x'), number(rect, 'y')]
    return { left, top, right: left + number(rect, 'width'), bottom: top + number(rect, 'height') }
  })
  const labels = [...root.querySelectorAll('text')].flatMap(text => {
    const [x, y, words] = [number(text, 'x'), number(text, 'y'), text.textContent ?? '']
    const look = text.getAttribute('class') ?? ''
    if (look === 'in' || look === 'bal-n' || words === '') return []
    const width = widthOf(words, /\bsm\b/.test(look) ? 13 : 14)
    const left = /\bmid\b/.test(look) ? x - width / 2 : x
    return [{ text: words, left, right: left + width, top: y - 11, bottom: y + 3 }]
  })
  const paths = [...root.querySelectorAll('g.wire, path.wire')].map(wire =>
    wire.tagName.toLowerCase() === 'path' ? wire : wire.querySelector('path'),
  )
  const segments = paths.flatMap((path, wire) =>
    segmentsOf(path?.getAttribute('d') ?? '').map(segment => ({ ...segment, wire })),
  )
  return { width: number(root, 'width'), height: number(root, 'height'), boxes, labels, segments }
}

/** `M84 40V60`, `M8 10L248 10`: absolute moves only. */
function segmentsOf(d: string): Box[] {
  let [x, y] = [0, 0]
  return [...d.matchAll(/([MLHV])\s*(-?[\d.]+)(?:[ ,](-?[\d.]+))?/g)].flatMap(([, command, one, two]) => {
    const before = { x, y }
    if (command === 'V') y = Number(one)
    else x = Number(one)
    if (command === 'M' || command === 'L') y = Number(two)
    if (command === 'M') return []
    return [
      {
        left: Math.min(before.x, x),
        right: Math.max(before.x, x),
        top: Math.min(before.y, y),
        bottom: Math.max(before.y, y),
      },
    ]
  })
}

const halfWire = 3.5 // half of the widest stroke of a wire in the style sheet

const meets = (one: Box, other: Box, by: number): boolean =>
  one.left < other.right - by &&
  other.left < one.right - by &&
  one.top < other.bottom - by &&
  other.top < one.bottom - by

/** What is wrong with how a drawing is laid out, in words; empty where nothing is. */
export function faultsOf({ width, height, boxes, labels, segments }: Geometry): string[] {
  const thick = segments.map(segment => ({
    ...segment,
    left: segment.left - halfWire,
    right: segment.right + halfWire,
    top: segment.top - halfWire,
    bottom: segment.bottom + halfWire,
  }))
  return [
    ...labels.flatMap(label =>
      thick.some(segment => meets(segment, label, 0.2)) ? [`a wire lies over “${label.text}”`] : [],
    ),
    ...boxes.flatMap(box =>
      thick.some(segment => meets(segment, box, halfWire + 0.2))
        ? [`a wire goes through the box at ${box.left}, ${box.top}`]
        : [],
    ),
    ...labels.flatMap(label =>
      label.left < 0 || label.right > width || label.top < 0 || label.bottom > height
        ? [`“${label.text}” leaves the sheet`]
        : [],
    ),
    ...labels.flatMap((label, at) =>
      labels
        .slice(at + 1)
        .flatMap(other => (meets(label, other, 0.5) ? [`“${label.text}” lies over “${other.text}”`] : [])),
    ),
    ...segments.flatMap((one, at) =>
      segments
        .slice(at + 1)
        .flatMap(other =>
          one.wire !== other.wire && runTogether(one, other)
            ? [`two wires run on each other at ${one.left}, ${one.top}`]
            : [],
        ),
    ),
  ]
}

/** Side by side closer than their own width, for more than a crossing's length. */
function runTogether(one: Segment, other: Segment): boolean {
  const near = 7 // a wire's whole width
  const along = (low: 'left' | 'top', high: 'right' | 'bottom'): number =>
    Math.min(one[high], other[high]) - Math.max(one[low], other[low])
  const upright = one.left === one.right && other.left === other.right
  const level = one.top === one.bottom && other.top === other.bottom
  if (upright) return Math.abs(one.left - other.left) < near && along('top', 'bottom') > 1
  return level && Math.abs(one.top - other.top) < near && along('left', 'right') > 1
}
