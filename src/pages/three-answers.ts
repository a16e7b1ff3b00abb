import { askLedger } from '../record/asked/split-ledger.ts'
import { pageAddress } from './addresses.ts'
import type { Inline } from './cells.ts'
import { plain, wordsCell } from './inline.ts'
import { inMoney } from './money-cells.ts'
import { dearest, heaviest, largestAmounts, withRest } from './most-of-it.ts'
import { openWork } from './open-work.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, row, table } from './tables.ts'

interface Answer {
  readonly question: string
  readonly answer: Inline
  readonly rest: readonly Inline[]
}

/** What is in it, what it cost, what is still to do: each answered in a line, with what it is mostly made of leading to its words. */
export function threeAnswers(scope: PageScope): PartOfPage {
  const cost = scope.atlas.withheld.has('cost') ? [] : [costAnswer(scope)]
  return table({
    caption: 'What is in it, what it cost, what is still to do',
    columns: [column('Question'), column('Answer'), column('The most of it', 'wide')],
    rows: [inIt(scope), ...cost, toDo(scope)].map(({ question, answer, rest }) =>
      row([wordsCell(question), wordsCell([answer]), wordsCell(rest)]),
    ),
  })
}

function inIt(scope: PageScope): Answer {
  const on = scope.record.parts.filter(part => part.onVehicle)
  const most = [heaviest(scope, on), scope.atlas.withheld.has('cost') ? [] : dearest(scope, on)]
  return {
    question: 'What is in it?',
    answer: scope.link(`${on.length} ${on.length === 1 ? 'part' : 'parts'}`, pageAddress('parts')),
    rest: withRest(
      most.filter(words => words.length > 0),
      0,
    ),
  }
}

function costAnswer(scope: PageScope): Answer {
  return {
    question: 'What did it cost?',
    answer: scope.link(inMoney(scope, scope.record.ledger.total), pageAddress('cost')),
    rest: largestAmounts(scope, askLedger(scope.record)),
  }
}

function toDo(scope: PageScope): Answer {
  const things = openWork(scope).flatMap(work => work.things)
  const named = things.slice(0, 2)
  return {
    question: 'What is still to do?',
    answer:
      things.length === 0
        ? plain('nothing that the notes name')
        : scope.link(`${things.length} ${things.length === 1 ? 'thing' : 'things'}`, pageAddress('road')),
    rest: withRest(named, things.length - named.length),
  }
}
