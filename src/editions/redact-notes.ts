import type { DonorFact } from '../facts/fact.ts'
import type { MarkedWords } from '../facts/marked-words.ts'
import type { StatedNote } from '../facts/stated-note.ts'
import type { Notes } from '../record/fold-facts.ts'
import { coverNote } from './cover-note.ts'
import { donorWords } from './donor-words.ts'
import { buildGround, type StatedBuild } from './edition-notes.ts'
import type { NameHit } from './find-in-fields.ts'
import { findNames } from './find-names.ts'
import { nameFinder } from './name-finder.ts'
import { photoName } from './photo-name.ts'
import type { Taken } from './taken.ts'
import { withdrawnPhotos } from './withdrawn-photos.ts'
import { isHidden, neutralMark, type Withheld } from './withheld.ts'

export interface RedactedNotes {
  readonly notes: Notes
  /** What was taken out, in the order of the notes, for the builder's eyes only. */
  readonly taken: readonly Taken[]
  /** Withheld words that still stand where they would be published. */
  readonly hits: readonly NameHit[]
  readonly words: readonly MarkedWords[]
}

/** All notes as an edition may see them, and where withheld words are left in them unmarked. */
export function redactNotes(stated: StatedBuild, withheld: Withheld): RedactedNotes {
  const ground = buildGround(stated, withheld)
  const { notes } = stated
  const inspectionFile = notes.build.build?.file.replace(/build\.md$/, 'inspection.yaml') ?? 'content/inspection.yaml'
  const build = coverNote(notes.build, notes.build.build?.file ?? '', ground)
  const sessions = notes.sessions.map(note => coverNote(note, note.session?.file ?? '', ground))
  const told = [build, ...sessions].map(({ note }) => note)
  const withdrawn = withdrawnPhotos([notes.build, ...notes.sessions], told)
  const isHiddenPhoto = (address: string): boolean => ground.isHiddenPhoto(address) || withdrawn.has(photoName(address))
  const inspection =
    notes.inspection === null ? null : coverNote(notes.inspection, inspectionFile, { ...ground, isHiddenPhoto })
  const all = [build, ...sessions, ...(inspection === null ? [] : [inspection])]
  const words = soughtWords(stated, withheld)
  const find = nameFinder(words)
  const covered: Notes = {
    build: withDonors(build.note, stated, withheld),
    sessions: sessions.map(({ note }) => note),
    inspection: inspection?.note ?? null,
  }
  const fileOf = ({ session, build: head }: StatedNote): string => session?.file ?? head?.file ?? inspectionFile
  return {
    notes: covered,
    taken: [...all.flatMap(({ taken }) => taken), ...takenMarks(stated, withheld)],
    hits: all.flatMap(({ note }) => findNames(note, { file: fileOf(note), find, keys: stated.keys })),
    words,
  }
}

/** Words that must stand nowhere: inline marks as people, place and identity, and what counts as identity or names a donor without one. */
function soughtWords({ notes, marked }: StatedBuild, withheld: Withheld): MarkedWords[] {
  const sought = ['people', 'place', 'identity']
  const isSought = ({ as, within }: MarkedWords): boolean =>
    (sought.includes(as) || within === 'key') && isHidden(withheld, [as])
  const donors = withheld.kinds.has('source') ? donorWords(notes.build.facts) : []
  return [...marked.filter(isSought), ...(withheld.kinds.has('identity') ? identities(notes) : []), ...donors]
}

/** `identity:` and `serial:`; `none yet` says that there is no number, and is no number. */
function identities(notes: Notes): MarkedWords[] {
  const stated = (notes.build.build?.identity ?? []).map(({ words, place }) => ({ text: words.text, place }))
  const facts = [notes.build, ...notes.sessions].flatMap(note => note.facts)
  const serials = facts.flatMap(fact =>
    fact.type === 'property' && fact.key === 'serial' && fact.value.type === 'words'
      ? [{ text: fact.value.words.text, place: fact.place }]
      : [],
  )
  return [...stated, ...serials]
    .filter(({ text }) => /[\p{Lu}\p{Lo}\p{N}]/u.test(text))
    .map(({ text, place }) => ({ text, place, as: 'identity', within: 'front' }))
}

/** Marks in front matter, and what counts as identity; those in bodies were listed where they went. */
function takenMarks({ notes, marked }: StatedBuild, withheld: Withheld): Taken[] {
  const inFront = marked.filter(({ within, as }) => within === 'front' && isHidden(withheld, [as]))
  const identity = withheld.kinds.has('identity') ? (notes.build.build?.identity ?? []) : []
  return [
    ...inFront.map(({ place, as, text }): Taken => ({ place, as, what: text })),
    ...identity.map(({ place, words }): Taken => ({ place, as: 'identity', what: words.text })),
  ]
}

/** Where sources are withheld and cost is not, one line stands for all donors: the sum is right, and nobody is named or counted. */
function withDonors(build: StatedNote, { donorsTotal, notes }: StatedBuild, { kinds }: Withheld): StatedNote {
  const fence = notes.build.build?.fence
  if (!kinds.has('source') || kinds.has('cost') || fence === undefined || Number(donorsTotal.donors) === 0) return build
  const { currency, donors } = donorsTotal
  const donor: DonorFact = {
    type: 'donor',
    id: 'withheld',
    name: { text: neutralMark, marks: [] },
    cost: { amount: { amount: donors, currency }, place: fence, figure: null },
    place: fence,
    session: null,
  }
  return { ...build, facts: [donor, ...build.facts] }
}
