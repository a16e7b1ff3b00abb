import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { draftFromText } from '../../src/drafts/text-note.ts'
import { foldTexts } from '../record/read-texts.ts'
import { accepted, build, ground, head, note } from './ground.ts'

const draft = (text: string): string => draftFromText(text, head, ground())
const frontOf = (text: string): string[] => draft(text).split('\n---\n')[0]?.split('\n').slice(3) ?? []
const bodyOf = (text: string): string => draft(text).split('\n---\n').slice(1).join('\n---\n').trim()

const talk = `WEBVTT

1
00:00:01.000 --> 00:00:04.000
[00:12:31] Right. Fitted the new sump guard.

2
00:00:05.000 --> 00:00:09.000
The stainless tank is 720, no, sorry, 722 mm long. The sump guard is 3 mm thick.
Bought a radiator cap from the motor factors for £4.60. Paid £23 for primer.
Need to seal the hatch before it goes on the road. It rained at 12:30.
`

describe('a draft from spoken words', () => {
  test('keeps every word, proposes behind one sign, names what the record can name, and lists the jobs', () => {
    expect(draft(talk)).toBe(`---
title: "A draft"
date: 2026-03-14
## Delete the first # of a line to accept it; with its heading, such as parts.
#parts:
## “Fitted the new sump guard.”
#  sump-guard:
#    name: "sump guard"
#    action: fitted
## “Bought a radiator cap from the motor factors for £4.60.”
#  radiator-cap:
#    name: "radiator cap"
#    action: received
#    from: "motor factors"
#    cost: £4.60
#spend:
## “Paid £23 for primer.”
#  - { what: "primer", cost: £23 }
#measurements:
## “The sump guard is 3 mm thick.”
#  sump-guard:
#    thickness: 3 mm
---

Right. Fitted the new sump guard.

The stainless tank is 720, no, sorry, :measure[722 mm]{of="fuel-tank/length"} long. The sump guard is 3 mm thick.
Bought a radiator cap from the motor factors for £4.60. Paid £23 for primer.
Need to seal the hatch before it goes on the road. It rained at 12:30.

## Jobs that the words name

- [ ] seal the hatch before it goes on the road :job{#seal-the-hatch-before-it-goes-on-the-road before=road}
`)
  })

  test('decides nothing until a sign is taken away, and reads without a mistake when all are', () => {
    const texts = (text: string) => ({ build, sessions: { '2026-03-07-first.md': note, '2026-03-14-draft.md': text } })
    const asDrafted = foldTexts(texts(draft(talk)))
    expect({
      parts: asDrafted.record.parts.map(({ id }) => id),
      spend: asDrafted.record.ledger.total,
      findings: asDrafted.findings,
    }).toEqual({ parts: ['fuel-tank', 'radiator', 'rear-beam'], spend: '0.00', findings: [] })
    const { record, findings } = foldTexts(texts(accepted(draft(talk))))
    expect(findings).toEqual([])
    expect(record.parts.map(({ id, state }) => `${id} ${state}`)).toEqual([
      'fuel-tank fitted',
      'radiator fitted',
      'radiator-cap received',
      'rear-beam trial-fitted',
      'sump-guard fitted',
    ])
    expect(record.ledger.total).toBe('27.60')
    expect(record.measurements.map(({ path, quantity }) => `${path} ${quantity.text}`)).toEqual([
      'fuel-tank/length 722 mm',
      'sump-guard/thickness 3 mm',
    ])
    expect(record.jobs.map(({ id, before }) => `${id} ${before}`)).toEqual([
      'seal-the-hatch-before-it-goes-on-the-road road',
    ])
  })

  test.each([
    ['The stainless tank is 860 mm long.', 'The stainless tank is :measure[860 mm]{of="fuel-tank/length"} long.'],
    ['The rear beam weighs about 58 kg.', 'The rear beam weighs :measure[about 58 kg]{of="rear-beam/mass"}.'],
    ['The wheelbase is 2391 mm now.', 'The wheelbase is :measure[2391 mm]{of="vehicle/wheelbase"} now.'],
    ['The radiator is 30 mm thick. No, 32 mm.', 'The radiator is 30 mm thick. No, 32 mm.'],
    ['The radiator cap is 30 mm wide.', 'The radiator cap is 30 mm wide.'],
    ['The radiator hose by the rear beam is 30 mm long.', 'The radiator hose by the rear beam is 30 mm long.'],
    ['The radiator and the rear beam: 30 mm long.', 'The radiator and the rear beam: 30 mm long.'],
    ['The radiator is 300 mm wide and 400 mm high.', 'The radiator is 300 mm wide and 400 mm high.'],
    ['The *radiator* is 30 mm wide.', 'The *radiator* is 30 mm wide.'],
    ['The radiator holds 30 mm.', 'The radiator holds 30 mm.'],
  ])('of %j the body is %j: only what is sure is named in it', (text, body) => {
    expect(bodyOf(text)).toBe(body)
  })

  test.each([
    [
      'The sump guard is 410 mm wide.',
      ['#measurements:', '## “The sump guard is 410 mm wide.”', '#  sump-guard:', '#    width: 410 mm'],
    ],
    [
      'The guard is 410, make that 415 mm wide.',
      ['#measurements:', '## “The guard is 410, make that 415 mm wide.”', '#  guard:', '#    width: 415 mm'],
    ],
    [
      'The guard is 410 mm wide, sorry, 415 mm wide.',
      ['#measurements:', '## “The guard is 410 mm wide, sorry, 415 mm wide.”', '#  guard:', '#    width: 415 mm'],
    ],
    [
      'Sold the radiator for £45.',
      ['#parts:', '## “Sold the radiator for £45.”', '#  radiator:', '#    action: sold', '#    cost: £45'],
    ],
    [
      'I ordered two hose clips.',
      [
        '#parts:',
        '## “I ordered two hose clips.”',
        '#  hose-clips:',
        '#    name: "hose clips"',
        '#    action: ordered',
        '#    qty: 2',
      ],
    ],
    ['Did not fit the radiator, never fitted the guard.', []],
    ['Gloves, £3.50', ['#spend:', '## “Gloves, £3.50”', '#  - { what: "Gloves, £3.50", cost: £3.50 }']],
    [
      'The radiator is 30 mm thick. No, 32 mm.',
      ['#measurements:', '## “The radiator is 30 mm thick. … 32 mm”', '#  radiator:', '#    thickness: 32 mm'],
    ],
    [
      'The radiator is 30 mm thick. Actually the guard is 32 mm wide.',
      ['#measurements:', '## “Actually the guard is 32 mm wide.”', '#  guard:', '#    width: 32 mm'],
    ],
    ['It rained all day.', []],
  ])('of %j it proposes %j', (text, lines) => {
    expect(frontOf(text)).toEqual(
      lines.length === 0
        ? []
        : ['## Delete the first # of a line to accept it; with its heading, such as parts.', ...lines],
    )
  })

  test.each([
    ['[00:12:31] one (12:32) two', 'one two'],
    ['00:12:31 one', 'one'],
    ['00:12:31,500 - one', 'one'],
    ['7\n00:00:01,000 --> 00:00:02,000\none', 'one'],
    ['12:30 was lunch, 12:45 was tea', '12:30 was lunch, 12:45 was tea'],
    ['ratio 3:1 (see 4)', 'ratio 3:1 (see 4)'],
    ['7\nmen', '7\nmen'],
  ])('of the timings in %j the words %j are left', (text, words) => {
    expect(bodyOf(text)).toBe(words)
  })

  test('every word of the input stands in the body, in its order', () => {
    const word = fc.oneof(
      fc.constantFrom(
        'the',
        'radiator',
        'fitted',
        '860 mm',
        'long',
        '£4.60',
        'need',
        'to',
        'sorry',
        'no',
        'bought',
        'from',
        'wide',
        'weighs',
        '58 kg',
        '.',
        ',',
        '- [ ]',
        '#',
        '---',
        '`x`',
        ':private[a]',
        '12:30',
        '“q”',
      ),
      fc.string({ unit: 'grapheme', minLength: 1, maxLength: 6 }).map(text => text.replace(/\s/gu, '') || 'x'),
    )
    const timing = fc.constantFrom('[00:12:31] ', '(12:31) ', '')
    fc.assert(
      fc.property(
        fc.array(fc.tuple(timing, fc.array(word, { minLength: 1, maxLength: 8 })), { minLength: 1, maxLength: 6 }),
        lines => {
          const plain = lines.map(([, words]) => words.join(' ')).join('\n')
          const given = lines.map(([time, words]) => `${time}${words.join(' ')}`).join('\n')
          fc.pre(!/[[(]\d|-->|^\s*\d{1,2}:\d{2}:\d{2}/m.test(plain))
          const body = bodyOf(given).replace(/:measure\[([^\]]*)\]\{of="[^"]*"\}/g, '$1')
          expect(body.replace(/\s+/gu, ' ').startsWith(plain.replace(/\s+/gu, ' ').trim())).toBe(true)
        },
      ),
      { seed: 14, numRuns: 300 },
    )
  })

  test('a note of any words is read, its front matter with them', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.constantFrom(
            'Fitted the',
            'radiator',
            '"quoted"',
            '860 mm long',
            '£4',
            '#',
            ': ',
            '\\',
            '{',
            'Bought a',
            'from the shop',
            '.',
            'weighs 3 kg',
            '\n',
            '’',
            '- ',
          ),
          { minLength: 1, maxLength: 20 },
        ),
        words => {
          const text = words.join(' ')
          fc.pre(text.trim() !== '')
          const { findings } = foldTexts({
            build,
            sessions: { '2026-03-07-first.md': note, '2026-03-14-draft.md': accepted(draft(text)) },
          })
          expect(
            findings.filter(({ rule }) =>
              [
                'front-matter',
                'repeated-key',
                'flow-comma',
                'unknown-key',
                'unknown-action',
                'not-a-quantity',
              ].includes(rule),
            ),
          ).toEqual([])
        },
      ),
      { seed: 15, numRuns: 200 },
    )
  })

  test.each([
    ['', '`given.txt` holds no words, expected notes of a session.'],
    ['[00:01:02]\n', '`given.txt` holds no words, expected notes of a session.'],
    ['word '.repeat(60_000), '`given.txt` has 293 KB of words where a note may have 200 KB: split it into sessions.'],
  ])('refuses what is no note', (text, message) => {
    expect(() => draft(text)).toThrow(message)
  })
})
