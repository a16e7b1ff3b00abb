import { describe, expect, test } from 'vitest'
import { figure, fold, measured, part, said, session, subject, told } from './stated.ts'

const first = '2026-03-07-a'
const second = '2026-03-14-b'

/** What is said of the second of two values of one property of a declared part. */
function twice(before: string, after: string, of = 'fuel-tank/length'): string[] {
  const notes = [
    session(first, [part(of.split('/')[0] ?? ''), measured(of, before)]),
    session(second, [measured(of, after)]),
  ]
  return told(fold(notes).findings)
}

describe('the same property measured again', () => {
  test.each([
    ['860 mm ± 2', '864 mm ± 2', 'the sum of both tolerances, and no more'],
    ['860 mm', '861 mm', 'half of each last digit'],
    ['860 mm', '86 cm', 'the same in another unit'],
    ['33.9 in', '860 mm', 'the same in inches, NIST SP 811: 1 in is 25.4 mm'],
    ['about 60 L', '63.0 L', 'five per cent of about 60 L, and half of the last digit'],
    ['at least 200 mm', '230 mm', 'within the bound'],
    ['at most 240 mm', '230 mm', 'within the bound'],
    ['at least 200 mm', 'at least 300 mm', 'two bounds that meet'],
    ['20 degC', '68 degF', 'the same by both scales'],
  ])('%s and then %s agree: %s', (before, after) => {
    expect(twice(before, after)).toEqual([])
  })

  test.each([
    ['860 mm ± 2', '865 mm ± 2', 'the difference of 5 mm is more than both tolerances'],
    ['860 mm', '862 mm', 'the difference of 2 mm is more than both tolerances'],
    ['860 mm', '34.5 in', 'the difference of 0.6417 in is more than both tolerances'],
    ['20 degC', '70 degF', 'the difference of 2 °F is more than both tolerances'],
    ['about 60 L', '63.4 L', 'the difference of 3.4 L is more than both tolerances'],
    ['4.30', '4.11', 'the difference of 0.19 is more than both tolerances'],
  ])('%s and then %s disagree', (before, after, because) => {
    expect(twice(before, after)).toEqual([
      `agreement 2026-03-14-b.md:3:11 Unexpected \`${after}\`, expected \`${before}\` as it was measured before: ${because} | length: { value: ${after}, supersedes: true }`,
    ])
  })

  test('a value beside a bound that it breaks disagrees without a difference', () => {
    expect(twice('at least 200 mm', '190 mm')).toEqual([
      'agreement 2026-03-14-b.md:3:11 Unexpected `190 mm`, expected `at least 200 mm` as it was measured before | length: { value: 190 mm, supersedes: true }',
    ])
  })

  test('the finding leads to the earlier value and names the path', () => {
    const { findings } = fold([
      session(first, [measured('fuel-tank/length', '860 mm')]),
      session(second, [measured('fuel-tank/length', '870 mm')]),
    ])
    expect(
      findings.map(({ about, related }) => [
        about,
        related.map(({ file, line, message }) => `${file}:${line} ${message}`),
      ]),
    ).toEqual([[['fuel-tank/length'], ['content/sessions/2026-03-07-a.md:3 It was `860 mm` here']]])
  })

  test('twice in one note that disagree are told, and neither is superseded', () => {
    const { record, findings } = fold([
      session(first, [measured('fuel-tank/length', '860 mm'), measured('fuel-tank/length', '870 mm')]),
    ])
    expect(findings.map(({ rule }) => rule)).toEqual(['agreement'])
    expect(record.measurements.map(({ superseded }) => superseded)).toEqual([false, false])
  })

  test.each([
    [
      'the part was modified in that note',
      [part('fuel-tank', { action: 'modified' }), measured('fuel-tank/length', '900 mm')],
    ],
    ['the part was made in that note', [part('fuel-tank', { action: 'made' }), measured('fuel-tank/length', '900 mm')]],
    [
      'the part took the place of another',
      [part('fuel-tank', { replaces: 'old-tank' }), measured('fuel-tank/length', '900 mm')],
    ],
    ['another took its place', [part('long-tank', { replaces: 'fuel-tank' }), measured('fuel-tank/length', '900 mm')]],
    ['the value says that it supersedes', [measured('fuel-tank/length', '900 mm', { supersedes: true })]],
  ])('nothing is told where %s', (_, later) => {
    expect(
      told(
        fold([session(first, [part('fuel-tank'), measured('fuel-tank/length', '860 mm')]), session(second, later)])
          .findings,
      ),
    ).toEqual([])
  })

  test.each([
    ['fitted', [part('fuel-tank', { action: 'fitted' }), measured('fuel-tank/length', '900 mm')]],
    ['modified in another note only', [measured('fuel-tank/length', '900 mm')]],
  ])('it is told where the part was %s', (_, later) => {
    const notes = [
      session(first, [part('fuel-tank', { action: 'modified' }), measured('fuel-tank/length', '860 mm')]),
      session(second, later),
    ]
    expect(fold(notes).findings.map(({ rule }) => rule)).toEqual(['agreement'])
  })

  test('a statement of a circuit replaces silently', () => {
    const pump = subject('circuit', 'fuel-pump')
    const { findings, record } = fold([
      session(first, [said(pump, 'load', figure('7 A'))]),
      session(second, [said(pump, 'load', figure('9 A'))]),
    ])
    expect(findings).toEqual([])
    expect(record.circuits[0]?.properties.load?.length).toBe(2)
    expect(record.measurements).toEqual([])
  })
})

// The factors are those of NIST SP 811, appendix B.8, to four digits: in 25.4 mm, gal (US) 3.785 L, gal (imperial) 4.546 L, lb 0.4536 kg, mile 1.609 km.
describe('a slipped unit', () => {
  test.each([
    ['860 mm', '86 mm', '1/10 of', 'a decimal place', 'fuel-tank/length'],
    ['8.60 m', '860 m', '100 times', 'two decimal places', 'fuel-tank/length'],
    ['860 mm', '860 m', '1000 times', 'three decimal places', 'fuel-tank/length'],
    ['860 mm', '33.9 mm', '1/25.4 of', 'inches for millimetres', 'fuel-tank/length'],
    ['33.9 mm', '860 mm', '25.4 times', 'inches for millimetres', 'fuel-tank/length'],
    ['64.0 L', '16.9 L', '1/3.785 of', 'US gallons for litres', 'fuel-tank/filled-volume'],
    ['64.0 L', '14.1 L', '1/4.546 of', 'imperial gallons for litres', 'fuel-tank/filled-volume'],
    ['25.0 kg', '11.3 kg', '1/2.205 of', 'pounds for kilograms', 'fuel-tank/mass'],
    ['11.3 kg', '25.0 kg', '2.205 times', 'pounds for kilograms', 'fuel-tank/mass'],
    ['50.0 km_h', '80.5 km_h', '1.609 times', 'miles for kilometres', 'dial/true-speed'],
  ])('%s and then %s is %s that, %s', (before, after, times, factor, path) => {
    expect(twice(before, after, path)).toEqual([
      `unit-slip 2026-03-14-b.md:3:11 Unexpected \`${after}\`, expected about \`${before}\` as it was measured before: it is ${times} that, the factor of ${factor}`,
    ])
  })

  test.each([
    ['860 mm', '35.9 mm', 'fuel-tank/length'],
    ['64.0 L', '2.52 L', 'fuel-tank/filled-volume'],
    ['25.0 kg', '6.60 kg', 'fuel-tank/mass'],
    ['0 mm', '3 mm', 'fuel-tank/length'],
    ['20.0 degC', '200.0 degC', 'fuel-tank/rest'],
  ])('%s and then %s is no slip, but no agreement either', (before, after, path) => {
    expect(twice(before, after, path).map(text => text.split(' ')[0])).toEqual(['agreement'])
  })
})

describe('a value of another dimension', () => {
  test('than those before it is told, once, with the place of the one before', () => {
    expect(twice('860 mm', '64 L', 'roof/height-over-all')).toEqual([
      'dimension 2026-03-14-b.md:3:11 Unexpected `64 L`, expected a length such as `860 mm` for roof/height-over-all, which was `860 mm` before',
    ])
  })

  test('than its kind has is told, though another note says the kind', () => {
    const { findings } = fold([
      session(first, [measured('pump-relay/rating', '10 kg')]),
      session(second, [part('pump-relay'), said(subject('part', 'pump-relay'), 'kind', 'relay')]),
    ])
    expect(told(findings)).toEqual([
      'dimension 2026-03-07-a.md:3:11 Unexpected `10 kg`, expected a current such as `7 A` for the rating of a relay',
    ])
  })

  test('a load may be given in amperes and in watts', () => {
    const pump = subject('circuit', 'fuel-pump')
    expect(
      fold([session(first, [said(pump, 'load', figure('7 A')), said(pump, 'load', figure('84 W'))])]).findings,
    ).toEqual([])
  })
})

describe('a name that may be free', () => {
  const declared = [part('fuel-tank'), part('strap-1'), part('lamp-l')]
  const later = (path: string): string[] =>
    told(fold([session(first, declared), session(second, [measured(path, '10 mm')])]).findings)

  test('one edit away from a declared one is a warning at the name', () => {
    expect(later('fuel-tan/length')).toEqual([
      'near-name 2026-03-14-b.md:3:3 Unexpected `fuel-tan`, expected the part `fuel-tank` or a name less like it | fuel-tank',
    ])
  })

  test.each(['fuel-tank/length', 'fuel-pump/length', 'strap-2/length', 'lamp-r/length'])('%s is not near', path => {
    expect(later(path)).toEqual([])
  })

  test('a property one edit away from one that was used before is a warning', () => {
    const { findings } = fold([
      session(first, [...declared, measured('fuel-tank/neck-gap', '8 mm')]),
      session(second, [measured('fuel-tank/neck-gab', '8 mm')]),
    ])
    expect(told(findings)).toEqual([
      'near-name 2026-03-14-b.md:3:3 Unexpected property `neck-gab` of `fuel-tank`, expected `neck-gap` as before or a name less like it | neck-gap',
    ])
  })
})
