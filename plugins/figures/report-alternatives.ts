import type { Root } from 'mdast'
import type { VFile } from 'vfile'
import { report } from '../tree/report.ts'
import { walk } from '../tree/walk.ts'

/** Tells of each picture that has no words for a reader who cannot see it. */
export function reportAlternatives(tree: Root, file: VFile): void {
  walk(tree, node => {
    if ((node.type !== 'image' && node.type !== 'imageReference') || (node.alt ?? '').trim() !== '') return undefined
    const address = node.type === 'image' ? node.url : (node.label ?? node.identifier)
    report(file, {
      rule: 'no-alternative',
      place: node.position,
      reason: `Unexpected picture \`${address}\` without alternative text, expected words for a reader who cannot see it`,
    })
    return undefined
  })
}
