import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readBuildFolder } from '../../src/build.ts'
import type { AsBuiltRecord } from '../../src/record/record.ts'
import type { WiringDrawing } from '../../src/wiring/svg.ts'
import { placedDrawings, plainDrawings } from './all-drawings.ts'
import { faultsOf, geometryOf } from './geometry.ts'
import { anyVehicle, foldVehicle } from './vehicle.ts'

const faults = (drawings: readonly WiringDrawing[]): string[] =>
  drawings.flatMap(({ svg, title }) => faultsOf(geometryOf(svg)).map(fault => `${title}: ${fault}`))

async function demo(): Promise<AsBuiltRecord> {
  const built = await readBuildFolder('.', { today: '2026-12-31' })
  if ('trouble' in built) throw new Error(built.trouble)
  return built.record
}

describe('every drawing of the wiring', () => {
  test('of the demo has no wire over a label, through a box or on another wire', async () => {
    const record = await demo()
    const all = [...plainDrawings(record), ...(await placedDrawings(record))]
    expect(all.length).toBeGreaterThan(35)
    expect(faults(all)).toEqual([])
  })

  test('of any vehicle has no wire over a label, through a box or on another wire', () => {
    fc.assert(
      fc.property(anyVehicle, vehicle => {
        expect(faults(plainDrawings(foldVehicle(vehicle)))).toEqual([])
      }),
      { numRuns: 40, seed: 1 },
    )
  })

  test('of any vehicle that is placed by layers has none either', async () => {
    await fc.assert(
      fc.asyncProperty(anyVehicle, async vehicle => {
        expect(faults(await placedDrawings(foldVehicle(vehicle)))).toEqual([])
      }),
      { numRuns: 8, seed: 2 },
    )
  })

  test('has the same bytes whenever it is made', async () => {
    const record = await demo()
    const bytes = async (): Promise<string[]> =>
      [...plainDrawings(record), ...(await placedDrawings(record))].map(({ svg }) => svg)
    expect(await bytes()).toEqual(await bytes())
  })

  test('has a title and a description that says what it says, no style, no script and no identifier', () => {
    fc.assert(
      fc.property(anyVehicle, vehicle => {
        for (const { svg, title, says } of plainDrawings(foldVehicle(vehicle))) {
          expect(svg.startsWith('<svg class="dwg wd')).toBe(true)
          expect(svg).toContain(`<title>${xml(title)}</title><desc>${xml(says.join(' '))}</desc>`)
          expect(svg.match(/ (?:style|id|on\w+|fill|stroke)="|<script|<style/g)).toBeNull()
        }
      }),
      { numRuns: 15, seed: 3 },
    )
  })
})

describe('the measure that these drawings are held to', () => {
  const sheet = (inside: string): string[] => faultsOf(geometryOf(`<svg width="200" height="100">${inside}</svg>`))
  const wire = (d: string): string => `<g class="wire"><path class="w case" d="${d}"/></g>`

  test.each([
    ['a wire beside a label', `${wire('M10 20L100 20')}<text x="10" y="50">lamp</text>`, []],
    ['a wire over a label', `${wire('M10 45L100 45')}<text x="10" y="50">lamp</text>`, ['a wire lies over “lamp”']],
    [
      'a wire that ends at a box',
      `${wire('M10 20L50 20')}<rect class="frame-of" x="50" y="10" width="40" height="20"/>`,
      [],
    ],
    [
      'a wire through a box',
      `${wire('M10 20L150 20')}<rect class="frame-of" x="50" y="10" width="40" height="20"/>`,
      ['a wire goes through the box at 50, 10'],
    ],
    ['two wires that cross', wire('M10 20L100 20') + wire('M50 5L50 60'), []],
    [
      'two wires on each other',
      wire('M10 20L100 20') + wire('M50 22L150 22'),
      ['two wires run on each other at 10, 20'],
    ],
    [
      'two labels on each other',
      '<text x="10" y="50">lamp</text><text x="20" y="52">pump</text>',
      ['“lamp” lies over “pump”'],
    ],
    ['a label beyond the edge', '<text x="180" y="50">lamp lamp</text>', ['“lamp lamp” leaves the sheet']],
  ])('of %s says what it finds', (_, inside, expected) => {
    expect(sheet(inside)).toEqual(expected)
  })
})

const xml = (text: string): string =>
  text.replace(
    /[&<>"']/g,
    found => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' })[found] ?? found,
  )
