import type { PrivateKind } from '../../plugins/private/node.ts'
import type { Place } from '../findings/place.ts'
import type { Quantity } from '../quantities/quantity.ts'

/** What a note can be about. `build` holds the settings of build.md: `build:electrical`. */
export type ThingKind =
  | 'part'
  | 'circuit'
  | 'connector'
  | 'loom'
  | 'donor'
  | 'system'
  | 'earth-point'
  | 'volume'
  | 'vehicle'
  | 'build'

export interface Subject {
  readonly kind: ThingKind
  readonly id: string
}

/** Words with their private marks taken off; `marks` are spans of `text`. */
export interface Words {
  readonly text: string
  readonly marks: readonly { readonly start: number; readonly end: number; readonly as: PrivateKind }[]
}

/** An amount of money: an exact decimal as text (`184.00`) and an ISO 4217 code. */
export interface Amount {
  readonly amount: string
  readonly currency: string
}

export type Shape =
  | { readonly form: 'box'; readonly length: Quantity; readonly width: Quantity; readonly height: Quantity }
  | { readonly form: 'cylinder'; readonly diameter: Quantity; readonly length: Quantity }
  | { readonly form: 'prism'; readonly corners: readonly (readonly [Quantity, Quantity])[]; readonly length: Quantity }

export interface PlacedShape {
  readonly text: string
  readonly shape: Shape
  readonly place: Place
  /** `q-n` of each figure in the order written. */
  readonly figures: readonly string[]
}

export type FactValue =
  | { readonly type: 'quantity'; readonly quantity: Quantity }
  | { readonly type: 'words'; readonly words: Words }
  | { readonly type: 'list'; readonly entries: readonly { readonly words: Words; readonly place: Place }[] }
  | { readonly type: 'shapes'; readonly shapes: readonly PlacedShape[] }
  /** `key: ~` takes a value back. */
  | { readonly type: 'nothing' }

interface Stated {
  readonly place: Place
  /** Null: said in build.md or inspection.yaml. */
  readonly session: string | null
}

/**
 * One property of one thing. Nested keys are joined by a dot: `fuse.rating`, `cable.area`, `cable.colour`, `return.area`,
 * `zones.engine-bay`, `battery.capacity`, `pins.31b.wire.area`, `pins.31b.wire.colour`, `pins.31b.to`.
 */
export interface PropertyFact extends Stated {
  readonly type: 'property'
  readonly subject: Subject
  readonly key: string
  readonly keyPlace: Place
  readonly value: FactValue
  /** `q-4` of the figure in its note. */
  readonly figure: string | null
  /** An observation, of which two that disagree are a finding; a statement replaces silently. */
  readonly observed: boolean
  readonly with: Words | null
  readonly note: Words | null
  readonly supersedes: boolean
  /** The kind was left open by a bare path: a part of that name goes first, then the one other thing that bears it. */
  readonly bare: boolean
}

export type Action =
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

/** A note that names a part: what was done to it and what was paid or came back. */
export interface MentionFact extends Stated {
  readonly type: 'mention'
  readonly part: string
  readonly keyPlace: Place
  readonly action: { readonly word: Action; readonly place: Place } | null
  readonly fits: 'yes' | 'no' | 'with-work' | null
  /** For each, as written; null where none was. */
  readonly cost: { readonly amount: Amount; readonly place: Place; readonly figure: string | null } | null
  /** As written, an exact decimal. */
  readonly qty: { readonly amount: string; readonly place: Place } | null
  readonly from: { readonly words: Words; readonly place: Place } | null
  readonly replaces: { readonly id: string; readonly place: Place } | null
  readonly why: { readonly words: Words; readonly place: Place } | null
}

export interface SpendFact extends Stated {
  readonly type: 'spend'
  readonly what: Words
  readonly cost: { readonly amount: Amount; readonly place: Place; readonly figure: string | null } | null
  readonly qty: string | null
  readonly system: string | null
  readonly from: Words | null
}

export interface DonorFact extends Stated {
  readonly type: 'donor'
  readonly id: string
  readonly name: Words | null
  readonly cost: { readonly amount: Amount; readonly place: Place; readonly figure: string | null } | null
}

export interface JobFact extends Stated {
  readonly type: 'job'
  readonly id: string
  readonly explicit: boolean
  readonly words: Words
  readonly done: boolean
  readonly before: string | null
}

export interface TemporaryFact extends Stated {
  readonly type: 'temporary'
  readonly id: string
  readonly what: Words
  readonly part: string | null
  readonly until: Words | null
  readonly before: string | null
}

/** `closes:` and `clears:`: by identifier or by the same words. */
export interface ClosingFact extends Stated {
  readonly type: 'closing'
  readonly of: 'job' | 'temporary'
  readonly named: string
}

interface TestFact extends Stated {
  readonly type: 'test'
  readonly what: Words
  readonly result: 'pass' | 'fail' | 'partial'
  readonly note: Words | null
}

/** A name that must lead somewhere; looked up when all notes are folded. `near` only warns of a close name. */
export interface ReferenceFact extends Stated {
  readonly type: 'reference'
  readonly to:
    | 'part'
    | 'circuit'
    | 'connector'
    | 'loom'
    | 'donor'
    | 'system'
    | 'earth-point'
    | 'zone'
    | 'fuse-box'
    | 'measurement'
    | 'session'
    | 'job'
    | 'check'
    | 'test'
    | 'photo'
    | 'note'
    | 'path'
  readonly name: string
  readonly strictness: 'must-exist' | 'near-only'
}

interface LimitFact extends Stated {
  readonly type: 'limit'
  readonly check: string
  /** A subject, or a group such as `lighting`; null for the whole check. */
  readonly of: string | null
  readonly keyPlace: Place
  readonly min: Quantity | null
  readonly max: Quantity | null
  readonly why: Words | null
}

interface RequirementFact extends Stated {
  readonly type: 'requirement'
  readonly path: string
  readonly keyPlace: Place
  readonly value: Quantity
}

/** `check:voltage-drop: all circuits`: ask whatever is there. */
interface AskingFact extends Stated {
  readonly type: 'asking'
  readonly check: string
  /** Null: all subjects. */
  readonly subjects: readonly string[] | null
}

interface EditionFact extends Stated {
  readonly type: 'edition'
  readonly name: string
  readonly withhold: readonly PrivateKind[]
}

interface InspectionFact extends Stated {
  readonly type: 'inspection'
  readonly id: string
  readonly ask: Words
  readonly before: string | null
  readonly evidence: readonly { readonly ref: string; readonly place: Place }[]
}

export type Fact =
  | PropertyFact
  | MentionFact
  | SpendFact
  | DonorFact
  | JobFact
  | TemporaryFact
  | ClosingFact
  | TestFact
  | ReferenceFact
  | LimitFact
  | RequirementFact
  | AskingFact
  | EditionFact
  | InspectionFact
