import type { Root } from 'mdast'
import type { Action, Amount, FactValue, PlacedShape, Subject, Words } from '../facts/fact.ts'
import type { BuildHead, Figure } from '../facts/stated-note.ts'
import type { Place } from '../findings/place.ts'
import type { Quantity } from '../quantities/quantity.ts'
import type { Held } from './held.ts'
import type { Job, Temporary } from './job.ts'
import type { Ledger, Spend } from './ledger.ts'

export type { LedgerLine } from './ledger.ts'
export type { Held, Job, Ledger, Spend, Temporary }

/** One thing and all that was said of each of its properties, oldest first; the last entry is what stands. */
export interface Thing {
  readonly kind: Subject['kind']
  readonly id: string
  /** Words for a reader: `name:`, else the identifier with spaces. */
  readonly name: string
  readonly named: Held<Words> | null
  readonly properties: Readonly<Record<string, readonly Held<FactValue>[]>>
  readonly first: Place
}

export interface PartEvent {
  readonly session: string | null
  readonly action: Action
  /** False: a first mention without an action means fitted; the fitting of a part that takes the place removes this one. */
  readonly written: boolean
  readonly place: Place
  readonly fits: 'yes' | 'no' | 'with-work' | null
  readonly qty: string
  readonly cost: Held<Amount> | null
  readonly from: Held<Words> | null
  readonly why: Held<Words> | null
}

export type PartState =
  | 'ordered'
  | 'received'
  | 'made'
  | 'modified'
  | 'trial-fitted'
  | 'fitted'
  | 'removed'
  | 'rejected'
  | 'returned'
  | 'sold'
  | 'scrapped'

export interface Part extends Thing {
  /** `tank`, `strap` …; null where none was said. */
  readonly partKind: string | null
  readonly system: string | null
  readonly state: PartState
  readonly onVehicle: boolean
  /** Of the last fitting, an exact decimal as text. */
  readonly qty: string
  readonly from: Held<Words> | null
  /** The donor it came from, where `from` names one. */
  readonly donor: string | null
  /** The price of one, as written last. */
  readonly cost: Held<Amount> | null
  /** Price of one with what was added to it, times `qty`, in the build's currency; null where no price is known. */
  readonly value: string | null
  readonly events: readonly PartEvent[]
  /** Later mentions without an action that said more than a property; `action` is the state they left as it was. */
  readonly mentions: readonly PartEvent[]
  readonly replaces: string | null
  readonly replacedBy: string | null
}

export interface Pin {
  readonly pin: string
  readonly place: Place
  readonly session: string | null
  readonly properties: Readonly<Record<string, readonly Held<FactValue>[]>>
}

export interface Connector extends Thing {
  readonly mates: string | null
  readonly pins: readonly Pin[]
}

export interface Volume {
  readonly part: string
  readonly outside: Held<PlacedShape> | null
  readonly less: readonly Held<PlacedShape>[]
  readonly wall: Held<Quantity> | null
  /** All that was said of it, oldest first; `wall` is a property of the part. */
  readonly properties: Thing['properties']
}

export interface FuseBox {
  readonly id: string
  readonly ways: number | null
  /** By way, in the order of the ways; a way without a circuit is spare. */
  readonly used: readonly { readonly way: string; readonly circuits: readonly string[] }[]
  /** Circuits that name the box and no way. */
  readonly unplaced: readonly string[]
}

export interface Measurement {
  /** As record.json prints it: `fuel-tank/length`, with the kind in front where it is no part. */
  readonly path: string
  readonly subject: Subject
  readonly property: string
  readonly quantity: Quantity
  readonly with: string | null
  readonly note: string | null
  /** The same with their private marks. */
  readonly withWords: Words | null
  readonly noteWords: Words | null
  readonly session: string | null
  readonly place: Place
  readonly figure: string | null
  /** A later note measured it again. */
  readonly superseded: boolean
}

export interface Session {
  readonly id: string
  /** Its place in the order of dates, from 1. */
  readonly number: number
  /** ISO 8601; empty where the note has none that exists. */
  readonly date: string
  readonly title: Words
  /** Who wrote its note; null where neither it nor build.md says. */
  readonly by: Words | null
  readonly hours: string | null
  readonly file: string
  readonly body: Root
  readonly figures: readonly Figure[]
}

export interface Test {
  readonly what: string
  readonly words: Words
  readonly result: 'pass' | 'fail' | 'partial'
  readonly note: Words | null
  readonly place: Place
  readonly session: string | null
}

export interface Limit {
  readonly check: string
  readonly of: string | null
  readonly min: Quantity | null
  readonly max: Quantity | null
  readonly why: string | null
  /** The same with its private marks. */
  readonly whyWords: Words | null
  readonly place: Place
}

export interface Requirement {
  readonly path: string
  /** Null: no such thing yet. */
  readonly subject: Subject | null
  readonly property: string
  readonly value: Quantity
  readonly place: Place
}

export interface Asking {
  readonly check: string
  readonly subjects: readonly string[] | null
  readonly place: Place
}

export interface InspectionPoint {
  readonly id: string
  readonly ask: Words
  readonly before: string | null
  readonly evidence: readonly { readonly ref: string; readonly place: Place }[]
  readonly place: Place
}

export interface Edition {
  readonly name: string
  readonly withhold: readonly string[]
}

/** The fold of all notes: what is there, and all that was said before. Every value keeps its place. */
export interface AsBuiltRecord {
  readonly build: BuildHead & { readonly body: Root; readonly figures: readonly Figure[] }
  /** `build:electrical` with nominal, charging, ambient, zones.*, alternator, battery.*. */
  readonly settings: Thing
  readonly vehicle: Thing
  readonly sessions: readonly Session[]
  readonly parts: readonly Part[]
  readonly circuits: readonly Thing[]
  readonly connectors: readonly Connector[]
  readonly looms: readonly Thing[]
  readonly fuseBoxes: readonly FuseBox[]
  readonly earthPoints: readonly Thing[]
  readonly donors: readonly Thing[]
  readonly systems: readonly Thing[]
  readonly volumes: readonly Volume[]
  /** Things that were measured and that nobody declared; `part` where no kind was written. */
  readonly measured: readonly Thing[]
  readonly measurements: readonly Measurement[]
  readonly jobs: readonly Job[]
  readonly temporary: readonly Temporary[]
  readonly tests: readonly Test[]
  readonly spend: readonly Spend[]
  readonly ledger: Ledger
  readonly limits: readonly Limit[]
  readonly requirements: readonly Requirement[]
  readonly askings: readonly Asking[]
  readonly editions: readonly Edition[]
  readonly inspection: {
    readonly rule: string | null
    /** The same with its private marks. */
    readonly ruleWords: Words | null
    readonly authority: Words | null
    readonly points: readonly InspectionPoint[]
  }
}
