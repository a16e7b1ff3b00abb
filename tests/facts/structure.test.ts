import { describe, expect, test } from 'vitest'
import { statedFront, told } from './stated.ts'

const uses = '`lighting`, `pump`, `ignition`, `heating`, `charging`, `starting`, `signal` or `other`'
const actions =
  '`ordered`, `received`, `made`, `modified`, `trial-fitted`, `fitted`, `removed`, `rejected`, `returned`, `sold` or `scrapped`'

describe('the structure of front matter', () => {
  test.each([
    ['huors: 3', '4:1-6 unknown-key Unexpected key `huors`, expected `hours` → hours'],
    [
      'mood: good',
      '4:1-5 unknown-key Unexpected key `mood`, expected `title`, `date`, `by`, `hours`, `parts`, `spend`, `measurements`, `circuits`, `connectors`, `volumes`, `tests`, `temporary`, `clears` or `closes`',
    ],
    [
      'circuits:\n  fuel-pump:\n    laod: 7 A',
      '6:5-9 unknown-key Unexpected key `laod` in `circuit:fuel-pump`, expected `load` → load',
    ],
    [
      'circuits: { fuel-pump: { fuse: { ratin: 15 A } } }',
      '4:34-39 unknown-key Unexpected key `ratin` in `circuit:fuel-pump/fuse`, expected `rating` → rating',
    ],
    [
      'parts: { pump: { colr: red } }',
      '4:18-22 unknown-key Unexpected key `colr` in `pump`, expected `colour` → colour',
    ],
    [
      'parts: { pump: { mood: good } }',
      '4:18-22 unknown-key Unexpected key `mood` in `pump`, expected a key such as `name`, `kind` or `cost`, or a figure with its unit',
    ],
    ['parts: { pump: { cots: £12 } }', '4:18-22 unknown-key Unexpected key `cots` in `pump`, expected `cost` → cost'],
    ['parts: { pump: { qyt: 2 } }', '4:18-21 unknown-key Unexpected key `qyt` in `pump`, expected `qty` → qty'],
    [
      'tests: [ { what: lamps, resutl: pass, result: pass } ]',
      '4:25-31 unknown-key Unexpected key `resutl` in `tests/1`, expected `result` → result',
    ],
    [
      'circuits: { fuel-pump: { use: pumping } }',
      `4:31-38 unknown-value Unexpected \`pumping\` for \`circuit:fuel-pump/use\`, expected ${uses}`,
    ],
    [
      'circuits: { fuel-pump: { use: lightng } }',
      `4:31-38 unknown-value Unexpected \`lightng\` for \`circuit:fuel-pump/use\`, expected ${uses} → lighting`,
    ],
    [
      'circuits: { fuel-pump: { duty: always } }',
      '4:32-38 unknown-value Unexpected `always` for `circuit:fuel-pump/duty`, expected `continuous`, `intermittent`, `starting` or `standing`',
    ],
    [
      'circuits: { fuel-pump: { state: alive } }',
      '4:33-38 unknown-value Unexpected `alive` for `circuit:fuel-pump/state`, expected `planned`, `live`, `temporary` or `removed` → live',
    ],
    [
      'circuits: { fuel-pump: { supply: the battery } }',
      '4:34-45 unknown-value Unexpected `the battery` for `circuit:fuel-pump/supply`, expected `battery`, `ignition` or `accessory` or the name of a circuit',
    ],
    [
      'tests: [ { what: lamps, result: ok } ]',
      '4:33-35 unknown-value Unexpected `ok` for `tests/1/result`, expected `pass`, `fail` or `partial`',
    ],
    [
      'temporary: [ { what: clip, before: raod } ]',
      '4:36-40 unknown-value Unexpected `raod` for `temporary/1/before`, expected `road` or `inspection` → road',
    ],
    [
      'parts: { pump: { fits: maybe } }',
      '4:24-29 unknown-value Unexpected `maybe` for `pump/fits`, expected `yes`, `no` or `with-work`',
    ],
    [
      'parts: { pump: { action: fited } }',
      `4:26-31 unknown-action Unexpected \`fited\` for \`pump/action\`, expected ${actions} → fitted`,
    ],
    ['parts: pump', '4:8-12 front-matter Unexpected `pump` for `parts`, expected a mapping of names'],
    [
      'parts: { pump: fitted }',
      '4:16-22 front-matter Unexpected `fitted` for `pump`, expected a mapping such as `{ name: … }`',
    ],
    [
      'circuits: { fuel-pump: 7 A }',
      '4:24-27 front-matter Unexpected `7 A` for `circuit:fuel-pump`, expected a mapping with keys such as `name`, `feeds`',
    ],
    [
      'spend: { what: primer }',
      '4:8-24 front-matter Unexpected a mapping for `spend`, expected a list of mappings such as `- { what: … }`',
    ],
    [
      'temporary: [ { part: hose } ]',
      '4:14-28 front-matter Unexpected entry without `what`, expected `what:` with words → what: …',
    ],
    [
      'tests: [ { what: lamps } ]',
      '4:10-25 front-matter Unexpected entry without `result`, expected `result:` with words → result: …',
    ],
    ['parts: { pump: { name: [a, b] } }', '4:24-30 front-matter Unexpected a list for `pump/name`, expected words'],
    [
      'closes: { a: b }',
      '4:9-17 front-matter Unexpected a mapping for `closes`, expected a list such as `[first, second]`',
    ],
  ])('`%s` is told once', (front, finding) => {
    expect(told(statedFront(front))).toEqual([finding])
  })

  test.each([
    'parts: { pump: {} }',
    'parts: { pump: ~ }',
    'parts: { pump: { action: fitted, name: ~ } }',
    'circuits: { fuel-pump: { use: pump, duty: continuous, state: live, supply: ignition } }',
    'circuits: { fuel-pump: { supply: main-feed } }',
    'circuits: ~',
    'closes: seal-hatch',
    'temporary: [ { what: clip, before: road } ]',
    'spend: []',
  ])('`%s` is in order', front => {
    expect(told(statedFront(front))).toEqual([])
  })
})
