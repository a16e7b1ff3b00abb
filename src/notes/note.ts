import type { Root } from 'mdast'
import type { Finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import type { FrontMap } from './front.ts'

/** One file of `content/`, read once. Plain JSON: it survives a cache, and warm equals cold byte for byte. */
export interface Note {
  readonly kind: 'build' | 'session' | 'inspection'
  /** Relative to the build folder, with `/`. */
  readonly file: string
  /** A session's identifier: its file name without `.md`. */
  readonly id: string
  /** The opening fence: where what is absent is said to be. */
  readonly fence: Place
  /** Null where there is none or it could not be read. For inspection.yaml: the whole file. */
  readonly front: FrontMap | null
  /** The body with the nodes of `plugins/`; positions are those of the file. Empty for inspection.yaml. */
  readonly body: Root
  /** What reading alone could find wrong. */
  readonly findings: readonly Finding[]
  /** SHA-256 of the file's bytes. */
  readonly sum: string
}

/** What build.md sets that changes how other notes are read. */
export interface NoteOptions {
  readonly gallon: 'imperial' | 'us' | null
  readonly mil: 'mm' | 'thou' | null
  readonly decimal: 'point' | 'comma'
}
