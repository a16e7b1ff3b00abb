import { describe, expect, test } from 'vitest'
import {
  build,
  donor,
  figure,
  fold,
  job,
  measured,
  part,
  reference,
  said,
  session,
  subject,
  told,
  words,
} from './stated.ts'

const first = '2026-03-07-tank'
const pump = subject('circuit', 'fuel-pump')
const stalk = subject('connector', 'stalk-switch')

const of = build([
  donor('corvane', '650'),
  said(subject('system', 'fuel'), 'name', 'Fuel'),
  said(subject('loom', 'body-loom'), 'name', 'Body loom'),
  said(subject('build', 'electrical'), 'zones.engine-bay', figure('70 degC')),
])

const declared = [
  part('fuel-tank'),
  measured('fuel-tank/length', '860 mm'),
  part('aux-fuses'),
  said(subject('part', 'aux-fuses'), 'kind', 'fuse-box'),
  said(pump, 'load', figure('7 A')),
  said(pump, 'earth', 'left-rear'),
  said(stalk, 'pins.31b.carries', 'earth'),
  job('seal the hatch', { id: 'seal-hatch', explicit: true }),
  { type: 'test' as const, what: words('side lamps, left'), result: 'pass' as const, note: null },
]

const toldOf = (fact: ReturnType<typeof reference>): string[] =>
  told(
    fold([session(first, declared), session('2026-03-14-b', [fact])], { of, photos: ['content/photos/tank.jpg'] })
      .findings,
  )

describe('a reference leads somewhere', () => {
  test.each([
    ['part', 'fuel-tank'],
    ['circuit', 'fuel-pump'],
    ['connector', 'stalk-switch'],
    ['loom', 'body-loom'],
    ['donor', 'corvane'],
    ['system', 'fuel'],
    ['earth-point', 'left-rear'],
    ['zone', 'engine-bay'],
    ['fuse-box', 'aux-fuses'],
    ['measurement', 'fuel-tank/length'],
    ['path', 'circuit:fuel-pump/load'],
    ['path', 'stalk-switch/31b'],
    ['session', first],
    ['session', '2026-03-14'],
    ['job', 'seal-hatch'],
    ['job', 'seal the hatch'],
    ['check', 'voltage-drop/fuel-pump'],
    ['test', 'Side lamps, left'],
    ['photo', 'photos/tank.jpg'],
    ['photo', 'tank.jpg'],
    ['note', 'content/sessions/2026-03-14-b.md'],
    ['note', '2026-03-07-tank.md'],
  ] as const)('%s `%s`', (to, name) => {
    expect(toldOf(reference(to, name))).toEqual([])
  })

  test.each([
    ['part', 'fuel-tnak', 'the name of a part | fuel-tank'],
    ['part', 'winch', 'the name of a part'],
    ['part', 'fuel-pump', 'the name of a part'],
    ['circuit', 'fuel-pumps', 'the name of a circuit | fuel-pump'],
    ['connector', 'column', 'the name of a connector'],
    ['loom', 'body-lom', 'the name of a loom | body-loom'],
    ['donor', 'halvern', 'the name of a donor'],
    ['system', 'fule', 'the name of a system | fuel'],
    ['earth-point', 'right-rear', 'the name of an earth point'],
    ['zone', 'engine-bays', 'the name of a zone in build.md | engine-bay'],
    ['fuse-box', 'fuel-tank', 'the name of a part of kind `fuse-box`'],
    ['measurement', 'fuel-tank/width', 'the path of a measurement'],
    ['measurement', 'fuel-tank/lenght', 'the path of a measurement | fuel-tank/length'],
    ['path', 'stalk-switch/31', 'the path of a property | stalk-switch/31b'],
    ['session', '2026-03-08', 'the name of a session, or a date that one session has'],
    ['job', 'seal-hach', 'the name of a job | seal-hatch'],
    ['check', 'voltage-drops', 'the name of a check | voltage-drop'],
    ['test', 'rear lamps', 'the words of a test'],
    ['photo', 'photos/tanks.jpg', 'a picture under `content/` | photos/tank.jpg'],
    ['note', 'sessions/none.md', 'the file of a note'],
  ] as const)('%s `%s` does not: expected %s', (to, name, expected) => {
    expect(toldOf(reference(to, name))).toEqual([
      `unknown-target 2026-03-14-b.md:3:11 Unexpected \`${name}\`, expected ${expected}`,
    ])
  })

  test('a date that two sessions have names neither', () => {
    const notes = [session('2026-03-07-a', []), session('2026-03-07-b', [reference('session', '2026-03-07')])]
    expect(fold(notes).findings.map(({ rule }) => rule)).toEqual(['unknown-target'])
  })

  test('a name that a later note declares is known', () => {
    expect(
      told(fold([session(first, [reference('part', 'winch')]), session('2026-03-14-b', [part('winch')])]).findings),
    ).toEqual([])
  })
})

describe('a name that may be free words', () => {
  test.each([
    ['donor', 'corvan', 'Unexpected `corvan`, expected the donor `corvane` or a name less like it | corvane'],
    ['part', 'fuel-tanks', 'Unexpected `fuel-tanks`, expected the part `fuel-tank` or a name less like it | fuel-tank'],
  ] as const)('%s `%s` is warned of where it is near', (to, name, expected) => {
    expect(toldOf(reference(to, name, 'near-only'))).toEqual([`near-name 2026-03-14-b.md:3:11 ${expected}`])
  })

  test.each([
    ['donor', 'sheet-metal shop'],
    ['donor', 'corvane'],
    ['part', 'lift-pump'],
  ] as const)('%s `%s` is not', (to, name) => {
    expect(toldOf(reference(to, name, 'near-only'))).toEqual([])
  })

  test('a loom that a circuit names is declared by that, and warned of where it is near to one before it', () => {
    const lamps = subject('circuit', 'side-lamps')
    const notes = [
      session(first, [...declared, said(lamps, 'loom', 'body-lom'), reference('loom', 'body-lom', 'near-only')]),
    ]
    const { record, findings } = fold(notes, { of })
    expect(record.looms.map(({ id }) => id)).toEqual(['body-lom', 'body-loom'])
    expect(told(findings)).toEqual([
      'near-name 2026-03-07-tank.md:13:11 Unexpected `body-lom`, expected the loom `body-loom` or a name less like it | body-loom',
    ])
  })

  test.each([
    ['head lamp, left', []],
    ['light-switch/2', []],
    ['stalk-switch/31b', []],
    [
      'stalk-switch/7',
      [
        'unknown-target 2026-03-07-tank.md:12:11 Unexpected `stalk-switch/7`, expected a property or a pin that `stalk-switch` has',
      ],
    ],
  ])('the far end of a pin, `%s`, is looked up only where its thing is declared', (end, expected) => {
    const notes = [session(first, [...declared, said(subject('connector', 'loom-half'), 'pins.1.to', end)])]
    expect(told(fold(notes, { of }).findings)).toEqual(expected)
  })
})

describe('a date', () => {
  test('after today is a warning at the date, today is not', () => {
    const notes = [session('2026-03-07-a', []), session('2026-03-08-b', [])]
    expect(told(fold(notes, { today: '2026-03-07' }).findings)).toEqual([
      'future-date 2026-03-08-b.md:2:7 Unexpected date `2026-03-08`, expected no later one than today, 2026-03-07',
    ])
    expect(fold(notes).findings).toEqual([])
  })
})
