import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/checker/check.ts'
import { loadChecks } from '../../src/checker/load-checks.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from './answer-to.ts'

// CHECKS has one word for an answer that lacks an input: missing. What fails already is said in its sentence.
const checks = new Map((await loadChecks('src/checks')).map(check => [check.id, check]))
const checkNamed = (id: string): Check => {
  const found = checks.get(id)
  if (found === undefined) throw new Error(`Unexpected \`${id}\`, expected a check`)
  return found
}

const pump: Given = {
  'circuit/load': '10 A ± 0 A',
  'circuit/use': 'pump',
  'circuit/length': '5 m ± 0 m',
  'circuit/cable.area': '1.5 mm²',
  'circuit/joints': '0 mΩ ± 0 mΩ',
  'build/nominal': '12 V',
  'build/ambient': '20 °C ± 0 °C',
}
const lamps: Given = {
  'relay/rating': '30 A',
  'circuit:lamps/load': '8 A ± 0 A',
  'circuit:lamps/use': 'lighting',
  'circuit:lamps/through': '[example]',
  'circuit:fan/use': 'pump',
  'circuit:fan/through': '[example]',
  'build/nominal': '12 V',
}
const box: Given = {
  'fuse-box/ways': '8',
  'fuse-box/main-fuse': '30 A',
  'circuit:lamps/load': '31 A ± 0 A',
  'circuit:lamps/fuse.box': 'example',
  'circuit:horn/fuse.box': 'example',
  'build/nominal': '12 V',
}
const rated: Given = {
  'circuit/load': '8 A ± 0 A',
  'circuit/fuse.rating': '40 A',
  'circuit/cable.area': '2.5 mm²',
  'circuit/cable.rating': '32 A',
  'build/nominal': '12 V',
  'build/ambient': '30 °C ± 0 °C',
}

describe('an answer that lacks an input is missing, and says so where what is known fails by itself', () => {
  test.each([
    {
      said: 'the return is not written, and the way there alone loses more than is allowed',
      check: 'voltage-drop',
      given: pump,
      says: 'Fails already, whatever is missing: with what is known 0.665 V against 0.36 V at most: over by 0.305 V. Not in the record: circuit:example/return.',
    },
    {
      said: 'the way there alone stays below the limit, so nothing can be told',
      check: 'voltage-drop',
      given: { ...pump, 'circuit/length': '2 m ± 0 m' },
      says: 'Not in the record: circuit:example/return.',
    },
    {
      said: 'at the limit nothing fails yet',
      check: 'voltage-drop',
      given: { ...pump, 'circuit/cable.area': '2.5 mm²', 'circuit/load': '9.0225563909774436 A ± 0 A' },
      says: 'Not in the record: circuit:example/return.',
    },
    {
      said: 'one load through a relay is not written, and the other is too much by itself',
      check: 'relay-load',
      given: lamps,
      says: 'Fails already, whatever is missing: with what is known 40 A against 30 A at most: over by 10 A. Not in the record: circuit:fan/load.',
    },
    {
      said: 'one load of a box is not written, and the other passes its main fuse by itself',
      check: 'fuse-box-total',
      aspect: 'main-fuse',
      given: box,
      says: 'Fails already, whatever is missing: with what is known 31 A against 30 A at most: over by 1 A. Not in the record: circuit:horn/load.',
    },
    {
      said: 'the insulation is not written, and the fuse is above what the maker rates the cable for',
      check: 'fuse-protects-cable',
      given: rated,
      says: 'Fails already, whatever is missing: with what is known 40 A against 32 A at most: over by 8 A. Not in the record: circuit:example/cable.insulation.',
    },
    {
      said: 'below 30 °C a cable may carry more than its maker’s figure, so nothing can be told',
      check: 'fuse-protects-cable',
      given: { ...rated, 'build/ambient': '20 °C ± 0 °C' },
      says: 'Not in the record: circuit:example/cable.insulation.',
    },
    {
      said: 'a section by the table says nothing of another insulation',
      check: 'fuse-protects-cable',
      given: { ...rated, 'circuit/cable.rating': '45 A' },
      says: 'Not in the record: circuit:example/cable.insulation.',
    },
    {
      said: 'a contact is wired wrongly, whatever the one that is not written carries',
      check: 'trailer-socket',
      given: {
        'trailer-socket/standard': 'ISO 1724',
        'connector/pins.1.carries': 'stop lamps',
        'connector/pins.1.wire.area': '1.5 mm²',
      },
      says: /^Fails already, whatever is missing: with what is known 1 found\. connector:example\/pins\.1 carries `stop lamps`, where the standard has: left direction indicator\. Not in the record: /,
    },
  ])('$check: $said', ({ check, aspect, given, says }) => {
    const verdict = answerTo(checkNamed(check), { given, ...(aspect === undefined ? {} : { aspect }) })
    expect(verdict.verdict).toBe('missing')
    expect(verdict.result).toBeNull()
    expect(verdict.working.says.replaceAll('\u202f', ' ')).toEqual(
      typeof says === 'string' ? says : expect.stringMatching(says),
    )
  })
})

test('the lines of the working show what is known', () => {
  const { working } = answerTo(checkNamed('voltage-drop'), { given: pump })
  expect(working.steps.at(-1)?.formula.text).toBe('I × (R_out + R_j)')
})
