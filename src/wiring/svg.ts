import type { WireLook } from './wire-look.ts'

/** A drawing as it is printed, and the same in words. */
export interface WiringDrawing {
  /** One `svg` element. Colours and weights come from its classes; there is no style and no identifier in it. */
  readonly svg: string
  readonly title: string
  /** One sentence a line: all that the drawing says. */
  readonly says: readonly string[]
  /** Its own size, in pixels. */
  readonly width: number
  readonly height: number
}

export interface Point {
  readonly x: number
  readonly y: number
}

/** Where parts of a drawing lead; null leads nowhere. Addresses are relative to the page that shows it. */
export interface DrawingLinks {
  readonly circuit: (id: string) => string | null
  readonly part: (id: string) => string | null
  readonly connector: (id: string) => string | null
}

type Attributes = Readonly<Record<string, string | number | null>>

const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}
// XML knows no control characters but tab and line ends, escaped or not.
const forbidden = /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu

/** Words made safe to stand in the drawing. */
export const escaped = (text: string): string =>
  text.replace(forbidden, '\ufffd').replace(/[&<>"']/g, found => escapes[found] ?? found)

/** One element; attributes that are null are left out, and children are finished mark-up. */
export function tag(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const printed = Object.entries(attributes).flatMap(([key, value]) =>
    value === null ? [] : [` ${key}="${escaped(String(typeof value === 'number' ? tenth(value) : value))}"`],
  )
  return children.length === 0
    ? `<${name}${printed.join('')}/>`
    : `<${name}${printed.join('')}>${children.join('')}</${name}>`
}

/** Rounds to a tenth of a unit, so that the same record gives the same bytes on every machine. */
export const tenth = (value: number): number => Math.round(value * 10) / 10 + 0

export const stroke = (look: string, d: string): string => tag('path', { class: look, d })
export const circle = (look: string, { x, y }: Point, r: number): string =>
  tag('circle', { class: look, cx: x, cy: y, r })
export const letters = (look: string, { x, y }: Point, text: string): string =>
  tag('text', { class: look === '' ? null : look, x, y }, escaped(text))
export const rectangle = (look: string, { x, y }: Point, size: { width: number; height: number }): string =>
  tag('rect', { class: look, x, y, width: size.width, height: size.height })

/** Leads to an address, or stands without one. Its title is what a pointer resting on it and a screen reader are told. */
export function leading(href: string | null, title: string, ...children: readonly string[]): string {
  return href === null
    ? tag('g', {}, tag('title', {}, escaped(title)), ...children)
    : tag('a', { href }, tag('title', {}, escaped(title)), ...children)
}

/** A wire along these points: a case, its own colour, its tracer as bands, each with an edge on paper. A wire of unknown colours is an empty case, dashed. */
export function wire(points: readonly Point[], look: Pick<WireLook, 'ground' | 'band'>): string {
  const d = points.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${tenth(x)} ${tenth(y)}`).join('')
  const ground = look.ground ?? 'unknown'
  return tag(
    'g',
    { class: 'wire' },
    stroke('w case', d),
    stroke(`w ${ground}`, d),
    ...(look.band === null ? [] : [stroke('w edge', d), stroke(`w band ${look.band}`, d)]),
  )
}

/** Current that goes by the chassis: dashed, since it is no wire. */
export function byChassis(points: readonly Point[]): string {
  const d = points.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${tenth(x)} ${tenth(y)}`).join('')
  return tag('g', { class: 'wire' }, stroke('chassis', d))
}

/** The whole element, from its parts back to front. */
export function drawing(
  sheet: { width: number; height: number; look: string; title: string; says: readonly string[] },
  parts: readonly string[],
): WiringDrawing {
  const [width, height] = [Math.ceil(sheet.width), Math.ceil(sheet.height)]
  const svg = tag(
    'svg',
    {
      class: `dwg wd ${sheet.look}`.trim(),
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      role: 'group',
      'aria-label': sheet.title,
    },
    tag('title', {}, escaped(sheet.title)),
    tag('desc', {}, escaped(sheet.says.join(' '))),
    ...parts,
  )
  return { svg, title: sheet.title, says: sheet.says, width, height }
}
