import type { Verdict } from '../checker/verdict.ts'
import type { Changes, StatementChange } from '../record/asked/changes-since.ts'
import type { AnswerChange } from '../record/asked/compare-answers.ts'
import { nameCell } from './bill-of-materials.ts'
import type { Mark } from './cells.ts'
import { figure, look, plain, wordsCell } from './inline.ts'
import { inMoney, moneyCell } from './money-cells.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, valueText } from './page-scope.ts'
import { stateCell } from './part-states.ts'
import { column, row, table } from './tables.ts'
import { noteAddress, subjectAddress } from './thing-addresses.ts'
import { heldLeader, propertyWords } from './thing-table.ts'

/** Checks that came out otherwise, are new or are asked no more. */
export function answerTable(scope: PageScope, answers: readonly AnswerChange<Verdict>[]): PartOfPage[] {
  if (answers.length === 0) return []
  const mark = (verdict: Verdict | null): readonly Mark[] =>
    verdict === null ? [] : [{ verdict: verdict.verdict, text: verdict.verdict, href: null }]
  return [
    table({
      caption: 'Checks that came out otherwise',
      columns: [column('Check', 'wide'), column('Before'), column('Now'), column('How it stands', 'wide')],
      rows: answers.map(({ before, after }) => {
        const name = nameOf(after ?? before)
        return row([
          wordsCell([after === null ? plain(name) : plain(name, scope.mark(after).href)]),
          { kind: 'marks', marks: mark(before), otherwise: 'not asked' },
          { kind: 'marks', marks: mark(after), otherwise: 'asked no more' },
          wordsCell(after === null ? '' : figure(after.working.says)),
        ])
      }),
      canFilter: answers.length > 12,
    }),
  ]
}

function nameOf(verdict: Verdict | null): string {
  if (verdict === null) return ''
  const { title, subject } = verdict.working
  return [title, verdict.subject === 'vehicle' ? '' : subject.name, verdict.aspect?.replaceAll('-', ' ') ?? '']
    .filter(text => text !== '')
    .join(', ')
}

/** Parts that are new or stand otherwise. */
export function partTable(scope: PageScope, { parts }: Changes): PartOfPage[] {
  if (parts.length === 0) return []
  return [
    table({
      caption: 'Parts that are new or stand otherwise',
      columns: [column('Part', 'wide'), column('Before'), column('Now'), column('In', 'narrow'), column('Why', 'wide')],
      rows: parts.map(({ before, after }) => {
        const last = after.events.at(-1)
        return row([
          nameCell(scope, after),
          before === null ? wordsCell('new') : stateCell(before.state),
          stateCell(after.state),
          last === undefined
            ? wordsCell('')
            : {
                kind: 'balloon',
                balloon: scope.balloon(last.session),
                words: [scope.link('note', noteAddress(last.session))],
              },
          wordsCell(last?.why ? [look('said', last.why.value.text)] : []),
        ])
      }),
      canFilter: parts.length > 12,
    }),
  ]
}

/** Measurements that are new or were made again. */
export function figureTable(scope: PageScope, { measurements }: Changes): PartOfPage[] {
  if (measurements.length === 0) return []
  return [
    table({
      caption: 'Measurements that are new or were made again',
      columns: [column('What', 'wide'), column('Before', 'figure'), column('Now', 'figure')],
      rows: measurements.map(({ before, after }) =>
        row([
          wordsCell([look('path', after.path)]),
          before === null ? wordsCell('') : { kind: 'leader', leader: scope.leader(before.quantity.text, before) },
          { kind: 'leader', leader: scope.leader(after.quantity.text, after) },
        ]),
      ),
      canFilter: measurements.length > 12,
    }),
  ]
}

/** What is said otherwise of circuits or connectors. */
export function statementTable(
  scope: PageScope,
  kind: 'circuit' | 'connector',
  changes: readonly StatementChange[],
): PartOfPage[] {
  if (changes.length === 0) return []
  return [
    table({
      caption: `What is said otherwise of a ${kind}`,
      columns: [
        column(kind === 'circuit' ? 'Circuit' : 'Connector'),
        column('What'),
        column('Before'),
        column('Now', 'figure'),
      ],
      rows: changes.map(({ thing, key, before, held }) =>
        row([
          wordsCell([scope.link(thing.name, subjectAddress({ kind, id: thing.id }))]),
          wordsCell(propertyWords(key)),
          wordsCell(before === null ? '' : valueText(before)),
          { kind: 'leader', leader: heldLeader(scope, held) },
        ]),
      ),
      canFilter: changes.length > 12,
    }),
  ]
}

/** Amounts of the later sessions; nothing where the edition withholds cost. */
export function moneyTable(scope: PageScope, { money, paid }: Changes): PartOfPage[] {
  if (scope.atlas.withheld.has('cost') || money.length === 0) return []
  return [
    table({
      caption: 'Amounts since then',
      columns: [column('What', 'wide'), column('Each, as written', 'figure'), column('Amount', 'num')],
      rows: money.map(line =>
        row([
          wordsCell(line.thing === null ? line.what : [plain(line.what, scope.to(subjectAddress(line.thing)))]),
          moneyCell(scope, line.written, line),
          wordsCell(inMoney(scope, line.amount)),
        ]),
      ),
      foot: [row([wordsCell('Together'), wordsCell(''), wordsCell(inMoney(scope, paid))])],
    }),
  ]
}
