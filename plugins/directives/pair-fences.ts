import type { Parents } from 'mdast'
import type { BlockRange } from '../tree/withhold-blocks.ts'
import type { FailedMark } from './failed-mark.ts'
import type { FoundMark } from './find-marks.ts'

export interface Outcome {
  readonly failed: FailedMark[]
  readonly blocks: BlockRange[]
}

/** Pairs the fences that are plain text, and says which marks failed and which blocks must be withheld. */
export function pairFences(marks: readonly FoundMark[]): Outcome {
  const out: Outcome = { failed: [], blocks: [] }
  const open: FoundMark[] = []
  const containers = new Map<Parents, readonly (number | undefined)[]>()
  for (const found of marks) {
    const { mark, block } = found
    if (mark.kind === 'failed' || mark.kind === 'opening') out.failed.push(mark)
    if (mark.kind === 'failed') out.blocks.push(block)
    else if (mark.kind === 'closing') close(found, open, { out, containers })
    else open.push(found)
  }
  for (const opening of open) leaveOpen(opening, out)
  return out
}

interface Pairing {
  readonly out: Outcome
  readonly containers: Map<Parents, readonly (number | undefined)[]>
}

function close(found: FoundMark, open: FoundMark[], { out, containers }: Pairing): void {
  const opening = openingFor(found, open, out)
  if (opening === undefined) {
    out.failed.push({
      span: found.mark.span,
      reason: 'Unexpected `:::` that closes nothing, expected one closing fence for each container',
      mend: null,
    })
    out.blocks.push(fromLastContainer(found.block, containers))
  } else if (opening.mark.kind === 'opening') {
    const { parent, first } = opening.block
    const isBeside = parent === found.block.parent
    out.blocks.push({ parent, first, last: isBeside ? found.block.last : parent.children.length - 1 }, found.block)
  }
}

/** The innermost fence still open around this one; what was opened in a container that ended stays open to its end. */
function openingFor({ ancestors }: FoundMark, open: FoundMark[], out: Outcome): FoundMark | undefined {
  for (let opening = open.pop(); opening !== undefined; opening = open.pop()) {
    if (ancestors.includes(opening.block.parent)) return opening
    leaveOpen(opening, out)
  }
  return undefined
}

/** What was meant to be marked and never closed reaches to the end of what holds it. */
function leaveOpen({ mark, block }: FoundMark, out: Outcome): void {
  if (mark.kind === 'opening') out.blocks.push({ ...block, last: block.parent.children.length - 1 })
}

/** From the container that a second closing fence was meant to close. */
function fromLastContainer({ parent, first, last }: BlockRange, containers: Pairing['containers']): BlockRange {
  const known = containers.get(parent) ?? lastContainers(parent)
  containers.set(parent, known)
  return { parent, first: known[first] ?? first, last }
}

function lastContainers(parent: Parents): readonly (number | undefined)[] {
  let last: number | undefined
  return parent.children.map((child, index) => {
    if (child.type === 'containerDirective') last = index
    return last
  })
}
