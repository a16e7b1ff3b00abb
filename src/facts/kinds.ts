import type { Dimension } from '../quantities/quantity.ts'
import { properties } from './properties.ts'

interface Kind {
  readonly means: string
  readonly properties: readonly string[]
  /** Where a property that is looser elsewhere has one dimension for this kind. */
  readonly narrower?: Readonly<Record<string, readonly Dimension[]>>
}

/** What every part may have, whatever its kind. */
const anyPart = ['mass', 'at', 'length', 'width', 'height', 'ground-clearance', 'clearance', 'ways', 'rating'] as const

const kind = (means: string, list: string, narrower: Kind['narrower'] = {}): Kind => ({
  means,
  properties: list.split(' '),
  narrower,
})
const force = { load: ['force', 'mass'] } as const
const electric = { rating: ['current'] } as const

const tie = 'count width thickness inside-radius bend-angle k-factor leg-a leg-b material yield-stress load arm'
const line = 'bore outside-diameter length rise flow bend-radius'
const pump = 'flow pressure suction-limit bore discharge-coefficient'
const drive =
  'ratio-1 ratio-2 ratio-3 ratio-4 ratio-5 ratio-6 ratio-7 ratio-8 ratio-reverse max-speed consumption output coolant-flow heat'
const terminal = 'ways rating section-min section-max standard terminal'
const cooler = 'flow heat temperature-in temperature-out'
const frame =
  'wheelbase front-overhang rear-overhang front-clearance rear-clearance belly-clearance consumption cruise-speed'
const wheel = 'radius rolling-circumference width profile rim load-index'

/** The kinds of part that the checks know, each with its own properties. The one table of them. */
export const kinds: Readonly<Record<string, Kind>> = {
  tank: kind(
    'holds fuel, water or oil',
    'length width height wall filled-volume usable-volume contents contents-density fill-line test-pressure',
  ),
  strap: kind('a band that holds something down', tie, force),
  bracket: kind('a folded plate that holds something', tie, force),
  bolt: kind(
    'a threaded fastener',
    'thread stress-area proof-stress tensile-strength finish load torque torque-set engagement plate-yield-stress count',
    force,
  ),
  hose: kind('a flexible line', line),
  pipe: kind('a rigid line', line),
  duct: kind('carries air', 'bore replaced-bore replaced-count width height'),
  pump: kind('moves a liquid', pump),
  restrictor: kind('a small hole that holds a flow back', `${pump} return-bore`),
  'control-cable': kind(
    'a cable that pulls something',
    'length travel required-length required-travel lever-ratio end-travel',
  ),
  'prop-shaft': kind(
    'a turning tube with a joint at each end',
    'length outside-diameter wall max-speed runout front-angle rear-angle max-angle',
    { 'max-speed': ['frequency'] },
  ),
  tyre: kind('what touches the road', wheel),
  wheel: kind('what carries the tyre', wheel),
  axle: kind('carries a pair of wheels', 'ratio rating load spring-rate', { load: ['mass'], rating: ['mass'] }),
  gearbox: kind('changes the ratio', drive),
  engine: kind('drives the vehicle', drive),
  speedometer: kind('shows the road speed', 'indicated-speed true-speed pulses-per-distance'),
  lamp: kind(
    'gives light, outside or in',
    'function height-top height-bottom edge-distance spacing power colour terminal',
  ),
  resistor: kind('drops the voltage for a fan', 'resistance current power-rating feeds terminal'),
  battery: kind('stores charge', 'capacity cold-cranking internal-resistance rest-voltage cranking-voltage terminal', {
    capacity: ['charge'],
  }),
  alternator: kind('charges the battery', 'rating idle-output terminal', electric),
  'fuse-box': kind('holds fuses, way by way', 'ways main-fuse rating feed terminal', electric),
  connector: kind('joins wires, way by way', terminal, electric),
  terminal: kind('ends a wire', terminal, electric),
  'trailer-socket': kind('joins the trailer’s wires', terminal, electric),
  loom: kind('wires that run together', 'sleeve outside-diameter length'),
  relay: kind('switches a load by a coil', 'rating coil-current terminal', electric),
  switch: kind('switches a load by hand', 'rating coil-current terminal', electric),
  radiator: kind('gives the coolant’s heat to the air', cooler),
  heater: kind('warms the cabin', cooler),
  fan: kind('moves air', cooler),
  weld: kind('joins two plates', 'leg-size length load allowable-stress', force),
  chassis: kind('the frame that all is fixed to', frame),
  hull: kind('a body that floats', frame),
  body: kind('what stands on the frame', frame),
  trailer: kind('is drawn behind', frame),
}

/** The dimensions that a property may have; none where the property is not known, or holds words. */
export function dimensionsOf(property: string, of: string | null = null): readonly Dimension[] {
  return (of === null ? undefined : kindOf(of)?.narrower?.[property]) ?? propertyOf(property)?.dimensions ?? []
}

/** The usual dimension of a property; null where the property is not known, or holds words. */
export function dimensionOf(property: string): Dimension | null {
  return propertyOf(property)?.dimensions[0] ?? null
}

/** The properties that a part of this kind is known by; of an unknown kind, all that there are. */
export function propertiesOf(of: string | null): readonly string[] {
  const own = of === null ? undefined : kindOf(of)?.properties
  return own === undefined ? Object.keys(properties) : [...new Set([...anyPart, ...own])]
}

/** What a property means at the bench; null where it is not known. */
export function propertyMeaning(property: string): string | null {
  return propertyOf(property)?.means ?? null
}

const kindOf = (name: string): Kind | undefined => (Object.hasOwn(kinds, name) ? kinds[name] : undefined)
const propertyOf = (name: string) => (Object.hasOwn(properties, name) ? properties[name] : undefined)
