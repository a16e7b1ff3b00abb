import { describe, expect, test } from 'vitest'
import { placedDrawings, plainDrawings } from './all-drawings.ts'
import { faultsOf, geometryOf } from './geometry.ts'
import { foldVehicle, type MadeCircuit } from './vehicle.ts'

const circuit = (index: number): MadeCircuit => ({
  feeds: `lamp ${index}`,
  load: '5 W',
  supply: 'battery',
  box: index % 2 === 0 ? 'front-box' : 'rear-box',
  way: String((index % 8) + 1),
  rating: '5 A',
  area: '1 mm²',
  colour: 'red/blue',
  length: '3 m',
  back: 'chassis',
  earth: 'nose',
  loom: 'left-loom',
  route: [`stop ${index % 40}`, `stop ${(index * 7) % 90}`, `lamp ${index}`],
})
const vehicleOf = (count: number) =>
  foldVehicle({
    circuits: Object.fromEntries(Array.from({ length: count }, (_, index) => [`c-${index}`, circuit(index)])),
  })

describe('a vehicle of many wires', () => {
  test('with 200 in one loom is drawn plainly, line by line, without a fault', async () => {
    const drawings = await placedDrawings(vehicleOf(200))
    expect(drawings.map(({ title }) => title)).toEqual(['Left loom: its branches, line by line'])
    expect(drawings.flatMap(({ svg }) => faultsOf(geometryOf(svg)))).toEqual([])
  })

  test('with 400 circuits has a drawing for each and all in time', () => {
    const start = performance.now()
    expect(plainDrawings(vehicleOf(400)).length).toBeGreaterThan(400)
    expect(performance.now() - start).toBeLessThan(20_000) // a machine with ten other jobs included; alone it takes under two seconds
  })
})
