import { closedWords, privateKinds } from './closed-words.ts'
import { closed, figure, words } from './field-makers.ts'
import type { Field, Fields } from './fields.ts'
import { dimensionsOf, kinds } from './kinds.ts'
import { properties } from './properties.ts'

/** The figures of a kind as fields, so that they may stand in build.md too. */
const figuresOf = (kind: string): Fields =>
  Object.fromEntries(
    (kinds[kind]?.properties ?? []).flatMap(property => {
      const dimensions = dimensionsOf(property, kind)
      return dimensions.length === 0 ? [] : [[property, figure(...dimensions)]]
    }),
  )

export const electricalKeys: Fields = {
  nominal: figure('voltage'),
  charging: figure('voltage'),
  ambient: figure('temperature'),
  zones: { holds: 'named', each: figure('temperature') },
  alternator: { holds: 'group', fields: figuresOf('alternator'), short: 'rating' },
  battery: { holds: 'group', fields: figuresOf('battery'), short: 'capacity' },
}

export const loomKeys: Fields = { name: words(), ...figuresOf('loom') }
export const earthPointKeys: Fields = {
  name: words(),
  count: figure('ratio'),
  resistance: figure('resistance'),
  terminal: words(),
}

const anything: Field = { holds: 'anything' }
const named = (fields: Fields, short = 'name'): Field => ({ holds: 'named', each: { holds: 'group', fields, short } })

const dimensions = Object.values(properties).flatMap(property => property.dimensions)

/** The keys of build.md. Those that hold anything are read by a place of their own. */
export const buildKeys: Fields = {
  title: words(),
  summary: { holds: 'prose' },
  started: anything,
  currency: words(),
  rates: { holds: 'named', each: anything },
  units: {
    holds: 'group',
    fields: Object.fromEntries([...dimensions, 'energy', 'time', 'acceleration'].map(name => [name, words()])),
  },
  gallon: closed(closedWords.gallon),
  mil: closed(closedWords.mil),
  decimal: closed(closedWords.decimal),
  approximate: anything,
  electrical: { holds: 'group', fields: electricalKeys },
  donors: named({ name: words(), cost: { holds: 'amount' } }),
  systems: { holds: 'named', each: words() },
  limits: { holds: 'named', each: anything },
  requirements: { holds: 'named', each: anything },
  by: words(),
  identity: { holds: 'named', each: words() },
  looms: named(loomKeys),
  'earth-points': named(earthPointKeys),
  editions: { holds: 'named', each: { holds: 'group', fields: { withhold: { holds: 'list', of: privateKinds } } } },
}
