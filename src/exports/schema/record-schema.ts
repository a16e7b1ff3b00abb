import { figureDefinitions } from './figure-schemas.ts'
import { closed, listOf, named, orNull, type Schema, text, told, words } from './schema-makers.ts'
import { thingDefinitions } from './thing-schemas.ts'
import { workDefinitions } from './work-schemas.ts'

const build = closed({
  title: text,
  summary: words,
  started: words,
  currency: { type: 'string', pattern: '^[A-Z]{3}$' },
  file: text,
})

/** What record.json holds, as JSON Schema 2020-12; published beside it. */
export const recordSchema: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'urn:oddleg:record:1',
  title: 'The as-built record of a vehicle',
  description:
    'Written by oddleg from the builder’s session notes. Every figure carries the file, line and column in which it was written.',
  ...closed({
    format: { const: 'oddleg-record/1' },
    edition: told('Which edition this is; what it withholds is not in it', text),
    build,
    sessions: listOf(named('session')),
    parts: listOf(named('part')),
    measurements: listOf(named('measurement')),
    quantities: told('Figures in prose that nobody named', listOf(named('quantity'))),
    circuits: listOf(named('circuit')),
    connectors: listOf(named('connector')),
    looms: listOf(named('runOfCircuits')),
    fuseBoxes: listOf(named('fuseBox')),
    earthPoints: listOf(named('runOfCircuits')),
    volumes: listOf(named('volume')),
    jobs: listOf(named('job')),
    temporary: listOf(named('temporary')),
    tests: listOf(named('test')),
    inspection: listOf(named('point')),
    checks: listOf(named('check')),
    findings: listOf(named('finding')),
    cost: told('Null where the edition withholds cost', orNull(named('cost'))),
  }),
  $defs: { ...figureDefinitions, ...thingDefinitions, ...workDefinitions },
}
