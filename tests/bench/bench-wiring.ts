import { performance } from 'node:perf_hooks'
import { placedDrawings, plainDrawings } from '../wiring/all-drawings.ts'
import { foldVehicle, type MadeCircuit } from '../wiring/vehicle.ts'

const colours = ['red', 'green/purple', 'blue/white', 'black', 'brown/yellow']

/** One of many circuits: three in four by a loom, each with a return of its own. */
const circuit = (index: number): MadeCircuit => ({
  feeds: `lamp ${index}`,
  load: '21 W',
  use: 'lighting',
  supply: 'battery',
  box: index % 2 === 0 ? 'front-box' : 'rear-box',
  way: String((index % 8) + 1),
  rating: '5 A',
  area: '1 mm²',
  colour: colours[index % colours.length] ?? 'red',
  length: `${(index % 9) + 1} m`,
  back: '1 mm²',
  backLength: '0.5 m',
  earth: index % 3 === 0 ? 'nose' : 'tail',
  ...(index % 4 === 0 ? {} : { loom: index % 2 === 0 ? 'left-loom' : 'right-loom' }),
  route: [`fuse box ${index % 2}`, `sill ${index % 3}`, `panel ${index % 12}`, `lamp ${index}`],
})

/** The time for all drawings of a vehicle by its wires, and how it grows; the first line also loads what places them. */
export async function run(): Promise<void> {
  console.log('parts  wires  drawings  drawn s  placed s  ms a wire')
  for (const circuits of [10, 75, 150, 400]) {
    const record = foldVehicle({
      circuits: Object.fromEntries(Array.from({ length: circuits }, (_, index) => [`c-${index}`, circuit(index)])),
    })
    const start = performance.now()
    const plain = plainDrawings(record).length
    const drawn = performance.now()
    const placed = (await placedDrawings(record)).length
    const end = performance.now()
    const wires = circuits * 2
    const cells = [
      Math.round(circuits * 0.8),
      wires,
      plain + placed,
      ((drawn - start) / 1000).toFixed(2),
      ((end - drawn) / 1000).toFixed(2),
      ((end - start) / wires).toFixed(1),
    ]
    console.log(cells.map((cell, at) => String(cell).padStart([5, 7, 10, 9, 10, 11][at] ?? 8)).join(''))
  }
}
