import type { Nodes } from 'mdast'
import type { ContainerDirective, LeafDirective, TextDirective } from 'mdast-util-directive'
import type { PrivateKind } from '../private/node.ts'

export type DirectiveNode = TextDirective | ContainerDirective | LeafDirective

const privateKinds: readonly PrivateKind[] = ['cost', 'source', 'people', 'place', 'identity']

export function isDirective(node: Nodes): node is DirectiveNode {
  return node.type === 'textDirective' || node.type === 'containerDirective' || node.type === 'leafDirective'
}

/** Why a `private` directive cannot be read, or null where it can. */
export function whatPrivateLacks(mark: DirectiveNode): string | null {
  if (mark.type === 'leafDirective')
    return 'Unexpected `::private`, expected `:private[…]{as=…}` in a line or `:::private{as=…}` around blocks'
  if (mark.type === 'textDirective' && mark.children.length === 0)
    return 'Unexpected `:private` without a label, expected `:private[…]{as=…}`'
  if (privateKindOf(mark) !== null) return null
  const written = mark.attributes?.as
  const what = written == null ? '`private` without `as`' : `\`as=${written}\` of \`private\``
  return `Unexpected ${what}, expected \`as\` to be one of ${privateKinds.join(', ')}`
}

export function privateKindOf(mark: DirectiveNode): PrivateKind | null {
  return privateKinds.find(kind => kind === mark.attributes?.as) ?? null
}
