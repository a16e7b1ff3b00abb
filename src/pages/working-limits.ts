import type { Verdict, WorkedContribution } from '../checker/verdict.ts'
import { formatQuantity } from '../quantities/format.ts'
import { unitOf } from '../quantities/units.ts'
import { figure, look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { setterWords } from './subject-checks.ts'
import { column, heading, row, table, words } from './tables.ts'

/** How much each value adds to the uncertainty of the result. */
export function spreadParts({ working, result }: Verdict): PartOfPage[] {
  if (result === null || working.contributions.length === 0) return []
  const unit = result.unit
  const rows = working.contributions.map(one => contributionRow(one, unit))
  return [
    heading('Where the uncertainty comes from', 'spread'),
    table({
      caption: 'Contributions to the uncertainty',
      columns: [
        column('Value', 'wide'),
        column('Half-width', 'num'),
        column('Carried to the result, one standard deviation', 'num'),
        column('Share', 'num'),
      ],
      rows,
      foot: [
        row([
          wordsCell([plain('U, twice the root of the squares (k = 2)')]),
          wordsCell(''),
          wordsCell(figure(withUnit(result.uncertainty, unit))),
          wordsCell(''),
        ]),
      ],
    }),
    words(
      'note',
      'A half-width counts as one standard deviation over √3, since any value within it is as likely (JCGM 100:2008, 4.3.7); times how strongly the result follows the value, it is what is carried.',
    ),
  ]
}

function contributionRow(one: WorkedContribution, unit: string) {
  return row([
    wordsCell(one.meaning, [look('path', one.path)]),
    wordsCell(figure(`± ${withUnit(one.halfWidth, one.unit)}`)),
    wordsCell(figure(withUnit(one.carried, unit))),
    wordsCell(figure(`${(one.share * 100).toFixed(0)} %`)),
  ])
}

/** Two significant digits: an uncertainty warrants no more (JCGM 100:2008 7.2.6). */
function withUnit(value: number, unit: string): string {
  const digits = value === 0 ? '0' : String(Number(value.toPrecision(2)))
  return `${digits} ${unitOf(unit).symbol}`.trim()
}

/** Without a second stop at its end. */
const sentence = (text: string): string => `${text.replace(/\.$/, '')}.`

const lawStands =
  'The limit in whose place it stands is one of law. A builder’s own limit does not change what the law asks: whoever inspects the vehicle goes by the law.'

/** The ends worked out, where the words of a limit do not hold their figures: `at most 5133 rpm` beside a share of a critical speed. */
function endsBeside({ min, max, unit, from }: NonNullable<Verdict['limit']>): string[] {
  const ends = [
    ['at least', min],
    ['at most', max],
  ] as const
  return ends.flatMap(([says, end]) => {
    const text = end === null ? '' : formatQuantity(Number(end.toPrecision(4)), unit)
    return text === '' || from.includes(figureOf(text)) ? [] : [`${says} ${text}`]
  })
}

const figureOf = (text: string): string => (/^[−\d.\u202f]+/.exec(text)?.[0] ?? text).trim()

/** The limit, whose it is, and what the builder set in its place. */
export function limitParts({ limit, working }: Verdict): PartOfPage[] {
  if (limit === null) return []
  const own = working.override
  return [
    heading('Limit', 'limit'),
    words('plain', [
      ...figure([limit.from, ...endsBeside(limit)].join(', ')),
      plain('. '),
      look('strong', `${setterWords(limit.who).replace(/^./, first => first.toUpperCase())}:`),
      plain(` ${sentence(limit.source)}`),
    ]),
    ...(own === null
      ? []
      : [
          words('plain', [
            plain('In place of '),
            ...figure(own.default.from),
            plain(` (${setterWords(own.default.who)}), by which it would be ${own.verdict}.`),
            ...(own.why === null ? [] : [plain(' '), look('said', own.why)]),
          ]),
          ...(own.default.who === 'law' ? [words('plain', lawStands)] : []),
        ]),
    words('note', 'Where a limit comes from a rule, local codes and licensed practice decide.'),
  ]
}

/** The rows that were read off published tables. */
export function tableParts({ working }: Verdict): PartOfPage[] {
  if (working.tables.length === 0) return []
  return [
    heading('Tables used', 'tables'),
    {
      kind: 'list',
      entries: working.tables.map(({ table: name, row: line, source }) => [
        plain(`${name}: `),
        look('strong', line),
        plain(`. ${source}`),
      ]),
    },
  ]
}
