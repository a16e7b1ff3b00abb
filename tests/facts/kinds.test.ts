import { describe, expect, test } from 'vitest'
import { dimensionOf, dimensionsOf, kinds, propertiesOf, propertyMeaning } from '../../src/facts/kinds.ts'
import { properties } from '../../src/facts/properties.ts'

/** What every part may have, whatever its kind. */
const anyPart = ['mass', 'at', 'length', 'width', 'height', 'ground-clearance', 'clearance', 'ways', 'rating']
const named = new Set<string>([...anyPart, ...Object.values(kinds).flatMap(kind => kind.properties)])

describe('the table of kinds', () => {
  test('every property of a kind has a meaning, and no property is without a kind', () => {
    expect([...named].filter(property => propertyMeaning(property) === null)).toEqual([])
    expect(Object.keys(properties).filter(property => !named.has(property))).toEqual([])
  })

  test('a kind lists no property twice', () => {
    for (const kind of Object.values(kinds)) expect(kind.properties.length).toBe(new Set(kind.properties).size)
  })

  test('a narrower dimension is one that the property may have', () => {
    for (const kind of Object.values(kinds))
      for (const [property, narrower] of Object.entries(kind.narrower ?? {}))
        expect(narrower.filter(dimension => !properties[property]?.dimensions.includes(dimension))).toEqual([])
  })

  test.each([
    ['length', null, ['length']],
    ['load', 'axle', ['mass']],
    ['load', 'bolt', ['force', 'mass']],
    ['rating', 'relay', ['current']],
    ['capacity', 'battery', ['charge']],
    ['consumption', 'engine', ['consumption', 'flow']],
    ['contents', 'tank', []],
    ['colour-of-money', 'tank', []],
    ['constructor', 'constructor', []],
  ] as const)('%s of %s may have the dimensions %j', (property, kind, dimensions) => {
    expect(dimensionsOf(property, kind)).toEqual(dimensions)
  })

  test('a property has one usual dimension, and words have none', () => {
    expect(['thread', 'k-factor', 'contents', 'nothing-of-the-kind'].map(dimensionOf)).toEqual([
      'thread',
      'ratio',
      null,
      null,
    ])
  })

  test('a kind has what every part has besides its own', () => {
    expect(propertiesOf('loom')).toEqual([...anyPart, 'sleeve', 'outside-diameter'])
  })
})
