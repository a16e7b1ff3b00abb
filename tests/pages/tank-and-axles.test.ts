import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, test } from 'vitest'
import { publish, writeBuild } from '../site/published.ts'

// The axles are of OpenStax University Physics, 12.1: 52 % of a car stands on the front wheels of a wheelbase of 2.5 m, so
// its centre of gravity lies 1.2 m behind them. Litres of a box are its sides multiplied.

const note = `---
title: Weighed
date: 2026-03-07
parts:
  square-tank:
    name: Square tank
    kind: tank
    at: 1500 mm
    mass: 10 kg
    contents: petrol
    contents-density: 0.75 kg/L
    ground-clearance: 250 mm
    length: { value: 604 mm, note: across the car }
    width: 404 mm
    height: 244 mm
  round-tank: { name: Round tank, kind: tank, at: 500 mm, mass: 5 kg, contents: water, contents-density: 1 kg/L }
  bracket: { name: Odd bracket, kind: bracket }
  engine: { name: Engine, mass: 100 kg, at: 0 mm }
  front-axle: { name: Front axle, kind: axle, load: 520 kg, rating: 700 kg }
  rear-axle: { name: Rear axle, kind: axle, load: 480 kg, rating: 700 kg }
  tyres: { name: Tyres, kind: tyre, qty: 4, radius: 300 mm }
volumes:
  square-tank: { outside: box 604 x 404 x 244 mm, wall: 2 mm, less: [ box 100 x 100 x 240 mm ] }
  round-tank: { outside: cylinder 200 x 500 mm, wall: 0 mm }
measurements:
  vehicle: { wheelbase: 2.5 m, front-overhang: 600 mm, rear-overhang: 500 mm }
---

All of it stands on its wheels.
`

let site = ''
beforeAll(() => {
  site = publish(
    writeBuild({
      'build.md': '---\ntitle: Small one\ncurrency: GBP\n---\n\nA small build.\n',
      'sessions/2026-03-07-weighed.md': note,
    }),
  )
}, 120_000)

const page = (...path: string[]): string => readFileSync(join(site, ...path, 'index.html'), 'utf8')
const drawing = (html: string, look: string): string =>
  new RegExp(`<svg class="dwg ${look}"[\\s\\S]*?</svg>`).exec(html)?.[0] ?? ''
const words = (html: string): string => html.replace(/<[^>]+>/g, '').replace(/\s+/g, ' ')

/** Width and height of each closed outline of four corners, in units of the drawing. */
function outlines(svg: string, look: string): [number, number][] {
  const found = svg.matchAll(new RegExp(`<path class="${look}" d="M([^"HV]+)z"`, 'g'))
  return [...found].map(([, points = '']) => {
    const corners = points.split('L').map(corner => corner.split(' ').map(Number))
    const size = (axis: number): number => {
      const all = corners.map(corner => corner[axis] ?? 0)
      return Math.max(...all) - Math.min(...all)
    }
    return [size(0), size(1)]
  })
}

describe('the page of a tank', () => {
  test('draws front, side and plan of a box to one scale', () => {
    const views = outlines(drawing(page('parts', 'square-tank'), 'tank'), 'out')
    const scale = (views[0]?.[0] ?? 0) / 604
    const expected = [604, 244, 404, 244, 604, 404]
    expect(views.flat().map(units => units / scale)).toHaveLength(6)
    for (const [index, mm] of expected.entries()) expect((views.flat()[index] ?? 0) / scale).toBeCloseTo(mm, -0.5)
  })

  test('leads each dimension to its words, with the balloon of the session', () => {
    const svg = drawing(page('parts', 'square-tank'), 'tank')
    for (const [says, text] of [
      ['Length', '604'],
      ['Width', '404'],
      ['Height', '244'],
    ])
      expect(svg).toMatch(
        new RegExp(
          `<a href="../../sessions/2026-03-07-weighed/index.html#q-\\d+"><title>${says} ${text} mm, session 1`,
        ),
      )
  })

  test('draws what is taken off apart from the views, hatched, and says that its place is not written', () => {
    const html = page('parts', 'square-tank')
    const svg = drawing(html, 'tank')
    expect(outlines(svg, 'beyond')).toHaveLength(1)
    expect(words(svg)).toContain('its place is not written')
    const round = drawing(page('parts', 'round-tank'), 'tank')
    expect(outlines(round, 'beyond')).toHaveLength(0)
    expect(round).toContain('<circle class="out"')
  })

  test('gives what it holds every 10 mm and at the brim, and the level at 95 %', () => {
    const html = page('parts', 'square-tank')
    const rows = [...html.matchAll(/<th scope="row" role="rowheader" class="num">(.*?)<\/th><td[^>]*>(.*?)<\/td>/g)]
    const read = rows.map(row => [words(row[1] ?? ''), words(row[2] ?? '')].map(text => Number.parseFloat(text)))
    expect(read).toEqual(
      Array.from({ length: 25 }, (_, at) => [at * 10, Number((((600 * 400 - 100 * 100) * at * 10) / 1e6).toFixed(1))]),
    )
    expect(words(html)).toContain('the level stands at 228 mm') // 0.95 × 240 mm
  })

  test('warns of vapour and of hot work beside the table; a part that is no tank has neither', () => {
    expect(page('parts', 'square-tank')).toMatch(/class="caution">[^<]*vapour[^<]*No welding/)
    expect(page('parts', 'engine')).not.toContain('id="dip"')
  })
})

describe('the page of axle loads', () => {
  const xOf = (svg: string, look: string): number[] =>
    [...svg.matchAll(new RegExp(`<path class="${look}" d="M([\\d.]+) `, 'g'))].map(([, x]) => Number(x))

  test('marks the centre of gravity where the published example has it, to scale between the axles', () => {
    const svg = drawing(page('checks', 'axle-loads', 'vehicle', 'centre'), 'side balance')
    const [front = 0, rear = 0] = xOf(svg, 'foot')
    const [centre = 0] = xOf(svg, 'solid')
    expect((centre - front) / (rear - front)).toBeCloseTo(1.2 / 2.5, 3)
    expect(words(svg)).toContain('1200 mm behind the front axle')
  })

  test('hangs every weighed part by a disc whose area is as its mass, and what laden adds by a dashed one', () => {
    const svg = drawing(page('checks', 'axle-loads'), 'side balance')
    const radii = (look: string): number[] =>
      [...svg.matchAll(new RegExp(`r="([\\d.]+)" class="${look}"|class="${look}"[^>]* r="([\\d.]+)"`, 'g'))].map(
        ([, one, other]) => Number(one ?? other),
      )
    const [engine = 0, square = 1] = radii('mass')
    expect(radii('mass')).toHaveLength(3)
    expect((engine / square) ** 2).toBeCloseTo(10, 0) // 100 kg, 10 kg
    expect(radii('mass added')).toHaveLength(2)
  })

  test('draws a tank whose length was measured across the car by its width', () => {
    const svg = drawing(page('checks', 'axle-loads'), 'side balance')
    const [front = 0, rear = 0] = xOf(svg, 'foot')
    const [, left, right] = /class="hid" d="M([\d.]+) [\d.]+H([\d.]+)V[\d.]+H/.exec(svg) ?? []
    expect(((Number(right) - Number(left)) / (rear - front)) * 2500).toBeCloseTo(404, -0.5)
  })

  test('names the parts that nobody weighed, and says that weighed axles have them all the same', () => {
    const text = words(page('checks', 'axle-loads'))
    expect(text).toMatch(
      /Unweighed: \d parts on the vehicle without a mass or a place, in no disc\. The axles were weighed/,
    )
    expect(text).toContain('Odd bracket')
  })
})
