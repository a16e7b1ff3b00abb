import type { Thing } from '../../record/record.ts'
import { wireColours } from '../../record/wire-colours.ts'
import type { FoundMember, Input, Member } from '../input.ts'
import { isLive, pathOf, targetOf, usedWords, wordsOf } from '../look-up.ts'
import type { Scope } from '../scope.ts'
import { type SubjectSource, things } from '../subjects.ts'

/** Each loom in which a live circuit runs whose cable has a colour. */
export function colouredLooms(): SubjectSource {
  const source = things('loom', 'each loom in which a live circuit has a colour')
  return {
    ...source,
    find: record =>
      source.find(record).map(one => ({
        ...one,
        isCurrent: record.circuits.some(
          circuit => runsIn(circuit, one.subject.id) && wordsOf(circuit, 'cable.colour') !== null,
        ),
      })),
  }
}

/** The supply wire of a circuit in the loom that is asked about: its colours by name, and whether it is an earth. */
type LoomWire = Member<{ readonly colour: string; readonly earth: string | null }>

/** The wires of the circuits in a loom; their return cables are no wires that could be mistaken. A colour that is not written is missing. */
export function wiresInLoom(): Input<readonly LoomWire[]> {
  return {
    symbol: null,
    meaning: 'wires of the live circuits in the loom',
    dimension: null,
    reads: ['circuit/loom', 'circuit/cable.colour', 'pin/carries'],
    read: scope => {
      const circuits = scope.record.circuits.filter(circuit => runsIn(circuit, scope.subject.id))
      const found = circuits.map(circuit => wireOf(circuit, { scope, isAlone: circuits.length < 2 }))
      const members = found.filter(member => member !== null)
      return members.length < found.length ? null : { type: 'members', members }
    },
  }
}

const runsIn = (circuit: Thing, loom: string): boolean => isLive(circuit) && wordsOf(circuit, 'loom') === loom

function wireOf(circuit: Thing, { scope, isAlone }: { scope: Scope; isAlone: boolean }): FoundMember | null {
  usedWords(scope, circuit, 'loom')
  const text = usedWords(scope, circuit, 'cable.colour')
  if (text === null && !isAlone) {
    scope.notebook.need(targetOf(circuit, 'cable.colour').path, 'the colour of the cable is not written')
    return null
  }
  const isEarth = isEarthWire(circuit, scope)
  return {
    path: pathOf(circuit),
    name: circuit.name,
    fields: {
      colour: { type: 'words', words: colourNamed(text ?? '', { circuit, scope }) },
      earth: isEarth ? { type: 'words', words: 'earth' } : { type: 'none' },
    },
  }
}

/** `green/violet`, however it was written; a colour that is not known stands as its own words. */
function colourNamed(text: string, { circuit, scope }: { circuit: Thing; scope: Scope }): string {
  const colours = wireColours(text)
  if (colours !== null || text === '') return colours?.join('/') ?? ''
  scope.notebook.note(
    `The colour \`${text}\` of ${circuit.id} is compared as it is written, since its words are not known.`,
  )
  return text.trim().toLowerCase()
}

const earthWords = /(^|[^a-z0-9])(earth|ground|31)($|[^a-z0-9])/i // DIN 72552: terminal 31 is the battery's negative

/** A wire that goes to earth: by the name or the words of its circuit, or a connector's way that carries 31. */
function isEarthWire(circuit: Thing, { record }: Scope): boolean {
  const carried = record.connectors.flatMap(({ pins }) =>
    pins.filter(pin => said(pin, 'circuit') === circuit.id).map(pin => said(pin, 'carries') ?? ''),
  )
  return [circuit.id, circuit.name, wordsOf(circuit, 'feeds') ?? '', ...carried].some(words => earthWords.test(words))
}

function said(pin: Pick<Thing, 'properties'>, key: string): string | null {
  const value = pin.properties[key]?.at(-1)?.value
  if (value?.type === 'quantity') return value.quantity.text
  return value?.type === 'words' ? value.words.text : null
}
