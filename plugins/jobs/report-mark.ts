import leven from 'leven'
import type { VFile } from 'vfile'
import { report } from '../tree/report.ts'
import { reportAttributes } from '../tree/report-attributes.ts'
import { type FoundJob, holdUps } from './find-jobs.ts'

/** Tells of attributes that a job does not know, and of a `before=` that names nothing a job can hold up. */
export function reportMark({ marks, before, writtenBefore, attributePositions, item }: FoundJob, file: VFile): void {
  for (const mark of marks.slice(0, 1))
    reportAttributes(file, mark, { known: ['id', 'before'], positions: attributePositions })
  if (writtenBefore === null || before !== null) return
  const near = holdUps.find(known => leven(known, writtenBefore.toLowerCase()) <= 2) ?? null
  report(file, {
    rule: 'unknown-value',
    place: attributePositions.before ?? item.position,
    reason: `Unexpected \`before=${writtenBefore}\`, expected \`road\` or \`inspection\``,
    actual: writtenBefore,
    mend: near === null ? null : `before=${near}`,
  })
}
