import type { ThingTarget } from '../../plugins/things/node.ts'
import type { PictureSources } from './picture-sources.ts'

/** A place to go to, and the words that lead there. `href` null: the words stand alone. */
export interface Link {
  readonly text: string
  readonly href: string | null
}

/** A picture as it is published. Width and height in pixels, null where unknown. */
export interface Picture {
  /** Its largest size. */
  readonly href: string
  /** Its smaller ones; null for one that has none. */
  readonly sources?: PictureSources | null
  readonly width: number | null
  readonly height: number | null
}

/** What a note's page knows of the rest of the record. Every href is relative to that page. */
export interface NoteContext {
  /** `[](part:fuel-tank)`: where it leads and what it is called; null where there is no such thing. */
  readonly thing: (target: ThingTarget) => Link | null
  /** Any other address of a link; null where it leads out of the record to nowhere. */
  readonly address: (url: string) => string | null
  readonly picture: (url: string) => Picture | null
  /** What used a figure, first of all; null where nothing did. */
  readonly use: (figure: string) => string | null
  /** How a job stands: `open, holds up the road`; null where it is none. */
  readonly job: (id: string) => string | null
}
