import type { ConnectorNode } from '../../plugins/connector/node.ts'
import type { KindsStated } from './kinds-stated.ts'
import type { Privacy } from './privacy.ts'

/** What stands around a node of the body. */
export interface Around {
  readonly privacy: Privacy
  readonly connector: ConnectorNode | null
  readonly kinds: KindsStated
}
