import type { Root } from 'mdast'
import type { Plugin } from 'unified'
import { report } from '../tree/report.ts'
import { walk } from '../tree/walk.ts'
import { readHeader } from './read-header.ts'

export type { TableReading } from './node.ts'

/** Says of each table what its header says that it holds; a pin table outside a connector is told and not read. */
const tables: Plugin<[], Root> = () => (tree, file) => {
  walk(tree, (node, { ancestors }) => {
    if (node.type !== 'table') return undefined
    const reading = readHeader(node)
    const isInConnector = ancestors.some(
      ancestor =>
        ancestor.type === 'connector' || (ancestor.type === 'containerDirective' && ancestor.name === 'connector'),
    )
    if (reading?.holds === 'pins' && !isInConnector) {
      report(file, {
        rule: 'pin-table',
        place: node.children[0]?.position ?? node.position,
        reason: 'Unexpected pin table outside a connector, expected it inside `:::connector{#stalk-switch}` and `:::`',
      })
    } else if (reading !== null) node.data = { ...node.data, reading }
    return 'skip'
  })
}

export default tables
