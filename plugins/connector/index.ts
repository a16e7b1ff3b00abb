import type { Root } from 'mdast'
import type { Plugin } from 'unified'
import { report } from '../tree/report.ts'
import { reportAttributes } from '../tree/report-attributes.ts'
import { sourceOf } from '../tree/source.ts'
import { rewrite } from '../tree/walk.ts'
import { toConnector } from './to-connector.ts'

export type { ConnectorNode } from './node.ts'

/** `:::connector{#stalk-switch mates="column-loom"}` becomes a `connector` node around its pin table. */
const connector: Plugin<[], Root> = () => (tree, file) => {
  const source = sourceOf(file)
  rewrite(tree, node => {
    if (node.type !== 'containerDirective' || node.name !== 'connector') return null
    const made = toConnector(node, source)
    reportAttributes(file, node, { known: ['id', 'mates', 'name', 'rating'], positions: made.attributePositions })
    if (made.id === null) {
      report(file, {
        rule: 'pin-table',
        place: node.position?.start,
        reason: 'Unexpected connector without an identifier, expected one such as `:::connector{#stalk-switch}`',
      })
    }
    return [made]
  })
}

export default connector
