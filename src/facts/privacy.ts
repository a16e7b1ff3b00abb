import type { PrivateKind } from '../../plugins/private/node.ts'
import { privateKinds } from './closed-words.ts'
import type { Words } from './fact.ts'

/** What stands around a node that has to do with who may see it; `broken` stands for every kind. */
export type Privacy = readonly (PrivateKind | 'broken')[]

/** The kinds that a stretch of privacy stands for, each once. */
export function kindsOf(privacy: Privacy): readonly PrivateKind[] {
  return privateKinds.filter(kind => privacy.includes('broken') || privacy.includes(kind))
}

/** Marks over a whole text for what stands around it. */
export function markWhole(text: string, privacy: Privacy): Words['marks'] {
  return kindsOf(privacy).map(as => ({ start: 0, end: text.length, as }))
}
