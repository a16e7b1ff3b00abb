import type { Nodes, Root } from 'mdast'

/**
 * A footnote that only withheld words refer to goes with them; so does every definition of an address that no
 * remaining link needs, since pictures and things took theirs when the note was read.
 */
export function dropUnreferenced(original: Root, covered: Root, dropped: (node: Nodes) => void): Root {
  const before = reachable(original)
  const after = reachable(covered)
  const prune = (node: Nodes): Nodes[] => {
    if (node.type === 'definition' && !after.addresses.has(node.identifier)) return []
    if (node.type === 'footnoteDefinition' && before.notes.has(node.identifier) && !after.notes.has(node.identifier)) {
      dropped(node)
      return []
    }
    if (!('children' in node)) return [node]
    return [{ ...node, children: node.children.flatMap(prune) } as unknown as Nodes]
  }
  return prune(covered)[0] as Root
}

interface Reached {
  readonly notes: Set<string>
  readonly addresses: Set<string>
}

/** Footnotes and addresses to which the text leads, through footnotes too. */
function reachable(root: Root): Reached {
  const reached: Reached = { notes: new Set(), addresses: new Set() }
  const footnotes = new Map<string, Nodes>()
  const gather = (node: Nodes): void => {
    if (node.type === 'footnoteDefinition' && !footnotes.has(node.identifier)) footnotes.set(node.identifier, node)
    if ('children' in node) node.children.forEach(gather)
  }
  gather(root)
  const follow = (node: Nodes): void => {
    if (node.type === 'linkReference' || node.type === 'imageReference') reached.addresses.add(node.identifier)
    if (node.type === 'footnoteReference' && !reached.notes.has(node.identifier)) {
      reached.notes.add(node.identifier)
      const note = footnotes.get(node.identifier)
      if (note !== undefined && 'children' in note) note.children.forEach(follow)
    }
    if ('children' in node && node.type !== 'footnoteDefinition') node.children.forEach(follow)
  }
  follow(root)
  return reached
}
