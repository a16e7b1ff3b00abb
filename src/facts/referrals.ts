import { photoPath } from './content-path.ts'
import type { ReferenceFact } from './fact.ts'
import type { Referral } from './fields.ts'
import { isIdentifier } from './identifier.ts'

/** A name that must lead to a thing of this kind. */
export const must =
  (to: ReferenceFact['to']): Referral =>
  () => ({ to, strictness: 'must-exist' })

/** A name that may be words of the builder's own: only a near one is worth a warning. */
export const near =
  (to: ReferenceFact['to']): Referral =>
  text =>
    isIdentifier(text) ? { to, strictness: 'near-only' } : null

/** The address of a picture. */
export const photo: Referral = (text, file) => ({ to: 'photo', name: photoPath(text, file), strictness: 'must-exist' })
/** A donor, or words of the builder's own. */
export const source: Referral = () => ({ to: 'donor', strictness: 'near-only' })
