import type { Words } from '../facts/fact.ts'
import type { MarkedWords, WrittenKey } from '../facts/marked-words.ts'
import type { Notes } from '../record/fold-facts.ts'
import type { Edition, Ledger } from '../record/record.ts'
import { coverWords } from './cover-text.ts'
import { donorWords } from './donor-words.ts'
import { hiddenIdentifiers } from './hidden-identifiers.ts'
import { nameFinder } from './name-finder.ts'
import { photoName } from './photo-name.ts'
import { isHidden, type Withheld } from './withheld.ts'

/** A build as its notes state it, before anything is taken out. */
export interface StatedBuild {
  readonly notes: Notes
  readonly marked: readonly MarkedWords[]
  readonly keys: readonly WrittenKey[]
  readonly editions: readonly Edition[]
  /** What the donors cost together, in the build's currency. */
  readonly donorsTotal: Pick<Ledger, 'currency' | 'donors'>
}

/** What an edition takes out that is known only from all notes together. */
export interface BuildGround {
  readonly withheld: Withheld
  readonly isDonorPath: (path: string) => boolean
  readonly isHiddenPhoto: (address: string) => boolean
  readonly rename: (path: string) => string
  readonly covered: (words: Words) => Words
  /** Marked words of front matter that the edition withholds, by file: where a name is read, its marks are off. */
  readonly lostMarks: ReadonlyMap<string, readonly MarkedWords[]>
}

/** Reads all notes for what an edition has to take out of each of them. */
export function buildGround({ notes, marked }: StatedBuild, edition: Withheld): BuildGround {
  const stated = [notes.build, ...notes.sessions, ...(notes.inspection === null ? [] : [notes.inspection])]
  const facts = stated.flatMap(note => note.facts)
  const withheld = {
    ...edition,
    donorNames: edition.kinds.has('source') ? nameFinder(donorWords(facts)) : edition.donorNames,
  }
  const donors = new Set(facts.flatMap(fact => (fact.type === 'donor' ? [fact.id] : [])))
  const parts = new Set(facts.flatMap(fact => (fact.type === 'mention' ? [fact.part] : [])))
  const receipts = new Set<string>()
  for (const fact of facts)
    if (fact.type === 'property' && fact.key === 'receipt' && fact.value.type === 'words')
      receipts.add(photoName(fact.value.words.text))
  // A receipt says what was paid, to whom and where.
  const hidesReceipts = (['cost', 'source', 'place'] as const).some(kind => withheld.kinds.has(kind))
  const covered = (words: Words): Words => coverWords(words, withheld)
  const lost = marked.filter(({ within, as }) => within === 'front' && isHidden(withheld, [as]))
  return {
    withheld,
    covered,
    isDonorPath: path => withheld.kinds.has('source') && leadsToDonor(path, donors, parts),
    isHiddenPhoto: address => hidesReceipts && receipts.has(photoName(address)),
    rename: renaming(hiddenIdentifiers(facts, covered)),
    lostMarks: grouped(lost),
  }
}

function grouped(lost: readonly MarkedWords[]): Map<string, MarkedWords[]> {
  const byFile = new Map<string, MarkedWords[]>()
  for (const word of lost) byFile.set(word.place.file, [...(byFile.get(word.place.file) ?? []), word])
  return byFile
}

/** `donor:corvane/mass`, and `corvane/mass` where no part bears the name. */
function leadsToDonor(path: string, donors: ReadonlySet<string>, parts: ReadonlySet<string>): boolean {
  if (/^(?:measurement:)?donor:/.test(path)) return true
  const id = path.replace(/^measurement:/, '').split('/')[0] ?? ''
  return donors.has(id) && !parts.has(id)
}

/** Replaces an identifier alone, behind a kind, and before a property. */
function renaming(names: ReadonlyMap<string, string>): (path: string) => string {
  return path => {
    const match = /^([a-z-]+:)?([^/:]+)(\/.*)?$/s.exec(path)
    const instead = names.get(match?.[2] ?? '')
    return match === null || instead === undefined ? path : `${match[1] ?? ''}${instead}${match[3] ?? ''}`
  }
}
