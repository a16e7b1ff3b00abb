import type { Job, Part, Thing } from '../record/record.ts'
import { wordsCell } from './inline.ts'
import { workLines } from './jobs-page.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, standing, valueText } from './page-scope.ts'
import { column, heading, row, table } from './tables.ts'
import { propertyWords } from './thing-table.ts'

const roles = ['feeds', 'supply', 'through', 'fuse.box', 'loom', 'route'] // what a circuit says that may name a part

/** The circuits that name a part, and as what. */
export function circuitsOf(scope: PageScope, part: Part): PartOfPage[] {
  const named = scope.record.circuits.flatMap(circuit => {
    const as = roles.filter(key => names(circuit, key, part.id))
    return as.length === 0 ? [] : [{ circuit, as }]
  })
  if (named.length === 0) return []
  return [
    heading('Its circuits', 'circuits'),
    table({
      caption: `Circuits that name ${part.name}`,
      columns: [column('Circuit', 'wide'), column('Which names it as'), column('State')],
      rows: named.map(({ circuit, as }) =>
        row([
          wordsCell([scope.thing({ kind: 'circuit', id: circuit.id })]),
          wordsCell(as.map(propertyWords).join(', ')),
          wordsCell(stateOf(circuit)),
        ]),
      ),
    }),
  ]
}

function names(circuit: Thing, key: string, id: string): boolean {
  const held = standing(circuit.properties, key)
  if (held?.value.type === 'list') return held.value.entries.some(({ words }) => words.text === id)
  return held?.value.type === 'words' && held.value.words.text === id
}

function stateOf(circuit: Thing): string {
  const held = standing(circuit.properties, 'state')
  return held === null ? 'live' : valueText(held.value)
}

/** Jobs whose words name the part, by its name or its identifier's words. */
export function jobsNaming(scope: PageScope, part: Part): PartOfPage[] {
  const jobs = scope.record.jobs.filter(job => isNamed(job, part))
  return jobs.length === 0
    ? []
    : [
        heading('Jobs that name it', 'jobs'),
        { kind: 'jobs', jobs: workLines(scope, { jobs, fixes: [] }).map(line => ({ ...line, id: null })) },
      ]
}

const heard = new WeakMap<Job, string>() // each job's words are made plain once, not once a part

function isNamed(job: Job, { id, name }: Part): boolean {
  const words = heard.get(job) ?? ` ${plainWords(job.text)} `
  heard.set(job, words)
  return [id, name].some(called => words.includes(` ${plainWords(called)} `))
}

/** Letters and digits in lower case with single blanks between. */
const plainWords = (text: string): string =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
