import type { Root } from 'mdast'
import remarkDirective from 'remark-directive'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { VFile } from 'vfile'
import connector from '../../plugins/connector/index.ts'
import directives from '../../plugins/directives/index.ts'
import figures from '../../plugins/figures/index.ts'
import jobs from '../../plugins/jobs/index.ts'
import markedPlaces from '../../plugins/marked-places/index.ts'
import measure from '../../plugins/measure/index.ts'
import privateMarks from '../../plugins/private/index.ts'
import quantities from '../../plugins/quantities/index.ts'
import tables from '../../plugins/tables/index.ts'
import things from '../../plugins/things/index.ts'

/** CommonMark with GFM, and nothing else. */
export const plain = unified().use(remarkParse).use(remarkGfm, { singleTilde: false }).freeze()

/** The same with directives, and nothing of ours. */
export const bare = plain().use(remarkDirective).freeze()

/** All plugins in the order of a note. */
export const whole = bare()
  .use(directives)
  .use(measure)
  .use(privateMarks)
  .use(connector)
  .use(jobs)
  .use(tables)
  .use(figures)
  .use(markedPlaces)
  .use(things)
  .use(quantities)
  .freeze()

export interface Outcome {
  readonly tree: Root
  readonly file: VFile
  /** `line:column-line:column rule message`, one a message. */
  readonly messages: readonly string[]
}

/** What all processors of Markdown can do, whatever plugins they hold. */
export interface Chain {
  parse(file: VFile): Root
  runSync(tree: Root, file: VFile): Root
}

/** Runs a text through a chain. */
export function run(chain: Chain, text: string): Outcome {
  const file = new VFile({ value: text, path: 'note.md' })
  const tree = chain.runSync(chain.parse(file), file)
  return {
    tree,
    file,
    messages: file.messages.map(({ place, ruleId, reason }) => `${written(place)} ${ruleId} ${reason}`),
  }
}

function written(place: VFile['messages'][number]['place']): string {
  if (place === undefined) return '-'
  if (!('start' in place)) return `${place.line}:${place.column}`
  return `${place.start.line}:${place.start.column}-${place.end.line}:${place.end.column}`
}
