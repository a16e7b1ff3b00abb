import type { Words } from '../facts/fact.ts'
import type { Place } from '../findings/place.ts'

/** A note opened a job or a temporary fix, closed it or opened it again. */
export interface Turn {
  readonly open: boolean
  readonly place: Place
  readonly session: string | null
}

export interface Job {
  readonly id: string
  readonly text: string
  readonly words: Words
  readonly open: boolean
  readonly before: string | null
  /** Where it was first written; `closed`, where it was closed last, null while it is open. */
  readonly place: Place
  readonly session: string | null
  readonly closed: Turn | null
  /** Every opening and closing, oldest first. */
  readonly turns: readonly Turn[]
}

export interface Temporary {
  readonly id: string
  readonly what: string
  readonly words: Words
  readonly part: string | null
  readonly until: Words | null
  readonly before: string | null
  readonly open: boolean
  readonly place: Place
  readonly session: string | null
  readonly cleared: Turn | null
  /** Every opening and clearing, oldest first. */
  readonly turns: readonly Turn[]
}
