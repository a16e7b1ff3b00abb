import type { Root } from 'mdast'
import type { Plugin } from 'unified'
import { sourceOf } from '../tree/source.ts'
import { findJobs } from './find-jobs.ts'
import { giveIdentifiers } from './give-identifiers.ts'
import { removeMarks } from './remove-marks.ts'
import { reportMark } from './report-mark.ts'

export type { JobReading } from './node.ts'

/** Items of a task list become jobs: `- [ ] seal the hatch :job{#seal-hatch before=road}`; the mark leaves the tree, its label stays. */
const jobs: Plugin<[], Root> = () => (tree, file) => {
  const source = sourceOf(file)
  const found = findJobs(tree, source)
  const identifiers = giveIdentifiers(found)
  for (const [index, job] of found.entries()) {
    const { words, written, done, position, attributePositions } = job
    reportMark(job, file)
    job.item.data = {
      ...job.item.data,
      job: {
        id: identifiers[index] ?? '',
        explicit: written !== null,
        text: words,
        done,
        before: job.before,
        position,
        beforePosition: attributePositions.before ?? null,
      },
    }
  }
  removeMarks(tree, { source, file, marks: new Set(found.flatMap(job => job.marks)) })
}

export default jobs
