import type { Dimension } from '../quantities/quantity.ts'

/** How a figure of each dimension is asked for, with an example of it. */
const examples: Readonly<Record<Dimension, readonly [name: string, example: string]>> = {
  length: ['a length', '860 mm'],
  area: ['an area', '2.5 mm²'],
  volume: ['a volume', '64 L'],
  mass: ['a mass', '11.5 kg'],
  density: ['a density', '0.745 kg/L'],
  force: ['a force', '850 N'],
  pressure: ['a pressure', '2.5 bar'],
  torque: ['a torque', '34 Nm'],
  energy: ['an energy', '1.2 kWh'],
  power: ['a power', '84 W'],
  time: ['a time', '20 min'],
  speed: ['a speed', '70 km/h'],
  acceleration: ['an acceleration', '20 gn'],
  frequency: ['a speed of turning', '4500 rpm'],
  angle: ['an angle', '45°'],
  temperature: ['a temperature', '70 °C'],
  voltage: ['a voltage', '12 V'],
  current: ['a current', '7 A'],
  charge: ['a charge', '60 Ah'],
  resistance: ['a resistance', '6 mΩ'],
  'resistance-per-length': ['a resistance for a length', '7.98 Ω/km'],
  capacitance: ['a capacitance', '0.22 µF'],
  inductance: ['an inductance', '8 mH'],
  flow: ['a flow', '110 L/h'],
  consumption: ['a consumption', '8 L/100km'],
  'spring-rate': ['a spring rate', '25 N/mm'],
  'let-through': ['a let-through', '950 A²s'],
  'count-per-length': ['a count for a length', '620 /km'],
  'luminous-flux': ['a luminous flux', '1500 lm'],
  'luminous-intensity': ['a luminous intensity', '500 cd'],
  illuminance: ['an illuminance', '40 lx'],
  level: ['a level', '74 dB'],
  ratio: ['a number', '4.30'],
  money: ['an amount of money', '£184'],
  thread: ['a thread', 'M8 × 1.25'],
}

/** ``a current such as `7 A` or a power such as `84 W` ``; any figure where no dimension is asked for. */
export function expectedFigure(dimensions: readonly Dimension[]): string {
  if (dimensions.length === 0) return 'a number with its unit such as `860 mm`'
  return dimensions
    .map(dimension => examples[dimension])
    .map(([name, example]) => `${name} such as \`${example}\``)
    .join(' or ')
}
