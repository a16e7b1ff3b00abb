import type { ChoiceAnswer, CircuitChoice } from '../checker/circuit-choices.ts'
import { formatWarranted } from '../quantities/format.ts'
import type { TableRow } from './blocks.ts'
import type { Mark } from './cells.ts'
import { figure, look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { spaced } from './page-scope.ts'
import { column, heading, row, table, words } from './tables.ts'

/** What the sizes next to those fitted would do: drop, rating and verdicts of each. */
export function choicesPart(choices: readonly CircuitChoice[]): PartOfPage[] {
  const asked = choices.filter(({ answers }) => answers.length > 0)
  if (asked.length === 0) return []
  return [
    heading('What if', 'what-if'),
    words(
      'note',
      'The same checks asked of this circuit with one size changed. Another cable is taken there and, where it has a wire of its own, back; a maker’s rating of the fitted cable is then left out, and the table’s figure stands.',
    ),
    table({
      caption: 'Next sizes of cable and fuse',
      columns: [
        column('Instead'),
        column('Drop', 'num'),
        column('Cable carries', 'num'),
        column('Fuse', 'num'),
        column('Verdicts', 'wide'),
      ],
      rows: asked.map(choiceRow),
    }),
  ]
}

function choiceRow(choice: CircuitChoice): TableRow {
  const { what, said, isFitted, answers } = choice
  const drop = answers.find(({ check, result }) => /-drop$/.test(check) && result !== null)
  const rated = answers.find(
    ({ check, limit }) => /^(cable-rating|fuse-protects-cable)$/.test(check) && limit !== null && limit.max !== null,
  )
  const fuse = answers.find(({ check, result }) => check === 'fuse-protects-cable' && result !== null)
  return row(
    [
      wordsCell(
        [plain(`${what === 'cable' ? 'Cable' : 'Fuse'} `), ...figure(said)],
        isFitted ? [look('muted', 'as fitted')] : [],
      ),
      wordsCell(
        drop?.result == null
          ? ''
          : figure(formatWarranted(drop.result.value, drop.result.uncertainty, drop.result.unit)),
      ),
      wordsCell(rated?.limit?.max == null ? '' : figure(`${rated.limit.max.toFixed(1)} ${rated.limit.unit}`)),
      wordsCell(fuse?.result == null ? '' : figure(`${fuse.result.value} ${fuse.result.unit}`)),
      { kind: 'marks', marks: answers.map(markOf), otherwise: '' },
    ],
    null,
    isFitted ? 'chosen' : 'plain',
  )
}

const markOf = ({ check, aspect, verdict }: ChoiceAnswer): Mark => ({
  verdict,
  text: `${spaced(check)}${aspect === null ? '' : `, ${spaced(aspect)}`}`,
  href: null,
})
