import type { Drawing } from './drawing.ts'
import type { Page } from './site-data.ts'

/** A page whose drawings bear names of their own, in the order in which they stand, so that a drawing's title and description can be told by them. */
export function nameDrawings(page: Page): Page {
  let count = 0
  const name = (value: unknown): unknown => {
    if (Array.isArray(value)) {
      const named = value.map(name)
      return named.some((one, at) => one !== value[at]) ? named : value
    }
    if (typeof value !== 'object' || value === null) return value
    if (isDrawing(value)) {
      count += 1
      return { ...value, id: `dwg-${count}` }
    }
    const entries = Object.entries(value).map(([key, own]): [string, unknown, unknown] => [key, own, name(own)])
    return entries.some(([, own, named]) => own !== named)
      ? Object.fromEntries(entries.map(([key, , named]) => [key, named]))
      : value
  }
  return { ...page, rows: name(page.rows) as Page['rows'] }
}

const isDrawing = (value: object): value is Drawing => 'strokes' in value && 'says' in value && 'width' in value
