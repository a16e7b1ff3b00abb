import type { Verdict, WorkedValue } from '../checker/verdict.ts'
import { figureKey } from './atlas.ts'
import type { Leader } from './cells.ts'
import { aloud } from './equation.ts'
import { inOtherUnits } from './other-units.ts'
import { longDate } from './page-dates.ts'
import type { GivenValue, PartOfPage } from './page-parts.ts'
import type { PageRow } from './page-row.ts'
import { type PageScope, spaced } from './page-scope.ts'
import { textRow, wideRow } from './simple-page.ts'
import { stepLine } from './step-line.ts'
import { heading } from './tables.ts'
import { noteAddress, wordsAddress } from './thing-addresses.ts'
import { figureColumns } from './typeset.ts'

/** The values put in: each with its line and, at the end of it, the sentence in which it was written. */
export function valueRows(scope: PageScope, { working, subject }: Verdict): PageRow[] {
  if (working.values.length === 0) return []
  const isOther = ({ path }: WorkedValue): boolean => path !== null && !isOwn(path, subject)
  const own = working.values.filter(value => !isOther(value))
  const others = working.values.filter(isOther)
  const list = (values: readonly WorkedValue[]): PartOfPage => ({
    kind: 'given',
    values: values.map(value => given(scope, value)),
  })
  return [
    wideRow(
      heading('Values put in', 'values'),
      ...(own.length === 0 ? [] : [list(own)]),
      ...(others.length === 0 ? [] : [heading('From other things that it depends on', 'others', 3), list(others)]),
    ),
  ]
}

/** Whether a path is of the subject itself, or of the build's settings. */
function isOwn(path: string, subject: string): boolean {
  const bare = path.replace(/^[a-z-]+:/, '')
  return bare.startsWith(`${subject.split('/')[0] ?? subject}/`) || bare === subject || path.startsWith('build:')
}

function given(scope: PageScope, value: WorkedValue): GivenValue {
  const symbol = value.symbol === null ? '' : aloud(value.symbol)
  const other = value.quantity === null ? null : inOtherUnits(value.quantity, scope.record.build.reading.gallon)
  return { symbol, meaning: value.meaning, leader: leaderOf(scope, value), other, ...wordsOf(scope, value) }
}

function leaderOf(scope: PageScope, value: WorkedValue): Leader {
  const columns = figureColumns(value.shown.text)
  if (value.origin === 'record') {
    const href = scope.to(value.figure === null ? noteAddress(value.session) : wordsAddress(value))
    return { ...columns, line: 'written', href, balloon: scope.balloon(value.session) }
  }
  const box = (text: string): Leader['balloon'] => ({ text, says: text, square: true })
  if (value.origin === 'assumed') return { ...columns, line: 'assumed', href: null, balloon: box('assumed') }
  return { ...columns, line: 'worked', href: null, balloon: box(value.origin) }
}

function wordsOf(scope: PageScope, value: WorkedValue): Pick<GivenValue, 'quote' | 'why' | 'place'> {
  if (value.origin !== 'record')
    return { quote: null, why: value.origin === 'assumed' ? 'Nobody wrote it.' : null, place: '' }
  const sentence = value.figure === null ? undefined : scope.atlas.sentences.get(figureKey(value.session, value.figure))
  const session = value.session === null ? undefined : scope.atlas.sessions.get(value.session)
  const note = session === undefined ? 'build note' : session.date === '' ? session.id : longDate(session.date)
  const line = value.place === null ? '' : `, line ${value.place.line}`
  const why = sentence === undefined && value.path !== null ? `At the head of the note: ${pathWords(value.path)}` : null
  return { quote: sentence === undefined ? null : clipped(sentence), why, place: `${note}${line}` }
}

/** `circuit:fuel-pump/cable.area` as a reader says it. */
function pathWords(path: string): string {
  return spaced(
    path
      .replace(/^[a-z-]+:/, '')
      .replace('/', ', ')
      .replaceAll('.', ' '),
  )
}

/** A long sentence is cut at a word: its page has the rest. */
function clipped(sentence: string): string {
  if (sentence.length <= 180) return sentence
  return `${sentence.slice(0, sentence.lastIndexOf(' ', 176))} …`
}

/** What is worked out beside the answer, such as the fan that is blocked. */
export function besideRows({ record }: PageScope, { working }: Verdict): PageRow[] {
  if (working.beside.length === 0) return []
  const lines = working.beside.map(step => stepLine(step, record.build.reading.gallon))
  return [textRow(heading('Worked out besides', 'beside'), { kind: 'formula', lines })]
}
