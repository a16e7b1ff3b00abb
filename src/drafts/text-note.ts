import { identifierOf } from '../facts/identifier.ts'
import type { Reading } from '../quantities/quantity.ts'
import type { DraftGround } from './draft-ground.ts'
import { DraftTrouble, many } from './draft-trouble.ts'
import { dropTimings } from './drop-timings.ts'
import { sayableNames } from './named-things.ts'
import type { Proposal } from './proposal.ts'
import { proposalLines } from './proposal-lines.ts'
import { proposeFigures, type SureFigure } from './propose-figures.ts'
import { type ProposedJob, proposeJob } from './propose-jobs.ts'
import { proposeParts, proposeSpend } from './propose-parts.ts'
import { cutSentences } from './sentences.ts'
import { spokenFigures } from './spoken-figures.ts'
import type { DraftHead } from './table-note.ts'

const mostFrontKb = 60 // of proposals: a note's front matter may have 64 KB
const mostKb = 200 // of words in one note: more than a day of talk

/** Rough or dictated words as a session note: every word in the body, each proposal behind one `#`, jobs as task items. */
export function draftFromText(said: string, head: DraftHead, ground: DraftGround): string {
  const text = dropTimings(said)
    .replace(/\n{3,}/g, '\n\n')
    .trim()
  if (text === '') throw new DraftTrouble(`\`${head.file}\` holds no words, expected notes of a session.`)
  const kb = Math.ceil(Buffer.byteLength(text) / 1024)
  if (kb > mostKb)
    throw new DraftTrouble(
      `\`${head.file}\` has ${many(kb)} KB of words where a note may have ${mostKb} KB: split it into sessions.`,
    )
  const { sure, proposals, jobs } = propose(text, ground)
  const lines = proposalLines(proposals)
  if (Buffer.byteLength(lines.join('\n')) > mostFrontKb * 1024)
    throw new DraftTrouble(
      `\`${head.file}\` names more parts, money and figures than one note may have: split it into sessions.`,
    )
  const remark = head.remark ? [`## ${head.remark}`] : []
  const front = ['---', `title: ${JSON.stringify(head.title)}`, `date: ${head.date}`, ...remark, ...lines, '---', '']
  return [...front, named(text, sure), ...jobLines(jobs), ''].join('\n')
}

interface Proposed {
  readonly sure: readonly SureFigure[]
  readonly proposals: readonly Proposal[]
  readonly jobs: readonly ProposedJob[]
}

function propose(text: string, ground: DraftGround): Proposed {
  const names = sayableNames(ground)
  const figures = spokenFigures(text, ground.options)
  const each = cutSentences(text).map(sentence => {
    const said = figures.filter(({ firstAt }) => firstAt >= sentence.start && firstAt < sentence.end)
    const own = said.map(({ reading }) => reading)
    const found = proposeFigures(sentence, said, names)
    const parts = proposeParts(sentence, own, names)
    const spend = proposeSpend(
      sentence,
      own,
      parts.some(({ keys }) => keys.some(([key]) => key === 'cost')),
    )
    const job = proposeJob(sentence)
    return { sure: found.sure, proposals: [...parts, ...spend, ...found.proposals], jobs: job === null ? [] : [job] }
  })
  return {
    sure: each.flatMap(({ sure }) => sure),
    proposals: each.flatMap(({ proposals }) => proposals),
    jobs: each.flatMap(({ jobs }) => jobs),
  }
}

/** The words with what the record can name put around its figures, from the end so that places hold. */
function named(text: string, sure: readonly SureFigure[]): string {
  return [...sure]
    .sort((one, other) => other.reading.start - one.reading.start)
    .reduce(
      (whole, { reading, path }) =>
        `${whole.slice(0, reading.start)}:measure[${figureIn(whole, reading)}]{of="${path}"}${whole.slice(reading.end)}`,
      text,
    )
}

const figureIn = (text: string, { start, end }: Reading): string => text.slice(start, end)

function jobLines(jobs: readonly ProposedJob[]): string[] {
  if (jobs.length === 0) return []
  const taken = new Set<string>()
  const lines = jobs.flatMap(({ words, before }) => {
    const id = identifierOf(words).slice(0, 60).replace(/-+$/, '')
    if (taken.has(id)) return []
    taken.add(id)
    return [`- [ ] ${words} :job{#${id}${before === null ? '' : ` before=${before}`}}`]
  })
  return ['', '## Jobs that the words name', '', ...lines]
}
