import type { Dimension } from '../quantities/quantity.ts'
import type { Field, Referral } from './fields.ts'

/** A figure of one of these dimensions. */
export const figure = (...dimensions: Dimension[]): Field => ({ holds: 'figure', dimensions })

/** Words, which may have to lead somewhere. */
export const words = (refer?: Referral): Field => (refer === undefined ? { holds: 'words' } : { holds: 'words', refer })

/** One word of a list. */
export const closed = (list: readonly string[]): Field => ({ holds: 'closed', words: list })
