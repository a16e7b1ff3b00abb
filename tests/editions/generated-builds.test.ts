import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { PrivateKind } from '../../plugins/private/node.ts'
import { type Built, publicationOf, searchIndexOf } from '../../src/build.ts'
import { measureNext } from '../../src/checker/measure-next.ts'
import { exportFiles } from '../../src/exports/export-files.ts'
import { makeSiteData } from '../../src/pages/make-site-data.ts'
import { Aviary, type Canary } from './canaries.ts'
import { filesWith, type PublishedText, readBuild, unpacked } from './published-bytes.ts'

const kinds: readonly PrivateKind[] = ['cost', 'source', 'people', 'place', 'identity']

/** Writes one thing with a mark of that kind in it: as front matter of a part, or as blocks of the body. */
type Piece = (aviary: Aviary, as: PrivateKind, number: number) => string

const frontPieces: readonly Piece[] = [
  (a, as) => `name: "Thing ${a.mark(as, 'name')}"`,
  (a, as) => `why: "since ${a.mark(as, 'why')} said ${a.word('shown', 'why')}"`,
  a => `from: "${a.word('source', 'from')} yard"`,
  a => `cost: ${a.money('cost')}`,
  a => `serial: ${a.word('identity', 'serial')}7`,
  (a, as) => `material: "${a.mark(as, 'material')} steel"`,
]

const bodyPieces: readonly Piece[] = [
  (a, as) => `Words ${a.mark(as, 'prose')} and ${a.word('shown', 'prose')}.`,
  (a, as) => `# Heading ${a.mark(as, 'heading')}`,
  (a, as) => `:::private{as=${as}}\nBlock ${a.word(as, 'block')}, 412 mm.\n:::`,
  (a, as) => `> - in a list in a quotation ${a.mark(as, 'list in quotation')}\n>   1. deeper ${a.mark(as, 'deeper')}`,
  (a, as) => `- [ ] ring ${a.mark(as, 'job')} soon`,
  (a, as) => `- [ ] ${a.mark(as, 'job all mark')}`,
  (a, as) => `[to ${a.mark(as, 'link')}](https://example.org/${a.word(as, 'address of a marked link')})`,
  (a, as) =>
    `:private[*a ${a.word(as, 'emphasis')}* \`${a.word(as, 'code')}\` [l](https://example.org/${a.word(as, 'link in a mark')})]{as=${as}}`,
  a => `It was ${a.money('prose')}, or **${a.money('bold')}**, or \`${a.money('code')}\`, ~~${a.money('deleted')}~~.`,
  (a, as) => `| A | B |\n|---|---|\n| ${a.mark(as, 'cell')} | ${a.word('shown', 'cell')} |`,
  (a, as, n) =>
    `| Part | Cost | From |\n|---|---|---|\n| Clip ${n} ${a.mark(as, 'part of a row')} | ${a.money('row')} | ${a.word('source', 'from of a row')} |`,
  (a, as, n) =>
    `See :private[${a.word(as, 'word with a footnote')}[^n${n}]]{as=${as}}.\n\n[^n${n}]: Footnote ${a.word(as, 'footnote of a mark')}.`,
  (a, as) =>
    `::::private{as=${as}}\n:::connector{#${a.word(as, 'connector').toLowerCase()}}\n| Pin | To |\n|---|---|\n| 1 | ${a.word(as, 'pin')} |\n:::\n::::`,
  (a, as, n) =>
    `The :measure[:private[${431 + n} mm]{as=${as}}]{of="thing-${n}/length"} ${a.word('shown', 'beside a figure')}.`,
  // No mark is read in the attributes of another: what may be meant as one takes the words along.
  (a, as, n) =>
    `:measure[${512 + n} mm]{of="other-${n}/length" with=":private[${a.word('broken', 'with')}]{as=${as}}"} wide.`,
  a => `Lost ${a.word('broken', 'broken mark')} :private[x]{as=}.`,
  a => `:::private{as=poeple}\nLost ${a.word('broken', 'broken container')}\n:::`,
]

interface Drawn {
  readonly withhold: readonly PrivateKind[]
  readonly front: readonly { readonly piece: number; readonly as: PrivateKind }[]
  readonly body: readonly { readonly piece: number; readonly as: PrivateKind }[]
}

const pieceOf = (count: number) => fc.record({ piece: fc.nat(count - 1), as: fc.constantFrom(...kinds) })
const drawn: fc.Arbitrary<Drawn> = fc.record({
  withhold: fc.subarray([...kinds]),
  front: fc.uniqueArray(pieceOf(frontPieces.length), { selector: ({ piece }) => piece, maxLength: 6 }),
  body: fc.array(pieceOf(bodyPieces.length), { minLength: 1, maxLength: 12 }),
})

async function buildOf({ withhold, front, body }: Drawn): Promise<{ built: Built; canaries: readonly Canary[] }> {
  const aviary = new Aviary()
  const keys = front.map(({ piece, as }, number) => `    ${frontPieces[piece]?.(aviary, as, number)}\n`).join('')
  const blocks = body.map(({ piece, as }, number) => bodyPieces[piece]?.(aviary, as, number)).join('\n\n')
  const built = await readBuild({
    'content/build.md': `---\ntitle: Drawn\ncurrency: GBP\neditions: { some: { withhold: [${withhold.join(', ')}] } }\n---\n`,
    'content/sessions/2026-03-07-one.md': `---\ntitle: One\ndate: 2026-03-07\nparts:\n  thing:\n    mass: 3 kg\n${keys}---\n${blocks}\n`,
    'content/sessions/2026-03-08-two.md': '---\ntitle: Two\n---\nWords.\n',
  })
  return { built, canaries: aviary.all }
}

/** What pages are printed from, and every other file. */
async function textsOf(built: Built): Promise<PublishedText[]> {
  const publication = publicationOf(built, 'some')
  const { record, verdicts, findings, inspection } = publication
  const extras = {
    findings,
    inspection,
    checks: built.checks,
    measureNext: measureNext(verdicts),
    photos: [],
    date: null,
    serve: false,
    scripts: [],
  }
  const pages = JSON.stringify(makeSiteData(record, verdicts, extras))
  const files = await exportFiles(publication)
  return [
    { path: 'pages', text: pages },
    { path: 'search', text: JSON.stringify(searchIndexOf(publication)) },
    ...files.flatMap(({ path, content }) => unpacked(path, content)),
  ]
}

describe('any build', () => {
  test('publishes nothing that its edition withholds, and everything else', async () => {
    await fc.assert(
      fc.asyncProperty(drawn, async one => {
        const { built, canaries } = await buildOf(one)
        const texts = await textsOf(built)
        const isHidden = ({ as }: Canary): boolean =>
          as.some(kind => kind === 'broken' || one.withhold.some(out => out === kind))
        const leaked = canaries.filter(canary => isHidden(canary) && filesWith(texts, canary.word).length > 0)
        const lost = canaries.filter(canary => !isHidden(canary) && filesWith(texts, canary.word).length === 0)
        expect({ leaked, lost }).toEqual({ leaked: [], lost: [] })
      }),
      { numRuns: 40, seed: 20260307 },
    )
  }, 240_000)
})
