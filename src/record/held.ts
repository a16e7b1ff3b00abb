import type { Place } from '../findings/place.ts'

/** A value with the words that state it. `session` null: build.md. */
export interface Held<T> {
  readonly value: T
  readonly place: Place
  readonly session: string | null
  readonly figure: string | null
}
