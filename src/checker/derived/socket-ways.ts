import type { Found, FoundMember, Input, Member } from '../input.ts'
import { optional } from '../inputs/value.ts'
import { optionalWords } from '../inputs/words.ts'
import { statedLeaf } from '../leaf.ts'
import { lookUp, targetOf, usedWords } from '../look-up.ts'
import { type CheckSubject, type Scope, withSubject } from '../scope.ts'
import { parts, type SubjectSource } from '../subjects.ts'
import type { SocketContact } from '../tables/socket-contact.ts'
import { fitsContact, isBlank, socketStandard } from '../tables/trailer-sockets.ts'
import { pinsOfSubject } from './connector-pins.ts'

/** Each trailer socket whose standard or whose ways are written. */
export function trailerSockets(): SubjectSource {
  const source = parts(['trailer-socket'], 'each trailer socket whose standard or whose ways are written')
  return {
    ...source,
    find: record =>
      source.find(record).map(one => ({
        ...one,
        isCurrent:
          one.isCurrent &&
          (one.subject.thing?.properties.standard !== undefined ||
            record.connectors.some(({ id, pins }) => id === one.subject.id && pins.length > 0)),
      })),
  }
}

/** One way of a socket beside what its standard puts there. */
export type SocketWay = Member<{
  /** Null: the way is not in the record and may be left free. */
  readonly carries: string | null
  /** The function of the contact; null where the standard has no such contact. */
  readonly wanted: string | null
  readonly fits: string | null
  readonly section: number | null
  readonly least: number | null
  /** It may not be left free, since the contact that it is the return of is used. */
  readonly needed: string | null
  /** Not null: what else may be on this contact, which differs by market. */
  readonly differs: string | null
}>

/** The ways of the connector of the socket's name, and the contacts of its standard. What a way that must be used carries is missing where it is not written. */
export function socketWays(): Input<readonly SocketWay[]> {
  return {
    symbol: null,
    meaning: "ways of the connector of the socket's name",
    dimension: null,
    reads: ['trailer-socket/standard', 'pin/carries', 'pin/wire.area'],
    tables: ['ISO 1724', 'ISO 11446', 'ISO 3732'],
    read: readWays,
  }
}

function readWays(scope: Scope): Found | null {
  const standard = standardOf(scope)
  const pins = pinsOfSubject(scope)
  if (pins.length === 0)
    scope.notebook.need(`connector:${scope.subject.id}/pins`, 'the ways of the socket are not written')
  if (standard === null || pins.length === 0) return null
  scope.notebook.look({
    table: 'Trailer socket',
    row: `${standard.name}, ${standard.contacts.length} contacts; cores, informative: ${coresOf(standard.contacts)}`,
    source: standard.name,
  })
  const strange = pins.filter(({ name }) => !standard.contacts.some(({ contact }) => contact === name))
  const members = [
    ...inOrder(standard.contacts).map(contact => contactOf(scope, { contact, pins })),
    ...strange.map(pin => strangeWay(scope, pin)),
  ]
  return members.includes(null) && scope.leavesOut !== true
    ? null
    : { type: 'members', members: members.filter(member => member !== null) }
}

const inOrder = (contacts: readonly SocketContact[]): SocketContact[] =>
  [...contacts].sort((one, other) => Number(one.contact) - Number(other.contact))

const coresOf = (contacts: readonly SocketContact[]): string =>
  inOrder(contacts)
    .flatMap(({ contact, colour }) => (colour === null ? [] : [`${contact} ${colour}`]))
    .join(', ')

function standardOf(scope: Scope): ReturnType<typeof socketStandard> {
  const { path } = lookUp(scope, 'trailer-socket/standard')
  const words = scope.subject.thing === null ? null : usedWords(scope, scope.subject.thing, 'standard')
  const standard = words === null ? null : socketStandard(words)
  if (words === null) scope.notebook.need(path, 'the standard of the socket is not written')
  else if (standard === null)
    scope.notebook.need(path, `of \`${words}\` no allocation is held, only of ISO 1724, ISO 3732 and ISO 11446`)
  return standard
}

const carriedBy = optionalWords({ of: 'pin/carries', meaning: 'what it carries' })
const sectionOf = optional({
  of: 'pin/wire.area',
  symbol: 'A',
  meaning: 'section of the wire',
  dimension: 'area',
  unit: 'mm2',
  exact: true,
})

const none: Found = { type: 'none' }
const words = (text: string): Found => ({ type: 'words', words: text })
const pathOf = (scope: Scope, way: string): string => `connector:${scope.subject.id}/pins.${way}`

interface Contact {
  readonly contact: SocketContact
  readonly pins: readonly CheckSubject[]
}

function contactOf(scope: Scope, { contact, pins }: Contact): FoundMember | null {
  const pin = pins.find(({ name }) => name === contact.contact)
  if (pin === undefined) return absentWay(scope, { contact, pins })
  const at = withSubject(scope, pin)
  const [carries, section] = [carriedBy.read(at), sectionOf.read(at)]
  if (carries?.type !== 'words') return needOf(at, 'carries', 'what it carries is not written')
  if (section === null) return null
  const isFree = contact.free === true && isBlank(carries.words)
  const isSized = contact.section !== null && !isFree
  if (section.type === 'none' && isSized) return needOf(at, 'wire.area', 'the section of the wire is not written')
  return {
    path: pathOf(scope, contact.contact),
    name: contact.contact,
    fields: {
      carries,
      wanted: words(contact.function),
      fits: isFree || fitsContact(contact, carries.words) ? words('yes') : none,
      section,
      least: isSized ? leastSection(contact.section ?? 0) : none,
      needed: none,
      differs: contact.differs === true && !isBlank(carries.words) ? words(contact.function) : none,
    },
  }
}

const leastSection = (section: number): Found => ({
  type: 'figure',
  term: statedLeaf('table', { symbol: 'A_0', meaning: 'section by the standard', value: section, unit: 'mm2' }),
})

/** A contact that the record does not name: it may be left free, or it may not, or nothing can be told of it. */
function absentWay(scope: Scope, { contact, pins }: Contact): FoundMember | null {
  const path = pathOf(scope, contact.contact)
  if (contact.free !== true) {
    scope.notebook.need(`${path}.carries`, `what contact ${contact.contact} carries is not written`)
    return null
  }
  const supply = pins.find(({ name }) => name === contact.withContact)
  const carried = supply === undefined ? null : carriedBy.read(withSubject(scope, supply))
  const isNeeded = carried?.type === 'words' && !isBlank(carried.words)
  const fields = {
    carries: none,
    wanted: words(contact.function),
    fits: words('yes'),
    section: none,
    least: none,
    needed: isNeeded ? words(contact.withContact ?? '') : none,
    differs: none,
  }
  return { path, name: contact.contact, fields }
}

/** A way that the standard has not. */
function strangeWay(scope: Scope, pin: CheckSubject): FoundMember {
  const carries = carriedBy.read(withSubject(scope, pin)) ?? none
  const fields = { carries, wanted: none, fits: none, section: none, least: none, needed: none, differs: none }
  return { path: pathOf(scope, pin.name), name: pin.name, fields }
}

function needOf(scope: Scope, key: string, why: string): null {
  const { thing, prefix } = scope.subject
  if (thing !== null) scope.notebook.need(targetOf(thing, `${prefix}${key}`).path, why)
  return null
}
