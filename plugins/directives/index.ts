import type { Root } from 'mdast'
import type {} from 'remark-parse'
import type { Plugin } from 'unified'
import { fillPositions } from '../tree/missing-positions.ts'
import { report } from '../tree/report.ts'
import { positionAt, sourceOf } from '../tree/source.ts'
import { withholdBlocks } from '../tree/withhold-blocks.ts'
import { findMarks } from './find-marks.ts'
import { pairFences } from './pair-fences.ts'
import { putBack } from './put-back.ts'
import { readsDirectives, refuseWords } from './refuse-words.ts'

export { type DirectiveName, directiveNames } from './names.ts'

/** Leaves `12:30` and `red:black` the words they are, and withholds the block of each mark that failed. Use it after remark-directive. */
const directives: Plugin<[], Root> = function () {
  const data = this.data()
  const extensions = data.micromarkExtensions ?? []
  if (!extensions.some(readsDirectives))
    throw new Error('Unexpected chain without remark-directive, expected it before the plugin directives')
  data.micromarkExtensions = extensions.map(extension =>
    readsDirectives(extension) ? refuseWords(extension) : extension,
  )
  return (tree, file) => {
    const source = sourceOf(file)
    fillPositions(tree, source)
    const found = findMarks(tree, source)
    const { failed, blocks } = pairFences(found)
    for (const { span, reason, mend } of failed)
      report(file, { rule: 'directive', place: positionAt(source, span), reason, mend })
    withholdBlocks(blocks)
    putBack(tree, source, new Set(found.flatMap(({ directive }) => directive ?? [])))
  }
}

export default directives
