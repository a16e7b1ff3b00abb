import { describe, expect, test } from 'vitest'
import { factsOf, properties, references, stated, told } from './stated.ts'

const points = (lines: string) => stated(`points:\n  brakes:\n${lines}\n`, 'content/inspection.yaml')

describe('inspection.yaml', () => {
  test('a point has its question, its evidence and what it holds up', () => {
    const note = stated(
      'rule: "Individual approval, passenger car"\npoints:\n  brakes:\n    ask: Does the brake act on all wheels?\n    evidence: [ part:master-cylinder, measurement:brake-pipe/clearance, session:2026-02-14-brakes, check:fuse-protects-cable, photo:brake-line.jpg, job:bleed-brakes, "test:service brake" ]\n    before: inspection\n',
      'content/inspection.yaml',
    )
    expect(told(note)).toEqual([])
    expect(note.session).toBeNull()
    expect(note.build).toBeNull()
    expect(properties(note)).toEqual(['build:inspection rule = Individual approval, passenger car'])
    expect(
      factsOf(note, 'inspection').map(({ id, ask, before, evidence }) => [
        id,
        ask.text,
        before,
        evidence.map(({ ref }) => ref),
      ]),
    ).toEqual([
      [
        'brakes',
        'Does the brake act on all wheels?',
        'inspection',
        [
          'part:master-cylinder',
          'measurement:brake-pipe/clearance',
          'session:2026-02-14-brakes',
          'check:fuse-protects-cable',
          'photo:brake-line.jpg',
          'job:bleed-brakes',
          'test:service brake',
        ],
      ],
    ])
    expect(references(note)).toEqual([
      'part master-cylinder (must-exist)',
      'measurement brake-pipe/clearance (must-exist)',
      'session 2026-02-14-brakes (must-exist)',
      'check fuse-protects-cable (must-exist)',
      'photo brake-line.jpg (must-exist)',
      'job bleed-brakes (must-exist)',
      'test service brake (must-exist)',
    ])
  })

  test.each([
    [
      '    ask: ok?\n    evidence: [ prat:pump ]',
      '4:17-26 unknown-value Unexpected `prat:pump` as evidence, expected a thing with its kind such as `part:master-cylinder`',
    ],
    [
      '    ask: ok?\n    evidence: [ the pump ]',
      '4:17-25 unknown-value Unexpected `the pump` as evidence, expected a thing with its kind such as `part:master-cylinder`',
    ],
    [
      '    ask: ok?\n    evidnce: [ part:pump ]',
      '4:5-12 unknown-key Unexpected key `evidnce` in `points/brakes`, expected `evidence` → evidence',
    ],
    [
      '    ask: ok?\n    before: noon',
      '4:13-17 unknown-value Unexpected `noon` for `points/brakes/before`, expected `road` or `inspection`',
    ],
  ])('`%s` is told once', (lines, finding) => {
    expect(told(points(lines))).toEqual([finding])
  })

  test('evidence that cannot be read stays, so that its point stays open', () => {
    expect(factsOf(points('    ask: ok?\n    evidence: [ prat:pump ]'), 'inspection')).toMatchObject([
      { evidence: [{ ref: 'prat:pump' }] },
    ])
  })
})
