import type { Place } from '../findings/place.ts'
import type { FrontEntry } from '../notes/front.ts'
import { addReference } from './add-reference.ts'
import { doubtfulColour } from './colour.ts'
import type { FactValue, Subject, Words } from './fact.ts'
import type { Referral } from './fields.ts'
import { printPath } from './identifier.ts'
import { oneOf, quoted } from './quoted.ts'
import { addFact, report, type Sheet } from './sheet.ts'
import type { Figure } from './stated-note.ts'

/** Whose properties are stated; `key` is in front of the keys of a nested mapping: `fuse.`. */
export interface Target {
  readonly subject: Subject
  readonly role: Figure['role']
  readonly key: string
}

/** The path of a key for sentences and figures: `circuit:fuel-pump/fuse.rating`. */
export const pathOf = (target: Target, key: string): string => printPath(target.subject, target.key + key)

interface PropertyStated {
  readonly entry: FrontEntry
  readonly value: FactValue
  readonly place: Place
  readonly figure?: string
}

/** States one property of the target; no observation. */
export function stateValue(sheet: Sheet, target: Target, { entry, value, place, figure }: PropertyStated): void {
  addFact(sheet, {
    type: 'property',
    subject: target.subject,
    key: target.key + entry.key,
    keyPlace: entry.keyPlace,
    value,
    place,
    figure: figure ?? null,
    observed: false,
    with: null,
    note: null,
    supersedes: false,
    bare: false,
  })
}

/** Says where a name must lead, if it must. */
export function refer(
  sheet: Sheet,
  referral: Referral | undefined,
  { words, place }: { words: Words; place: Place },
): void {
  const reference = referral?.(words.text, sheet.file) ?? null
  if (reference !== null) addReference(sheet, { name: words.text, ...reference, place })
}

/** Warns of a letter that may be two colours. */
export function reportColour(sheet: Sheet, { text, place, path }: { text: string; place: Place; path: string }): void {
  const doubt = doubtfulColour(text)
  if (doubt === null) return
  const message = `Unexpected \`${doubt.letters}\` in the colour ${quoted(text)}, expected ${oneOf(doubt.may)}`
  report(sheet, 'ambiguous-colour', { place, message, about: [path] })
}
