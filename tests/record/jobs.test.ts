import { describe, expect, test } from 'vitest'
import { fold, job, type Said, session, told, words } from './stated.ts'

const dates = ['2026-01-10', '2026-01-17', '2026-01-24', '2026-01-31']
const sessionsOf = (notes: readonly Said[][]) => notes.map((facts, at) => session(`${dates[at]}-note`, facts))

const open = (text: string, id?: string): Said => job(text, id === undefined ? {} : { id, explicit: true })
const done = (text: string, id?: string): Said =>
  job(text, { done: true, ...(id === undefined ? {} : { id, explicit: true }) })
const closes = (named: string): Said => ({ type: 'closing', of: 'job', named })
const clears = (named: string): Said => ({ type: 'closing', of: 'temporary', named })
const fix = (id: string, what: string): Said => ({
  type: 'temporary',
  id,
  what: words(what),
  part: null,
  until: null,
  before: 'road',
})

/** `id open|closed turns`, such as `seal-hatch closed +1 -2`: opened in the first session, closed in the second. */
const jobsAfter = (...notes: Said[][]): string[] =>
  fold(sessionsOf(notes)).record.jobs.map(({ id, open, turns }) => {
    const moves = turns.map(turn => `${turn.open ? '+' : '-'}${dates.indexOf(turn.session?.slice(0, 10) ?? '') + 1}`)
    return `${id} ${open ? 'open' : 'closed'} ${moves.join(' ')}`
  })

describe('a job', () => {
  test.each([
    ['is open once it is written', [[open('seal the hatch')]], ['seal-the-hatch open +1']],
    ['that is ticked where it is first written was done', [[done('seal the hatch')]], ['seal-the-hatch closed -1']],
    [
      'closes when a later note ticks the same words',
      [[open('seal the hatch')], [done('Seal  the hatch.')]],
      ['seal-the-hatch closed +1 -2'],
    ],
    [
      'closes by the same identifier in other words',
      [[open('seal the hatch', 'hatch')], [done('hatch is tight', 'hatch')]],
      ['hatch closed +1 -2'],
    ],
    [
      'closes by the same words without its identifier',
      [[open('seal the hatch', 'hatch')], [done('seal the hatch')]],
      ['hatch closed +1 -2'],
    ],
    [
      'closes by `closes:` and its identifier',
      [[open('seal the hatch', 'hatch')], [closes('hatch')]],
      ['hatch closed +1 -2'],
    ],
    [
      'closes by `closes:` and its words',
      [[open('seal the hatch', 'hatch')], [closes('seal the hatch')]],
      ['hatch closed +1 -2'],
    ],
    [
      'repeated while it is open is the same job',
      [[open('seal the hatch')], [open('seal the hatch')]],
      ['seal-the-hatch open +1'],
    ],
    [
      'repeated when it is closed opens again',
      [[open('seal the hatch')], [done('seal the hatch')], [open('seal the hatch')]],
      ['seal-the-hatch open +1 -2 +3'],
    ],
    [
      'ticked twice closes once',
      [[open('seal the hatch')], [done('seal the hatch')], [done('seal the hatch')]],
      ['seal-the-hatch closed +1 -2'],
    ],
    [
      'written twice in one note is two',
      [[open('check the brake'), job('check the brake', { id: 'check-the-brake-2' })], [done('check the brake')]],
      ['check-the-brake closed +1 -2', 'check-the-brake-2 open +1'],
    ],
    [
      'in other words is another',
      [[open('seal the hatch')], [done('seal the bonnet')]],
      ['seal-the-hatch open +1', 'seal-the-bonnet closed -2'],
    ],
  ])('%s', (_, notes, expected) => {
    expect(jobsAfter(...notes)).toEqual(expected)
  })

  test('keeps what it holds up where a repeat does not say, and leads to where it was first written', () => {
    const { record } = fold(
      sessionsOf([[job('seal the hatch', { before: 'road' })], [open('seal the hatch')], [done('seal the hatch')]]),
    )
    const [hatch] = record.jobs
    expect([hatch?.before, hatch?.session, hatch?.closed?.session]).toEqual([
      'road',
      '2026-01-10-note',
      '2026-01-24-note',
    ])
  })
})

describe('a temporary fix', () => {
  test('is open until a later note clears it, by identifier or by the same words', () => {
    const { record, findings } = fold(
      sessionsOf([
        [fix('clip', 'borrowed clip'), fix('lens', 'taped lens'), fix('rope', 'rope on the door')],
        [clears('clip'), clears('taped lens')],
      ]),
    )
    expect(record.temporary.map(({ id, open, cleared, before }) => [id, open, cleared?.place.line, before])).toEqual([
      ['clip', false, 3, 'road'],
      ['lens', false, 4, 'road'],
      ['rope', true, undefined, 'road'],
    ])
    expect(findings).toEqual([])
  })
})

describe('`closes:` and `clears:` that name nothing open', () => {
  test.each([
    [
      'a slip of the pen',
      [[open('seal the hatch', 'seal-hatch')], [closes('seal-hach')]],
      'no-closing 2026-01-17-note.md:3:11 Unexpected `seal-hach` under `closes:`, expected a job that is open | seal-hatch',
    ],
    [
      'what nobody wrote',
      [[clears('taped-lens')]],
      'no-closing 2026-01-10-note.md:3:11 Unexpected `taped-lens` under `clears:`, expected a temporary fix that is open',
    ],
    [
      'what was closed before',
      [[open('seal the hatch', 'seal-hatch')], [closes('seal-hatch')], [closes('seal-hatch')]],
      'no-closing 2026-01-24-note.md:3:11 Unexpected `seal-hatch` under `closes:`, expected a job that is open',
    ],
    [
      'a fix under `closes:`',
      [[fix('clip', 'borrowed clip')], [closes('clip')]],
      'no-closing 2026-01-17-note.md:3:11 Unexpected `clip` under `closes:`, expected a job that is open',
    ],
  ])('%s is a note', (_, notes, expected) => {
    expect(told(fold(sessionsOf(notes)).findings)).toEqual([expected])
  })

  test('leads to where it was closed', () => {
    const { findings } = fold(sessionsOf([[open('seal the hatch', 'hatch')], [closes('hatch')], [closes('hatch')]]))
    expect(findings[0]?.related.map(({ file, line, message }) => `${file}:${line} ${message}`)).toEqual([
      'content/sessions/2026-01-17-note.md:3 It was closed here',
    ])
  })
})
