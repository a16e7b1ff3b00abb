import { describe, expect, test } from 'vitest'
import { stated, statedFront, told } from './stated.ts'

const build = (line: string): string[] => told(stated(`---\ntitle: n\n${line}\n---\n`, 'content/build.md'))
const byItsWord = (at: string, path: string): string =>
  `${at} nothing-said Unexpected nothing for \`${path}\`, expected what is known of it; it goes by that word alone`

describe('a name with nothing behind it', () => {
  test.each([
    ['systems: { body: Body }', []],
    ['systems: { body: ~ }', [byItsWord('3:12-16', 'system:body')]],
    ['looms: { tail: {} }', [byItsWord('3:10-14', 'loom:tail')]],
    ['earth-points: { left: ~ }', [byItsWord('3:17-21', 'earth-point:left')]],
    ['donors: { marlow: ~ }', [`${byItsWord('3:11-17', 'donor:marlow')} and cost nothing`]],
    [
      'editions: { public: ~ }',
      [
        '3:13-19 nothing-said Unexpected nothing for `editions/public`, expected what is known of it; that edition withholds nothing',
      ],
    ],
    ['editions: { buyer: {}, full: ~ }', []],
  ])('in build.md, `%s`, is told as %j', (line, findings) => {
    expect(build(line)).toEqual(findings)
  })

  const notThere = (at: string, path: string): string =>
    `${at} nothing-said Unexpected nothing for \`${path}\`, expected what is known of it; this note puts nothing of it into the record`

  test.each([
    ['circuits: { pump: ~ }', [notThere('4:13-17', 'circuit:pump')]],
    ['connectors: { plug: {} }', [notThere('4:15-19', 'connector:plug')]],
    ['volumes: { tank: ~ }', [notThere('4:12-16', 'volume:tank')]],
    [
      'measurements: { tank: {} }',
      [
        '4:17-21 nothing-said Unexpected nothing for `tank`, expected what is known of it; nothing of it was measured here',
      ],
    ],
    ['measurements: { tank/length: ~ }', []],
    ['circuits: { pump: { load: ~ } }', []],
    ['parts: { tank: ~ }', []],
    ['parts: {}', []],
  ])('in a note, `%s`, is told as %j', (line, findings) => {
    expect(told(statedFront(line))).toEqual(findings)
  })
})
