import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { whatIf, whatIfEach } from '../../src/checker/circuit-choices.ts'
import { loadChecks } from '../../src/checker/load-checks.ts'
import { runChecks } from '../../src/checker/run-checks.ts'
import type { AsBuiltRecord, Thing } from '../../src/record/record.ts'
import { type Given, makeRecord } from './record-maker.ts'

const checks = await loadChecks(join(import.meta.dirname, '../../src/checks'))

const given: Given = {
  'circuit/load': '7 A',
  'circuit/use': 'pump',
  'circuit/duty': 'continuous',
  'circuit/length': '4.8 m',
  'circuit/cable.area': '2.5 mm²',
  'circuit/cable.insulation': '105 °C',
  'circuit/return': 'chassis',
  'circuit/joints': '6 mΩ',
  'circuit/fuse.rating': '15 A',
  'build/nominal': '12 V',
  'build/ambient': '30 °C',
}

const circuitOf = (record: AsBuiltRecord): Thing => {
  const [circuit] = record.circuits
  if (circuit === undefined) throw new Error('Unexpected record without a circuit')
  return circuit
}

const choicesOf = (of: Given) => {
  const record = makeRecord(of)
  return whatIf(record, checks, circuitOf(record))
}

describe('what if a circuit had another size', () => {
  test('one size down, the one fitted and two up are asked, of cable and fuse', () => {
    expect(choicesOf(given).map(({ what, said, isFitted }) => `${what} ${said}${isFitted ? ', fitted' : ''}`)).toEqual([
      'cable 1.5 mm²',
      'cable 2.5 mm², fitted',
      'cable 4 mm²',
      'cable 6 mm²',
      'fuse 10 A',
      'fuse 15 A, fitted',
      'fuse 20 A',
      'fuse 25 A',
    ])
  })

  // The same checks run on a record in which the size itself was written otherwise: the two ways must agree.
  test.each<[string, string, string]>([
    ['cable 1.5 mm²', 'circuit/cable.area', '1.5 mm²'],
    ['cable 2.5 mm²', 'circuit/cable.area', '2.5 mm²'],
    ['cable 6 mm²', 'circuit/cable.area', '6 mm²'],
    ['fuse 10 A', 'circuit/fuse.rating', '10 A'],
    ['fuse 25 A', 'circuit/fuse.rating', '25 A'],
  ])('%s answers as a record that says so', (name, path, text) => {
    const found = choicesOf(given).find(({ what, said }) => `${what} ${said}` === name)
    const written = runChecks(
      makeRecord({ ...given, [path]: text }),
      checks.filter(({ subject }) => subject.kind === 'circuit'),
    )
    const plain = written.map(({ check, aspect, verdict, result, limit }) => ({
      check,
      aspect,
      verdict,
      result,
      limit,
    }))
    expect(plain.length).toBeGreaterThan(2)
    expect(found?.answers).toEqual(plain)
  })

  test('another cable has not the rating that the maker gave the fitted one', () => {
    const record = (area: string, rating: Given) => makeRecord({ ...given, 'circuit/cable.area': area, ...rating })
    const fitted = record('2.5 mm²', { 'circuit/cable.rating': '50 A' })
    const limitOf = (answers: readonly { check: string; limit: { max: number | null } | null }[]) =>
      answers.find(({ check }) => check === 'cable-rating')?.limit?.max
    const choices = whatIf(fitted, checks, circuitOf(fitted))
    const plain = runChecks(
      record('4 mm²', {}),
      checks.filter(({ id }) => id === 'cable-rating'),
    )
    expect(limitOf(choices.find(({ said }) => said === '4 mm²')?.answers ?? [])).toBe(plain[0]?.limit?.max)
    expect(limitOf(choices.find(({ isFitted }) => isFitted)?.answers ?? [])).toBeCloseTo(50, 9)
  })

  test('a return by a wire of its own changes with the cable', () => {
    const back = {
      ...given,
      'circuit/return': 'cable',
      'circuit/return.area': '2.5 mm²',
      'circuit/return.length': '4.8 m',
    }
    const drop = (of: Given, said: string) =>
      choicesOf(of)
        .find(choice => choice.said === said)
        ?.answers.find(({ check }) => check === 'voltage-drop')?.result?.value ?? 0
    expect(drop(back, '6 mm²')).toBeLessThan(drop(back, '2.5 mm²') / 2)
  })

  test('what the checks found already is taken over, and changes nothing', () => {
    const record = makeRecord({ ...given, 'circuit:lamp/load': '5 A', 'circuit:lamp/cable.area': '1 mm²' })
    const found = runChecks(record, checks)
    const [over, anew] = [whatIfEach(record, checks, found), whatIfEach(record, checks, [])]
    expect([...over]).toEqual([...anew])
    expect([...over.keys()]).toEqual(record.circuits.map(({ id }) => id))
  })

  test('nothing is offered where neither size is written', () => {
    expect(choicesOf({ 'circuit/load': '7 A' })).toEqual([])
  })
})
