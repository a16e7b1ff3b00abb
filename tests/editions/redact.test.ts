import { describe, expect, test } from 'vitest'
import { publicationOf } from '../../src/build.ts'
import type { Publication } from '../../src/editions/publication.ts'
import { redact } from '../../src/editions/redact.ts'
import { requireNothingWithheld, WithheldLeft } from '../../src/editions/require-nothing-withheld.ts'
import { withheldBy } from '../../src/editions/withheld.ts'
import { recordJson } from '../../src/exports/record-json.ts'
import type { AsBuiltRecord } from '../../src/record/record.ts'
import { readBuild } from './published-bytes.ts'

const buildNote = `---
title: Small build
currency: GBP
electrical: { nominal: 12 V, ambient: 30 °C }
donors: { old-car: { name: "Corvane 1600 hatchback", cost: £480 }, old-van: { cost: £20 } }
requirements: { shaft/length: at most 600 mm }
editions:
  place: { withhold: [place] }
  source: { withhold: [source] }
  cost: { withhold: [cost] }
---
What it is.
`

async function published(
  edition: string,
  body: string,
  more: Readonly<Record<string, string>> = {},
): Promise<Publication> {
  const built = await readBuild({
    'content/build.md': buildNote,
    'content/sessions/2026-03-07-first.md': `---\ntitle: First\ndate: 2026-03-07\n---\n${body}\n`,
    ...more,
  })
  return publicationOf(built, edition)
}

const answers = ({ verdicts }: Publication) =>
  verdicts
    .filter(({ check }) => check === 'requirement')
    .map(({ verdict, working }) => [verdict, working.says.split(':')[0]])

describe('the verdicts of an edition', () => {
  const measured = 'The shaft is :measure[590 mm]{of="shaft/length"} long.'

  test('are those of the whole record where nothing withheld has to do with them', async () => {
    const { verdicts } = await published('full', measured)
    expect((await published('place', measured)).verdicts.map(({ verdict }) => verdict)).toEqual(
      verdicts.map(({ verdict }) => verdict),
    )
  })

  test('are not told where they would come out otherwise: a check never passes for want of a withheld figure', async () => {
    const hidden = ':private[:measure[612 mm]{of="shaft/length"}]{as=place}'
    const later = {
      'content/sessions/2026-03-14-second.md': `---\ntitle: Second\ndate: 2026-03-14\n---\nNow ${hidden}.\n`,
    }
    expect(answers(await published('full', measured, later)).map(([verdict]) => verdict)).toEqual(['fail'])
    expect(answers(await published('place', measured, later))).toEqual([['missing', 'Not told in this edition']])
  })
})

describe('the findings of an edition', () => {
  test('quote nothing of a note: the rule and the line are told', async () => {
    const { findings } = await published('place', 'A gauge of 12,5 mm here.')
    expect(findings.map(({ rule, line, column, message, mend }) => ({ rule, line, column, message, mend }))).toEqual([
      {
        rule: 'decimal-mark',
        line: 5,
        column: 1,
        message: 'The decimal mark is not the one that build.md names, so nothing is read.',
        mend: null,
      },
    ])
  })

  test('say nothing of a line with something withheld in it', async () => {
    expect((await published('place', ':private[there]{as=place} a gauge of 12,5 mm.')).findings).toEqual([])
  })

  test('are told whole in the full edition', async () => {
    const { findings } = await published('full', 'A gauge of 12,5 mm here.')
    expect(findings[0]?.message).toContain('12,5 mm')
  })
})

describe('the ledger of an edition', () => {
  test('has one line for all donors where sources are withheld, and the right sum', async () => {
    const { record } = await published('source', 'Words.')
    expect([record.ledger.donors, record.ledger.total]).toEqual(['500.00', '500.00'])
    expect(record.donors.map(({ id, name }) => [id, name])).toEqual([['withheld', '[withheld]']])
    expect(record.ledger.lines.map(({ what, amount }) => [what, amount])).toEqual([['[withheld]', '500.00']])
  })

  test('has no line, no rate and no sum where cost is withheld', async () => {
    const { record } = await published('cost', 'It cost £7001.')
    expect([record.ledger.lines, record.spend, record.build.rates, record.ledger.total]).toEqual([[], [], {}, '0.00'])
    expect(record.sessions[0]?.figures).toEqual([])
  })
})

describe('figures', () => {
  test('keep their numbers in every edition, so that links from outside hold', async () => {
    const body = ':private[431 mm]{as=place} and 512 mm.'
    const ids = async (edition: string) =>
      (await published(edition, body)).record.sessions[0]?.figures.map(({ id, quantity }) => [id, quantity.text])
    expect(await ids('full')).toEqual([
      ['q-1', '431 mm'],
      ['q-2', '512 mm'],
    ])
    expect(await ids('place')).toEqual([['q-2', '512 mm']])
  })
})

describe('a publication', () => {
  test('is made by redact only: pages and files take no record that was not', async () => {
    const built = await readBuild({ 'content/build.md': buildNote })
    const { record, verdicts, inspection, findings, photos } = built
    // @ts-expect-error A record as it was folded is no publishable record.
    const unredacted: Publication['record'] = { ...record, edition: 'public' }
    const publication = { record: unredacted, verdicts, inspection, findings, photos, wholeNotes: [] }
    // @ts-expect-error A publication that was put together by hand is none.
    const print = (): string => recordJson(publication)
    expect(print).toBeTypeOf('function')
  })

  test('is refused for an edition that nobody named', async () => {
    const built = await readBuild({ 'content/build.md': buildNote })
    const redaction = { edition: 'other', fold: built.fold, meaningOf: () => '' }
    expect(() => redact(built, redaction)).toThrow('Unexpected edition `other`, expected one that build.md names')
  })
})

describe('the last look at what is to be published', () => {
  const withheld = withheldBy([{ name: 'public', withhold: ['cost', 'people'] }], 'public')
  const guard = {
    withheld: withheld ?? { edition: '', kinds: new Set<never>(), isWhole: true, donorNames: () => [] },
    find: (text: string) => {
      const start = text.indexOf('Bob')
      const place = { file: '', line: 1, column: 1, endLine: 1, endColumn: 1 }
      return start < 0
        ? []
        : [{ word: { text: 'Bob', as: 'people' as const, place, within: 'body' as const }, start, end: start + 3 }]
    },
  }

  test.each([
    ['a word in any field', { parts: [{ anything: { new: 'with Bob' } }] }],
    ['an amount in any field', { deep: [{ quantity: { dimension: 'money', text: '' } }] }],
    ['words that still bear a mark', { title: { text: 'x', marks: [{ start: 0, end: 1, as: 'people' }] } }],
  ])('throws for %s', (_what, record) => {
    expect(() => requireNothingWithheld(record, guard)).toThrow(WithheldLeft)
  })

  test('names the field and never the word', () => {
    expect(() => requireNothingWithheld({ parts: [{ name: 'Bob' }] }, guard)).toThrow(
      'Unexpected withheld words at `record/parts/0/name` of the edition `public`, expected none: nothing was published.',
    )
  })

  test('passes what holds neither', () => {
    expect(() =>
      requireNothingWithheld({ parts: [{ name: 'tank', of: null, qty: 1 }] } as unknown as AsBuiltRecord, guard),
    ).not.toThrow()
  })
})
