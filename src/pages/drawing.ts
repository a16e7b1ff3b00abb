/** One stroke of a drawing. `look` names a class of the style sheet: colours and weights are never given here. */
export type Stroke =
  | { readonly kind: 'path'; readonly d: string; readonly look: string }
  | { readonly kind: 'circle'; readonly x: number; readonly y: number; readonly r: number; readonly look: string }
  | {
      readonly kind: 'text'
      readonly x: number
      readonly y: number
      readonly text: string
      readonly look: string
      readonly turn: number
    }
  | { readonly kind: 'link'; readonly href: string | null; readonly says: string; readonly strokes: readonly Stroke[] }

/** A drawing, in units of its own. `says` tells who cannot see it what it shows, `tells` what can be read from it. */
export interface Drawing {
  readonly width: number
  readonly height: number
  readonly says: string
  readonly tells?: string
  readonly look: string
  readonly strokes: readonly Stroke[]
  /** Its name on its page, given when the page is whole. */
  readonly id?: string
}

export const path = (look: string, d: string): Stroke => ({ kind: 'path', d, look })
export const lettering = (look: string, at: { x: number; y: number; turn?: number }, text: string): Stroke => ({
  kind: 'text',
  x: tenth(at.x),
  y: tenth(at.y),
  text,
  look,
  turn: at.turn ?? 0,
})

/** Rounds to a tenth of a unit, so that the same record gives the same bytes on every machine. */
export function tenth(value: number): number {
  return Math.round(value * 10) / 10
}
