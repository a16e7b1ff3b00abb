import { folderName } from '../record/folder-name.ts'

/**
 * The address of a page within the record, decoded, as it stands in the output folder. A name that could leave its folder
 * or take a file of ours has the offending characters written as `~2f`.
 */
export function pageAddress(...folders: readonly string[]): string {
  return [...folders.map(folderName), 'index.html'].join('/')
}

/** An anchor from a path such as `fuel-tank/length`; ours begin with `m-`, `p-` and so on, never with `h-`, `n-` or `q-`. */
export function anchorName(prefix: string, path: string): string {
  return `${prefix}-${path.replace(/[^\p{L}\p{N}.-]+/gu, '_')}`
}

const needsNone = /^[\w./~-]*$/ // nothing in it is encoded in an address

/** From one page of the record to another place in it, so that links work from a disk. `to` may end in `#anchor`. */
export function relativeHref(from: string, to: string): string {
  // A name may hold a # of its own; an anchor holds neither # nor a slash.
  const [, path = '', anchor] = /^(.*?)(?:#([^#/]*))?$/s.exec(to) ?? []
  const fragment = anchor === undefined ? '' : `#${encodeURIComponent(anchor)}`
  if (path === from && fragment !== '') return fragment
  const [start, goal] = [from.split('/').slice(0, -1), path.split('/')]
  let shared = 0
  while (shared < start.length && shared < goal.length - 1 && start[shared] === goal[shared]) shared++
  const up = '../'.repeat(start.length - shared)
  const rest = goal.slice(shared)
  return `${up}${(needsNone.test(path) ? rest : rest.map(encodeURIComponent)).join('/')}${fragment}`
}
