export const thingSchemes = [
  'part',
  'circuit',
  'connector',
  'loom',
  'donor',
  'system',
  'earth-point',
  'measurement',
  'session',
  'job',
  'check',
  'test',
  'photo',
] as const
export type ThingScheme = (typeof thingSchemes)[number]

/** `[the tank](part:fuel-tank)`: a link to a thing of the record, resolved when pages are made. */
export interface ThingTarget {
  readonly scheme: ThingScheme
  readonly path: string
}

declare module 'mdast' {
  interface LinkData {
    thing?: ThingTarget
    /** A link to another note's file. */
    note?: string
  }
}
