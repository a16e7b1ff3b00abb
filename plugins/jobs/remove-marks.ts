import type { Nodes, Root, Text } from 'mdast'
import type { TextDirective } from 'mdast-util-directive'
import type { VFile } from 'vfile'
import { report } from '../tree/report.ts'
import { positionAt, type Source, spanOf } from '../tree/source.ts'
import { rewrite, walk } from '../tree/walk.ts'
import { isMark } from './find-jobs.ts'

interface Removal {
  readonly source: Source
  readonly file: VFile
  /** Those that stand in a task. */
  readonly marks: ReadonlySet<Nodes>
}

/** Takes the marks of tasks out of the tree, the words of their labels stay; any other `:job` is told, and stays as typed. */
export function removeMarks(tree: Root, { source, file, marks }: Removal): void {
  walk(tree, (node, { ancestors }) => {
    const isTold = ancestors.some(ancestor => ancestor.type === 'privateBlock' && ancestor.as === 'broken')
    if (isMark(node) && !marks.has(node) && !isTold) reportStray(node, source, file)
    return undefined
  })
  rewrite(tree, node => {
    if (!isMark(node)) return null
    return marks.has(node) ? node.children : asTyped(node, source)
  })
}

function reportStray(mark: TextDirective, source: Source, file: VFile): void {
  const span = spanOf(mark)
  report(file, {
    rule: 'directive',
    place: span === null ? mark.position : positionAt(source, { start: span.start, end: span.start + ':job'.length }),
    reason: 'Unexpected `:job` outside a task, expected it in an item such as `- [ ] seal the hatch :job{#seal-hatch}`',
  })
}

function asTyped(mark: TextDirective, source: Source): Nodes[] {
  const span = spanOf(mark)
  if (span === null) return mark.children
  const text: Text = {
    type: 'text',
    value: source.text.slice(span.start, span.end),
    position: positionAt(source, span),
  }
  return [text]
}
