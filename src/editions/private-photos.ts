import type { Nodes } from 'mdast'
import type {} from '../../plugins/figures/node.ts'
import type { PrivateBlockNode } from '../../plugins/private/node.ts'
import type { ReferenceFact } from '../facts/fact.ts'
import type { Finding } from '../findings/finding.ts'
import type { Notes } from '../record/fold-facts.ts'
import type { Edition } from '../record/record.ts'
import { photoName } from './photo-name.ts'
import { isHidden, type Withheld, withheldBy } from './withheld.ts'

type Kind = PrivateBlockNode['as']

/** Pictures that some edition withholds and that are named as evidence: it shows them as neither. */
export function privateEvidence(notes: Notes, editions: readonly Edition[]): Finding[] {
  const showings = photoShowings(notes)
  return (notes.inspection?.facts ?? []).flatMap(fact => {
    if (fact.type !== 'reference' || fact.to !== 'photo') return []
    const hidden = editions.flatMap(({ name }) => {
      const withheld = withheldBy(editions, name)
      return withheld !== null && isPrivateOnly(showings, fact.name, withheld) ? [`\`${name}\``] : []
    })
    return hidden.length === 0 ? [] : [evidenceFinding(fact, hidden)]
  })
}

/** By the picture's name: in which private marks it stands, for each time that a note shows, links or names it. */
type PhotoShowings = ReadonlyMap<string, readonly (readonly Kind[])[]>

/** Where the notes show each picture; as evidence it is named, not shown. */
function photoShowings({ build, sessions }: Notes): PhotoShowings {
  const showings = new Map<string, (readonly Kind[])[]>()
  const show = (address: string, around: readonly Kind[]): void => {
    const name = photoName(address)
    showings.set(name, [...(showings.get(name) ?? []), around])
  }
  const walk = (node: Nodes, around: readonly Kind[]): void => {
    if (node.type === 'image' || node.type === 'link') show(node.url, around)
    const within = node.type === 'private' || node.type === 'privateBlock' ? [...around, node.as] : around
    if ('children' in node) for (const child of node.children) walk(child, within)
  }
  for (const { body, facts } of [build, ...sessions]) {
    walk(body, [])
    for (const fact of facts)
      if (fact.type === 'property' && fact.key === 'photos' && fact.value.type === 'list')
        for (const { words } of fact.value.entries) show(words.text, [])
  }
  return showings
}

/** Whether a picture is shown, and each time only inside marks that the edition withholds. */
function isPrivateOnly(showings: PhotoShowings, address: string, withheld: Withheld): boolean {
  const own = showings.get(photoName(address)) ?? []
  return own.length > 0 && own.every(around => isHidden(withheld, around))
}

function evidenceFinding({ name, place }: ReferenceFact, hidden: readonly string[]): Finding {
  const { file, line, column, endLine, endColumn } = place
  const each = hidden.length === 1 ? 'the edition' : 'each of the editions'
  return {
    rule: 'private-evidence',
    severity: 'warning',
    file,
    line,
    column,
    endLine,
    endColumn,
    message: `Unexpected picture \`${name}\` as evidence, which stands only inside private marks, expected one that stands outside them: ${each} ${hidden.join(', ')} shows neither it nor its name.`,
    mend: null,
    about: [],
    related: [],
  }
}
