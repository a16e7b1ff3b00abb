import { describe, expect, test } from 'vitest'
import { foldFacts } from '../../src/record/fold-facts.ts'
import { build, figure, fold, measured, part, type Said, said, session, subject, told, words } from './stated.ts'

const limit = (of: string | null, max: string, why: string | null): Said => ({
  type: 'limit',
  check: 'voltage-drop',
  of,
  min: null,
  max: figure(max),
  why: why === null ? null : words(why),
})
const requirement = (path: string, value: string): Said => ({ type: 'requirement', path, value: figure(value) })
const recordOf = (facts: Said[], noted: Said[] = []) =>
  fold([session('2026-03-07-a', noted)], { of: build(facts) }).record

describe('what build.md asks', () => {
  test('limits keep their reason, the later of two for one subject stands', () => {
    const { limits } = recordOf([
      limit('lighting', '2 percent', 'mine'),
      limit('lighting', '4 percent', null),
      limit(null, '5 percent', null),
    ])
    expect(limits.map(({ of, max, why }) => [of, max?.text, why])).toEqual([
      ['lighting', '4 percent', null],
      [null, '5 percent', null],
    ])
  })

  test.each([
    ['fuel-tank/length', 'part fuel-tank'],
    ['vehicle/wheelbase', 'vehicle vehicle'],
    ['pump/load', 'circuit pump'],
    ['circuit:pump/load', 'circuit pump'],
    ['winch/length', null],
    ['circuit:fuel-tank/load', null],
  ])('a requirement of %s is of %s', (path, expected) => {
    const noted = [part('fuel-tank'), said(subject('circuit', 'pump'), 'use', 'pump')]
    const [found] = recordOf([requirement(path, '10 mm')], noted).requirements
    expect(found?.subject == null ? null : `${found.subject.kind} ${found.subject.id}`).toBe(expected)
    expect(found?.property).toBe(path.split('/')[1])
  })

  test('askings keep all or their list, editions their order, `full` last where nobody wrote it', () => {
    const record = recordOf([
      { type: 'asking', check: 'voltage-drop', subjects: null },
      { type: 'edition', name: 'public', withhold: ['cost', 'place'] },
    ])
    expect(record.askings.map(({ check, subjects }) => [check, subjects])).toEqual([['voltage-drop', null]])
    expect(record.editions).toEqual([
      { name: 'public', withhold: ['cost', 'place'] },
      { name: 'full', withhold: [] },
    ])
    expect(recordOf([{ type: 'edition', name: 'full', withhold: [] }]).editions.length).toBe(1)
  })

  test('systems stand in the order of build.md, everything else by name', () => {
    const named = (kind: 'system' | 'loom', id: string): Said => said(subject(kind, id), 'name', id)
    const record = recordOf(
      [named('system', 'fuel'), named('system', 'body'), named('loom', 'tail'), named('loom', 'nose')],
      [part('seat'), part('axle')],
    )
    expect([record.systems, record.looms, record.parts].map(list => list.map(({ id }) => id))).toEqual([
      ['fuel', 'body'],
      ['nose', 'tail'],
      ['axle', 'seat'],
    ])
  })
})

describe('the inspection', () => {
  test('keeps its rule, its authority and its points with their evidence', () => {
    const heading = subject('build', 'inspection')
    const inspection = build([
      said(heading, 'rule', 'Individual approval'),
      said(heading, 'authority', 'the test station'),
      { type: 'inspection', id: 'brakes', ask: words('Two circuits?'), before: 'inspection', evidence: [] },
    ])
    const { record } = foldFacts(
      { build: build(), sessions: [], inspection: { ...inspection, build: null } },
      { photos: [], today: null, checks: [] },
    )
    expect([record.inspection.rule, record.inspection.authority?.text]).toEqual([
      'Individual approval',
      'the test station',
    ])
    expect(record.inspection.points.map(({ id, ask, before, evidence }) => [id, ask.text, before, evidence])).toEqual([
      ['brakes', 'Two circuits?', 'inspection', []],
    ])
    expect(recordOf([]).inspection).toEqual({ rule: null, ruleWords: null, authority: null, points: [] })
  })
})

describe('findings', () => {
  test('that a note was told already at that place are not told again', () => {
    const note = session('2026-03-07-a', [part('fuel-tank'), measured('fuel-tan/length', '10 mm')])
    const [found] = fold([note]).findings
    if (found === undefined) throw new Error('expected a near name')
    expect(told(fold([{ ...note, findings: [found] }]).findings)).toEqual([])
  })

  test('stand in the order of their files and lines', () => {
    const note = (name: string) =>
      session(name, [
        { type: 'closing' as const, of: 'job' as const, named: 'b' },
        { type: 'closing' as const, of: 'job' as const, named: 'a' },
      ])
    expect(
      fold([note('2026-03-08-b'), note('2026-03-07-a')]).findings.map(
        ({ file, line }) => `${file.split('/').at(-1)}:${line}`,
      ),
    ).toEqual(['2026-03-07-a.md:3', '2026-03-07-a.md:4', '2026-03-08-b.md:3', '2026-03-08-b.md:4'])
  })

  test('a volume one edit away from a part is a warning', () => {
    const volume = said(subject('volume', 'fuel-tan'), 'outside', null)
    expect(told(fold([session('2026-03-07-a', [part('fuel-tank'), volume])]).findings)).toEqual([
      'near-name 2026-03-07-a.md:4:3 Unexpected `fuel-tan`, expected the part `fuel-tank` or a name less like it | fuel-tank',
    ])
  })

  test('a note without the head of build.md is a fault of the program', () => {
    expect(() =>
      foldFacts(
        { build: { ...build(), build: null }, sessions: [], inspection: null },
        { photos: [], today: null, checks: [] },
      ),
    ).toThrow('Unexpected note without the head of build.md, expected `stateNote` to give one')
  })
})
