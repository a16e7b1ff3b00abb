import { describe, expect, test } from 'vitest'
import { publicationOf, searchIndexOf } from '../../src/build.ts'
import { recordAddresses } from '../../src/pages/record-addresses.ts'
import { indexRecord } from '../../src/search/index-record.ts'
import { openIndex, search } from '../../src/search/query.ts'
import { readBuild } from '../editions/published-bytes.ts'
import { foldTexts } from '../record/read-texts.ts'

// A US gallon is 3.785 L, an imperial one 4.546 L; a thou is 0.0254 mm (NIST SP 811, appendix B.8).
const note = `---
title: Odds and ends
date: 2026-03-07
---
The can holds 11.36 L, the other can 13.64 L.

The shim is 0.203 mm, the packer 8 mm, the strap 12.5 mm and the bar 125 mm.
`
const inCommas = note
  .replaceAll('.36', ',36')
  .replaceAll('.64', ',64')
  .replace('0.203', '0,203')
  .replace('12.5', '12,5')

function indexOf(settings: string) {
  const build = `---\ntitle: Sandpiper\ncurrency: GBP\n${settings}---\nA beach utility.\n`
  const sessions = { '2026-03-07-odds.md': settings.includes('comma') ? inCommas : note }
  return indexRecord({ ...foldTexts({ build, sessions }).record, edition: 'full' }, recordAddresses)
}

function found(settings: string, asked: string): (string | null)[] {
  return search(openIndex(indexOf(settings)), asked).hits.map(({ text }) => text)
}

describe('what is asked is read as the build reads its notes', () => {
  test.each<[string, string, readonly string[]]>([
    ['', '3 gal', ['11.36 L', '13.64 L']],
    ['gallon: us\n', '3 gal', ['11.36 L']],
    ['gallon: imperial\n', '3 gal', ['13.64 L']],
    ['gallon: us\n', '3 imp gal', ['13.64 L']],
    ['', '8 mil', ['0.203 mm', '8 mm']],
    ['mil: thou\n', '8 mil', ['0.203 mm']],
    ['mil: mm\n', '8 mil', ['8 mm']],
    ['', '12,5 mm', ['12.5 mm']],
    ['decimal: comma\n', '12,5 mm', ['12,5 mm']],
    ['decimal: comma\n', '12.5 mm', ['12,5 mm']],
  ])('with %j, %s', (settings, asked, expected) => {
    expect(found(settings, asked).sort()).toEqual([...expected].sort())
  })
})

describe('the index of an edition that withholds', () => {
  const readingOf = async (gallon: string) => {
    const built = await readBuild({
      'content/build.md': `---\ntitle: Odd\ncurrency: GBP\neditions: { some: { withhold: [cost, source, people, place, identity] } }\ngallon: ${gallon}\n---\nWords.\n`,
      'content/sessions/2026-03-07-one.md': '---\ntitle: One\ndate: 2026-03-07\n---\nThe can holds 11.36 L.\n',
    })
    return searchIndexOf(publicationOf(built, 'some')).reading
  }

  test('reads what is asked as the build reads its notes', async () => {
    expect(await readingOf('us')).toEqual({ gallon: 'us', mil: null, decimal: 'point' })
  })

  test('carries no word of build.md but those that the settings know', async () => {
    expect(await readingOf('":private[zqword]{as=source}"')).toEqual({ gallon: null, mil: null, decimal: 'point' })
  })
})
