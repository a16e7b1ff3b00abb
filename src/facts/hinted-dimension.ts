import type { Dimension } from '../quantities/quantity.ts'
import { dimensionsOf } from './kinds.ts'

/** Last words of a property that ask for a unit, though nothing else is known of it: `roof-height`. */
const hints: Readonly<Record<string, Dimension>> = {
  depth: 'length',
  diameter: 'length',
  gap: 'length',
  distance: 'length',
  reach: 'length',
  offset: 'length',
  circumference: 'length',
  overhang: 'length',
  volume: 'volume',
  weight: 'mass',
  voltage: 'voltage',
  drop: 'voltage',
  temperature: 'temperature',
  speed: 'speed',
  time: 'time',
  angle: 'angle',
  area: 'area',
  power: 'power',
}

/** The dimension that the name of an unknown property asks for, so that a figure without its unit is not taken for a count. */
export function dimensionHinted(property: string): Dimension | null {
  const last = property.split('-').at(-1) ?? ''
  if (Object.hasOwn(hints, last)) return hints[last] ?? null
  const [usual] = dimensionsOf(last)
  return usual === undefined || usual === 'ratio' || usual === 'frequency' ? null : usual
}
